/** A table as text: the first column to the left, the others to the right. */
export function table(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const all = [heads, ...rows];
  const widths = heads.map((_, column) => Math.max(...all.map((row) => row[column]?.length ?? 0)));
  const line = (row: readonly string[]) => widths.map((width, i) => (i === 0 ? (row[i] ?? "").padEnd(width) : (row[i] ?? "").padStart(width))).join("  ");
  return [line(heads), widths.map((width) => "-".repeat(width)).join("  "), ...rows.map(line)].map((text) => `  ${text.trimEnd()}`).join("\n");
}

/** A time in the unit that shows it with three figures. */
export function duration(seconds: number): string {
  if (seconds >= 1) return `${seconds.toPrecision(3)} s`;
  if (seconds >= 1e-3) return `${(seconds * 1e3).toPrecision(3)} ms`;
  if (seconds >= 1e-6) return `${(seconds * 1e6).toPrecision(3)} us`;
  return `${(seconds * 1e9).toPrecision(3)} ns`;
}

/** "12.3 times". */
export function ratio(value: number): string {
  return `${value >= 100 ? Math.round(value).toString() : value.toPrecision(3)} times`;
}
