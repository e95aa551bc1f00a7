/** Seconds one call takes. */
export interface Timing {
  /** Of the fastest batch: what other work on the machine disturbs least. */
  readonly fastest: number;
  readonly median: number;
}

/** One call of `work`, timed over batches long enough for the clock, after a warm-up. */
export function timed(work: () => unknown): Timing {
  const calls = callsFilling(work, batchSeconds);
  const batches = Array.from({ length: batchCount }, () => batch(work, calls) / calls).sort((a, b) => a - b);
  return { fastest: batches[0] ?? NaN, median: batches[Math.floor(batchCount / 2)] ?? NaN };
}

/** Seconds one call of `work` takes at its fastest. */
export function secondsPerCall(work: () => unknown): number {
  return timed(work).fastest;
}

/** Seconds of the fastest of a few runs of something that has to be waited for. */
export async function fastestRun(work: () => Promise<unknown>): Promise<number> {
  let fastest = Infinity;
  for (let run = 0; run < 7; run += 1) {
    const start = performance.now();
    kept = await work();
    fastest = Math.min(fastest, (performance.now() - start) / 1000);
  }
  return fastest;
}

/** Seconds of the processor in the least of a few runs: for what takes so long that other work on the machine gets in between. */
export async function leastProcessorTime(work: () => Promise<unknown>, runs: number): Promise<number> {
  let least = Infinity;
  for (let run = 0; run < runs; run += 1) {
    const start = process.cpuUsage();
    kept = await work();
    const { user, system } = process.cpuUsage(start);
    least = Math.min(least, (user + system) / 1e6);
  }
  return least;
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
const batchCount = 60;
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
