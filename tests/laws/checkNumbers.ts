/** No number anywhere in a result is NaN, and none in the pattern or the stations is infinite. */
export function checkNumbers(value: unknown, path = "", finite = false, seen = new Set<object>()): void {
  if (typeof value === "number") {
    if (Number.isNaN(value) || (finite && !Number.isFinite(value))) throw new Error(`${path} is ${value}`);
    return;
  }
  if (typeof value !== "object" || value === null || seen.has(value)) return;
  seen.add(value);
  for (const [name, item] of Object.entries(value)) {
    checkNumbers(item, `${path}.${name}`, finite || name === "pattern" || name === "stations", seen);
  }
}
