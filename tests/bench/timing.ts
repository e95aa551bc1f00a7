/** Seconds one call of `work` takes: the fastest of many batches, which other work on the machine disturbs least, after a warm-up. */
export function secondsPerCall(work: () => unknown): number {
  const calls = callsFilling(work, batchSeconds);
  return Math.min(...Array.from({ length: batchCount }, () => batch(work, calls) / calls));
}

/** Exponent p of time = c sizeᵖ by least squares over the logarithms. */
export function growthExponent(sizes: readonly number[], seconds: readonly number[]): number {
  const points = sizes.map((size, i) => [Math.log(size), Math.log(seconds[i] ?? NaN)] as const);
  const mean = (pick: 0 | 1) => points.reduce((sum, point) => sum + point[pick], 0) / points.length;
  const [x0, y0] = [mean(0), mean(1)];
  const covariance = points.reduce((sum, [x, y]) => sum + (x - x0) * (y - y0), 0);
  return covariance / points.reduce((sum, [x]) => sum + (x - x0) ** 2, 0);
}

const batchSeconds = 0.01;
const batchCount = 25;
const warmUpSeconds = 0.4;

/** How many calls fill a batch; measured on code that has had time to be compiled. */
function callsFilling(work: () => unknown, seconds: number): number {
  let calls = 1;
  let spent = 0;
  for (let warm = 0; warm < warmUpSeconds; warm += spent) {
    spent = batch(work, calls);
    if (spent < seconds / 4) calls *= 2;
  }
  return Math.max(1, Math.round((calls * seconds) / spent));
}

function batch(work: () => unknown, calls: number): number {
  const start = performance.now();
  for (let i = 0; i < calls; i += 1) kept = work();
  return (performance.now() - start) / 1000;
}

/** Holds the last result, so that no compiler may leave the work out. */
export let kept: unknown;
