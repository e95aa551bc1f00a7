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
  // The only union is of numbers.
  union: "not-a-number",
  max_length: "too-long",
  strict_object: "wrong-type",
};

/** The problem said by one finding of the schema. */
export function problemOfIssue(issue: v.BaseIssue<unknown>): Problem {
  const path = issue.path ?? [];
  const list = path.findIndex(isFieldOfList);
  if (list >= 0) return { code: "wrong-type", field: fieldOf(path.slice(0, list)) };
  const field = fieldOf(path);
  if (issue.type === "strict_object" && issue.expected === "never") return { code: "unknown-field", field };
  if (issue.input === undefined) return { code: "missing", field };
  return { code: codeOf(issue), field, ...shown(issue.input), ...bound(issue) };
}

function fieldOf(path: readonly v.IssuePathItem[]): string {
  return path.map((item) => String(item.key)).join(".");
}

/** Whether a field was looked for in a list, where an object should be: then the list is what is wrong. */
function isFieldOfList(item: v.IssuePathItem): boolean {
  return item.type === "object" && Array.isArray(item.input);
}

function codeOf(issue: v.BaseIssue<unknown>): ShapeCode {
  if (Array.isArray(issue.input)) {
    if (issue.type === "max_length") return "too-many";
    if (issue.type === "min_length") return "too-small";
  }
  if (issue.type === "variant" && issue.expected === "Object") return "wrong-type";
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
