import type { Job } from "../../core/index";
import type { Fit, Grip } from "../../drawing/handles/grip";
import type { Handle } from "../../drawing/handles/handles";
import { cutName } from "../describe/describe";
import type { Format, Quantity } from "../quantity/format";
import { clauseWords } from "../words/clauses";
import { handleWords } from "../words/handles";
import { keyOf, type FieldTokens } from "./fieldTokens";

interface FieldNow {
  readonly field: string;
  readonly quantity: Quantity;
  readonly value: number;
}

/** The fields of a handle with their values now. */
export function fieldsNow(grip: Grip): FieldNow[] {
  if (grip.kind === "size") return [grip];
  return ([["across", "x"], ["along", "y"]] as const).flatMap(([name, axis]) => {
    const coordinate = grip[name];
    return coordinate ? [{ ...coordinate, value: grip.point[axis] }] : [];
  });
}

/** "Slanted end: Angle from square", in the labels of the description. */
export function handleLabel({ clause, fields }: Handle, tokens: FieldTokens, job: Job): string {
  const labels = fields.map((field) => {
    const key = keyOf(clause, field);
    return [key, `${key}.side`, `${key}.kind`].map((name) => tokens.get(name)?.token.label).find((label) => label !== undefined) ?? shortOf(field);
  });
  return handleWords.of(clauseName(clause, job), labels.join("; "));
}

/** "height 182 mm, sideways 0 mm" */
export function handleValue({ grip }: Handle, format: Format): string {
  return fieldsNow(grip).map(({ field, quantity, value }) => `${shortOf(field)} ${shown(value, quantity, format)}`).join(", ");
}

/** What a drag fits, in words. */
export function fitText({ why, clause }: Fit, job: Job): string {
  return handleWords.why[why](clause === undefined ? "" : clauseName(clause, job));
}

export function clauseName(clause: string, job: Job): string {
  const cut = job.part.cuts.find(({ id }) => clause === `cut:${id}`);
  return cut ? cutName(cut) : clauseWords.names.body;
}

function shown(value: number, quantity: Quantity, format: Format): string {
  return quantity === "angle" ? format.angle(value) : `${format.figure(value, quantity)} ${format.unit}`;
}

function shortOf(field: string): string {
  const last = field.split(".").at(-1) ?? field;
  return handleWords.short[last] ?? last;
}
