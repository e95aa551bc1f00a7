// What is said about bad input: a code, the place and the allowed range; the words are the app's.

/** What is wrong. Each code is worded by the app; `docs/job-format.md` explains those of the job file. */
export type ProblemCode =
  | ShapeCode
  | "file-too-large"
  | "not-json"
  | GeometryCode
  | NoticeCode
  | FabricationCode
  | SheetCode
  | PhotoCode;

/** The data does not have the shape of a job, or a value is outside its limits. */
export type ShapeCode =
  | "not-a-job"
  | "newer-version"
  | "unknown-version"
  | "missing"
  | "wrong-type"
  | "not-a-number"
  | "too-small"
  | "too-large"
  | "not-whole"
  | "unknown-choice"
  | "too-long"
  | "too-many"
  | "unknown-field"
  | "duplicate-id";

/** A well-formed job that cannot be made. */
export type GeometryCode =
  | "nothing-left"
  | "profile-crosses-itself"
  | "profile-not-across"
  | "arc-too-small"
  | "arc-centre-off"
  | "profile-too-short";

/** A job that can be made, with something the maker should know. */
export type NoticeCode = "cut-misses" | "separate-pieces" | "open-round" | "thick-for-diameter";

/** Something the shop asks for that cannot be made: it is left off. The place is in `detail`: girth and height in mm. */
export type FabricationCode =
  | "allowance-crosses-itself"
  | "allowance-too-wide"
  | "allowance-meets-outline"
  | "gap-too-wide"
  | "plate-not-flat"
  | "plate-gap-too-wide";

/** Something asked of the paper that cannot be. */
export type SheetCode =
  | "paper-without-room"
  | "overlap-too-large"
  | "correction-too-large"
  | "scale-too-large"
  | "too-many-sheets"
  | "nothing-to-print";

/** Points marked in a photograph that do not say where the drawing lies in it. */
export type PhotoCode = "points-too-few" | "points-coincide" | "points-in-line" | "points-crossed" | "points-unsure" | "base-too-short";

/**
 * One thing wrong with the input.
 * `field` is the dotted path from the job ("part.cuts.0.angle"), "" for the job or file as a whole.
 * `value` is what was found there, only when it is a number, text, true/false or null.
 * `min` and `max` are the bounds of the field, in the field's unit (for text: characters; for lists: entries).
 */
export interface Problem {
  code: ProblemCode;
  field: string;
  value?: unknown;
  min?: number;
  max?: number;
  detail?: Record<string, number | string>;
}
