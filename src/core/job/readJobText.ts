import { LIMITS } from "./limits";
import { type ParsedJob, parseJob } from "./parseJob";
import type { Problem } from "./problem";
import { withLeastPitch } from "./withLeastPitch";

// Is this text a job file, and if not, what is wrong with it and where?

/**
 * The job in the text of a file, or its problems. A byte order mark in front is passed over.
 * Text longer than LIMITS.file is refused ("file-too-large") before it is looked at; text that is no JSON is refused
 * ("not-json") with `detail` line and column from 1, where the engine tells the place. Never throws.
 */
export function readJobText(text: string): ParsedJob {
  if (text.length > LIMITS.file.max) {
    return refusal({ code: "file-too-large", field: "", value: text.length, max: LIMITS.file.max });
  }
  const json = text.startsWith("\uFEFF") ? text.slice(1) : text;
  let data: unknown;
  try {
    data = JSON.parse(json);
  } catch (error) {
    return refusal({ code: "not-json", field: "", ...placeOf(String(error), json) });
  }
  return parseJob(withLeastPitch(data));
}

/** Where the JSON broke off, from the engine's message: engines name a position, a line and column, or only the end. */
function placeOf(message: string, json: string): { detail?: { line: number; column: number } } {
  const place = /line (\d+) column (\d+)/.exec(message);
  if (place) return { detail: { line: Number(place[1]), column: Number(place[2]) } };
  const position = /at position (\d+)/.exec(message);
  if (position) return { detail: lineAndColumn(json.slice(0, Number(position[1]))) };
  return /unexpected end/i.test(message) ? { detail: lineAndColumn(json) } : {};
}

function lineAndColumn(before: string): { line: number; column: number } {
  const lines = before.split(/\r\n|\r|\n/);
  return { line: lines.length, column: (lines.at(-1) ?? "").length + 1 };
}

function refusal(problem: Problem): ParsedJob {
  return { ok: false, problems: [problem] };
}
