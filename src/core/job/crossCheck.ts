import type { Cut, Job, PipePart } from "./job";
import type { Problem } from "./problem";

// The checks that look at more than one field of a job whose every field is in its own range.

/** The problems between fields: no bore left, a high level not over the low one, an id used twice. */
export function crossCheck(job: Job): Problem[] {
  const cuts = job.part.cuts;
  const ids = [...duplicateIds(cuts, "part.cuts"), ...duplicateIds(job.marking.items, "marking.items")];
  return [...thicknessProblems(job.part), ...cuts.flatMap(levelProblems), ...ids];
}

/** The wall must leave a bore. The bound itself, named in `max`, leaves none and is refused. */
function thicknessProblems({ basis, diameter, thickness }: PipePart): Problem[] {
  const max = { outside: diameter / 2, mean: diameter, inside: Infinity }[basis];
  if (thickness < max) return [];
  return [{ code: "too-large", field: "part.thickness", value: thickness, max, detail: { basis, diameter } }];
}

/** Ogee and step rise from `low` to `high`; the bound itself, named in `min`, is refused. */
function levelProblems(cut: Cut, index: number): Problem[] {
  if (cut.kind !== "shaped" || !("low" in cut.profile)) return [];
  const { low, high } = cut.profile;
  if (high > low) return [];
  return [{ code: "too-small", field: `part.cuts.${index}.profile.high`, value: high, min: low, detail: { low } }];
}

function duplicateIds(named: readonly { id: string }[], field: string): Problem[] {
  return named.flatMap(({ id }, index) => {
    const first = named.findIndex((other) => other.id === id);
    if (first === index) return [];
    const problem: Problem = { code: "duplicate-id", field: `${field}.${index}.id`, value: id, detail: { first } };
    return [problem];
  });
}
