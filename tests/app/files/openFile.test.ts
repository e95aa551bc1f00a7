// @vitest-environment jsdom
import { beforeEach, expect, test } from "vitest";
import { writeJobText } from "../../../src/core/index";
import { emptySheet } from "../../../src/app/check/sheet";
import { pieceKey, useSheets } from "../../../src/app/check/sheets";
import { withReadings } from "../../../src/app/check/withReadings";
import { openFile } from "../../../src/app/files/openFile";
import { replaceJob } from "../../../src/app/store/changes";
import { say, useApp } from "../../../src/app/store/store";
import { pipeWith, slant } from "../pipe";

const before = pipeWith([slant]);

beforeEach(() => {
  replaceJob(before);
  say(null);
});

const file = (text: string) => new File([text], "job.json", { type: "application/json" });
const codeSaid = () => {
  const { message } = useApp.getState();
  return message?.kind === "file" && message.fault.kind === "problem" ? message.fault.problem.code : message?.kind;
};

test("openFile puts the job of the file on the board and sets the former one aside", async () => {
  await openFile(file(writeJobText({ ...before, title: "Another" })));
  expect(useApp.getState().development.job.title).toBe("Another");
  expect(useApp.getState().message).toEqual({ kind: "set-aside", job: before });
});

test("openFile puts the readings of the file in the fields of its piece, and saving takes them along again", async () => {
  const readings = { scale: "1:2", count: "", start: "", along: "pattern", values: [{ at: "top 0", text: "78,5" }], marks: [{ at: "views", text: "3" }] } as const;
  const job = { ...before, title: "Read", readings: { ...readings, values: [...readings.values], marks: [...readings.marks] } };
  await openFile(file(writeJobText(job)));
  expect(useApp.getState().development.job.readings).toBeNull();
  expect(useSheets.getState().all[pieceKey(before)]).toEqual({ ...emptySheet, scale: "1:2", readings: { "top 0": "78,5" }, marks: { views: "3" } });
  expect(withReadings(useApp.getState().development.job)).toEqual(job);
});

test.each([
  ["a text that is no JSON", "hello", "not-json"],
  ["half a file", writeJobText(before).slice(0, 300), "not-json"],
  ["JSON of another kind", "[1, 2]", "not-a-job"],
  ["a newer version", JSON.stringify({ ...before, version: 99 }), "newer-version"],
  ["a job with a wrong value", JSON.stringify({ ...before, part: { ...before.part, diameter: -3 } }), "too-small"],
  ["a job of which nothing is left", JSON.stringify({ ...before, part: { ...before.part, cuts: [{ ...slant, angle: 0, at: "axis", height: -50 }] } }), "nothing-left"],
])("openFile says what is wrong with %s, and the job stays", async (_, text, code) => {
  await openFile(file(text));
  expect(codeSaid()).toBe(code);
  expect(useApp.getState().development.job).toEqual(before);
});

test("openFile refuses a file of 50 MB unread", async () => {
  const huge = file("x");
  Object.defineProperty(huge, "size", { value: 50_000_000 });
  Object.defineProperty(huge, "text", {
    value: () => {
      throw new Error("read");
    },
  });
  await openFile(huge);
  expect(codeSaid()).toBe("file-too-large");
});

test("openFile says a file the browser cannot read", async () => {
  const gone = file("x");
  Object.defineProperty(gone, "text", { value: () => Promise.reject(new DOMException("gone", "NotFoundError")) });
  await openFile(gone);
  expect(codeSaid()).toBe("not-json");
});
