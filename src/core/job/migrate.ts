import { type Fields, isFields } from "./fields";
import type { Problem } from "./problem";

// Which version is this data, and what would it be in the present one?

export type Migrated = { ok: true; data: Fields } | { ok: false; problems: Problem[] };

/** From one version to the next: the fields that only the next one has, and the change. */
interface Step {
  newFields: readonly string[];
  up: (data: Fields) => Fields;
}

/** One row for each older version, oldest first: STEPS[n - 1] leads from version n to n + 1. */
const STEPS: readonly Step[] = [{ newFields: ["development", "drawing", "fabrication", "marking", "readings", "exercise"], up: fromVersion1 }];

/** The version of job files written now. */
export const PRESENT_VERSION = STEPS.length + 1;

/**
 * `data` with the fields of the present version; nothing but the format, the version and what moved is looked at.
 * Refuses what is no job ("not-a-job"), a later version ("newer-version") and one that never was ("unknown-version").
 */
export function bringUpToDate(data: unknown): Migrated {
  if (!isFields(data) || data["format"] !== "flatwright-job") return refusal({ code: "not-a-job", field: "" });
  const version = data["version"];
  if (typeof version !== "number" || !Number.isInteger(version) || version < 1) {
    return refusal({ code: "unknown-version", field: "version", max: PRESENT_VERSION, ...shown(version) });
  }
  if (version > PRESENT_VERSION) {
    return refusal({ code: "newer-version", field: "version", value: version, max: PRESENT_VERSION });
  }
  return climb(data, STEPS.slice(version - 1));
}

function climb(data: Fields, steps: readonly Step[]): Migrated {
  let current = data;
  for (const { newFields, up } of steps) {
    const tooNew = newFields.find((field) => field in current);
    if (tooNew !== undefined) return refusal({ code: "unknown-field", field: tooNew });
    current = up(current);
  }
  return { ok: true, data: current };
}

/** Version 1 kept `seam` (a name or degrees), `stations` and `projection` beside the part; its cuts were always on. */
function fromVersion1({ seam, stations, projection, ...rest }: Fields): Fields {
  return {
    ...rest,
    version: 2,
    part: isFields(rest["part"]) ? withCutsOn(rest["part"]) : rest["part"],
    development: { seam: typeof seam === "number" ? { at: "angle", angle: seam } : seam && { at: seam }, stations },
    drawing: { projection },
  };
}

function withCutsOn(part: Fields): Fields {
  const cuts = part["cuts"];
  if (!Array.isArray(cuts)) return part;
  return { ...part, cuts: cuts.map((cut: unknown) => (isFields(cut) ? { on: true, ...cut } : cut)) };
}

function shown(value: unknown): { value?: unknown } {
  return ["number", "string", "boolean"].includes(typeof value) ? { value } : {};
}

function refusal(problem: Problem): Migrated {
  return { ok: false, problems: [problem] };
}
