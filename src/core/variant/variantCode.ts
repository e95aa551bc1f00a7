// A short code for a variant: which exercise it belongs to, and its place in the order of that exercise. It does not hold the
// exercise: to bring the job back one needs the exercise as well, and the code tells whether it is the right one.

import type { Exercise } from "./exercise";

/** Digits and letters without those that are taken for one another (I, L, O, U). */
const LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/** Letters that name the exercise. */
const NAMED = 5;

export type ReadCode =
  | { readonly ok: true; readonly place: bigint }
  /** Not a code at all, mistyped (its last letter tells), or of another exercise or one changed since. */
  | { readonly ok: false; readonly reason: "not-a-code" | "mistyped" | "another-exercise" };

/** The code of the variant at a place (≥ 0): "5KQ2M-3F". */
export function writeCode(exercise: Exercise, place: bigint): string {
  const name = exerciseName(exercise);
  const number = inLetters(place, 1);
  return `${name}-${number}${check(name + number)}`;
}

/** The place a code stands for in this exercise; small letters, spaces and O for 0 are read as meant. */
export function readCode(exercise: Exercise, code: string): ReadCode {
  const text = code.toUpperCase().replaceAll(/[\s-]/g, "").replaceAll("O", "0").replaceAll(/[IL]/g, "1");
  if (text.length < NAMED + 2 || text.length > 40 || [...text].some((letter) => !LETTERS.includes(letter))) return { ok: false, reason: "not-a-code" };
  if (check(text.slice(0, -1)) !== text.at(-1)) return { ok: false, reason: "mistyped" };
  if (text.slice(0, NAMED) !== exerciseName(exercise)) return { ok: false, reason: "another-exercise" };
  return { ok: true, place: [...text.slice(NAMED, -1)].reduce((sum, letter) => sum * 32n + BigInt(LETTERS.indexOf(letter)), 0n) };
}

/** Everything that decides the variants; title, note and units do not. */
function exerciseName({ job: { part, development, fabrication }, ranges, seams, hands, keeps, seed }: Exercise): string {
  return inLetters(BigInt(hash(inOrder({ part, development, fabrication, ranges, seams, hands, keeps, seed }))) & 0x1ffffffn, NAMED);
}

/** The text of plain data, its keys in alphabetical order. */
function inOrder(data: unknown): string {
  if (Array.isArray(data)) return `[${data.map(inOrder).join()}]`;
  if (typeof data !== "object" || data === null) return JSON.stringify(data) ?? "null";
  return `{${Object.entries(data).sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, value]) => `${JSON.stringify(key)}:${inOrder(value)}`).join()}}`;
}

/** FNV-1a of 32 bits over the UTF-16 units of a text (Fowler, Noll and Vo), its bits mixed once more. */
function hash(text: string): number {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return (sum ^ (sum >>> 15)) >>> 0;
}

/** A letter that changes with any one of the others, since the weights are odd, and with most neighbours that change places. */
function check(text: string): string {
  const sum = [...text].reduce((total, letter, i) => total + (2 * i + 1) * LETTERS.indexOf(letter), 0);
  return LETTERS.charAt(sum % 32);
}

function inLetters(value: bigint, least: number): string {
  const rest = value / 32n;
  return (rest > 0n || least > 1 ? inLetters(rest, least - 1) : "") + LETTERS.charAt(Number(value % 32n));
}
