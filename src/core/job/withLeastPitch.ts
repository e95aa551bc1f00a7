import { isFields } from "./fields";
import { LIMITS } from "./limits";

// Slits of files written before their pitch had a lower limit.

/** The data of a job with slits that stand closer than any flange takes as close as it does; anything else as it is. `data` is not changed. */
export function withLeastPitch(data: unknown): unknown {
  if (!isFields(data) || !isFields(data["fabrication"]) || !isFields(data["fabrication"]["edges"])) return data;
  const edges = Object.fromEntries(Object.entries(data["fabrication"]["edges"]).map(([end, finish]) => [end, raised(finish)]));
  return { ...data, fabrication: { ...data["fabrication"], edges } };
}

function raised(finish: unknown): unknown {
  if (!isFields(finish)) return finish;
  const { slits } = finish;
  return typeof slits === "number" && slits > 0 && slits < LIMITS.slits.min ? { ...finish, slits: LIMITS.slits.min } : finish;
}
