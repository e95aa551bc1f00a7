import type { Job } from "../../core/index";
import type { Handle } from "../../drawing/handles/handles";
import { describe } from "../describe/describe";
import type { ChoiceToken, NumberToken } from "../describe/token";

/** The fields of the description by their keys, directions in figures as well as by name. */
export type FieldTokens = ReadonlyMap<string, { readonly clause: string; readonly token: NumberToken | ChoiceToken }>;

/** All fields of the job as the description shows them; `spelled` are the directions shown in figures. */
export function fieldTokens(job: Job, spelled: ReadonlySet<string>): FieldTokens {
  const all = describe(job, spelled).flatMap(({ name, tokens }) => tokens.flatMap((token) => ("key" in token ? [[token.key, { clause: name, token }] as const] : [])));
  return new Map(all);
}

/** The key of a field in the description, by its clause and its path in the part or the cut. */
export function keyOf(clause: string, field: string): string {
  return clause.startsWith("cut:") ? `${clause.slice("cut:".length)}.${field}` : field;
}

/** The keys of the fields a handle changes. */
export function keysOf({ clause, fields }: Pick<Handle, "clause" | "fields">): string[] {
  return fields.map((field) => keyOf(clause, field));
}

/** Goes to the field of this key in the description; to the choice in its place when it is given by name. */
export function goToField(key: string): void {
  const inDescription = (name: string) => document.querySelector<HTMLElement>(`#description [data-field="${CSS.escape(name)}"]`);
  (inDescription(key) ?? inDescription(`${key}.side`) ?? inDescription(`${key}.kind`))?.focus();
}

/** Goes to the first field of a clause. */
export function goToClause(clause: string): void {
  document.querySelector<HTMLElement>(`#description [data-clause="${CSS.escape(clause)}"] [data-field]`)?.focus();
}
