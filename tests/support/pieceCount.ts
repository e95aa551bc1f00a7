/**
 * Number of separate kept pieces of a wall, by flooding a grid that closes on itself round the pipe. Null where the grid cannot tell: where counting cells that
 * touch only at corners as joined changes the count, or where a piece has fewer than `least` cells.
 */
export function countPieces(kept: (column: number, row: number) => boolean, columns: number, rows: number, least: number): number | null {
  const cells = Array.from({ length: columns * rows }, (_, index) => kept(index % columns, Math.floor(index / columns)));
  const bySides = flood(cells, columns, rows, [[1, 0], [-1, 0], [0, 1], [0, -1]]);
  const byCorners = flood(cells, columns, rows, [[1, 0], [-1, 0], [0, 1], [0, -1], [1, 1], [1, -1], [-1, 1], [-1, -1]]);
  const unsure = bySides.length !== byCorners.length || bySides.some((size) => size < least);
  return unsure ? null : bySides.length;
}

function flood(cells: readonly boolean[], columns: number, rows: number, steps: readonly (readonly [number, number])[]): number[] {
  const seen = new Uint8Array(cells.length);
  const sizes: number[] = [];
  for (let start = 0; start < cells.length; start += 1) {
    if (!cells[start] || seen[start]) continue;
    let size = 0;
    const waiting = [start];
    seen[start] = 1;
    while (waiting.length > 0) {
      const cell = waiting.pop()!;
      size += 1;
      for (const [across, up] of steps) {
        const row = Math.floor(cell / columns) + up;
        if (row < 0 || row >= rows) continue;
        const next = row * columns + (((cell % columns) + across + columns) % columns);
        if (cells[next] && !seen[next]) {
          seen[next] = 1;
          waiting.push(next);
        }
      }
    }
    sizes.push(size);
  }
  return sizes;
}
