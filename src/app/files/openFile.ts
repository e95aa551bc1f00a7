import { LIMITS, readJobText, type Problem } from "../../core/index";
import { takeReadings } from "../check/withReadings";
import type { Fault } from "../store/attempt";
import { replaceJob } from "../store/changes";
import { say, useApp } from "../store/store";
import { words } from "../words/interface";

/** UTF-8 takes at most four bytes a character: a file over this cannot be within the limit on characters. */
const largestFile = LIMITS.file.max * 4;

/** Opens a job file, or the photograph of a drawing to be checked; a file that is neither is said, and the job on the board stays. */
export async function openFile(file: File): Promise<void> {
  if (file.type.startsWith("image/")) {
    window.location.hash = "check";
    const { openToMark } = await import("../photo/openToMark");
    return openToMark(file);
  }
  const fault = await faultOf(file);
  if (fault) say({ kind: "file", name: file.name, fault });
}

async function faultOf(file: File): Promise<Fault | null> {
  if (file.size > largestFile) return problem({ code: "file-too-large", field: "" });
  let text: string;
  try {
    text = await file.text();
  } catch {
    return problem({ code: "not-json", field: "" });
  }
  const read = readJobText(text);
  if (!read.ok) return problem(read.problems[0] ?? { code: "not-a-job", field: "" });
  if (replaceJob({ ...read.job, readings: null }, words.done(words.verbs.open, file.name))) {
    takeReadings(read.job);
    return null;
  }
  const { message } = useApp.getState();
  return message?.kind === "refused" ? message.fault : { kind: "failed" };
}

function problem(of: Problem): Fault {
  return { kind: "problem", problem: of };
}
