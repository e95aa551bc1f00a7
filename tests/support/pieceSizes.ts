const BY_SIDES = [[1, 0], [-1, 0], [0, 1], [0, -1]] as const;
const BY_CORNERS = [...BY_SIDES, [1, 1], [1, -1], [-1, 1], [-1, -1]] as const;

/**
 * Sizes in cells of the separate kept pieces of a wall, by flooding a grid (row by row, 1 for kept) that closes on itself round the pipe. `corners`: cells that touch only at
 * their corners hang together.
 */
export function pieceSizes(cells: Uint8Array, columns: number, corners: boolean): number[] {
  const steps = corners ? BY_CORNERS : BY_SIDES;
  const rows = cells.length / columns;
  const seen = new Uint8Array(cells.length);
  const waiting = new Int32Array(cells.length);
  const sizes: number[] = [];
  for (let start = 0; start < cells.length; start += 1) {
    if (!cells[start] || seen[start]) continue;
    let [done, found] = [0, 1];
    waiting[0] = start;
    seen[start] = 1;
    while (done < found) {
      const cell = waiting[done]!;
      done += 1;
      const [row, column] = [Math.floor(cell / columns), cell % columns];
      for (let step = 0; step < steps.length; step += 1) {
        const nextRow = row + steps[step]![1];
        if (nextRow < 0 || nextRow >= rows) continue;
        const next = nextRow * columns + ((column + steps[step]![0] + columns) % columns);
        if (!cells[next] || seen[next]) continue;
        seen[next] = 1;
        waiting[found] = next;
        found += 1;
      }
    }
    sizes.push(found);
  }
  return sizes;
}
