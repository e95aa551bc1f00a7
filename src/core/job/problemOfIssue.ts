import type * as v from "valibot";
import type { Problem, ShapeCode } from "./problem";

// What the schema found, in the words of this project.

/** Longer text is not repeated in a problem. */
const LONGEST_SHOWN = 200;

/** The code for each kind of check in schema.ts; a value that is not there at all is "missing" before any of these. */
const CODES: Partial<Record<string, ShapeCode>> = {
  number: "not-a-number",
  min_value: "too-small",
  max_value: "too-large",
  integer: "not-whole",
  picklist: "unknown-choice",
  variant: "unknown-choice",
  literal: "unknown-choice",
  max_length: "too-long",
  strict_object: "wrong-type",
};

/** The problem said by one finding of the schema. */
export function problemOfIssue(issue: v.BaseIssue<unknown>): Problem {
  const field = (issue.path ?? []).map((item) => String(item.key)).join(".");
  const last = issue.path?.at(-1);
  if (issue.type === "strict_object" && issue.expected === "never") return { code: "unknown-field", field };
  if (issue.input === undefined) return missing(last, field);
  return { code: codeOf(issue), field, ...shown(issue.input), ...bound(issue) };
}

/** A field left out; when its owner is a list where an object should be, the owner is what is wrong. */
function missing(last: v.IssuePathItem | undefined, field: string): Problem {
  if (!last || !Array.isArray(last.input) || last.type === "array") return { code: "missing", field };
  return { code: "wrong-type", field: field.split(".").slice(0, -1).join(".") };
}

function codeOf(issue: v.BaseIssue<unknown>): ShapeCode {
  if (Array.isArray(issue.input)) {
    if (issue.type === "max_length") return "too-many";
    if (issue.type === "min_length") return "too-small";
  }
  if (["picklist", "variant", "literal"].includes(issue.type) && typeof issue.input !== "string") return "wrong-type";
  return CODES[issue.type] ?? "wrong-type";
}

function shown(value: unknown): { value?: unknown } {
  if (typeof value === "object" && value !== null) return {};
  return typeof value === "string" && value.length > LONGEST_SHOWN ? {} : { value };
}

function bound({ type, requirement }: v.BaseIssue<unknown>): { min?: number; max?: number } {
  if (typeof requirement !== "number") return {};
  return type.startsWith("min_") ? { min: requirement } : { max: requirement };
}
