// The numbers below a count in another order, each once: k ↦ (a k + b) mod n with a prime to n. Neighbours come to lie far apart when
// a is near the golden part of n (Weyl's equidistribution; common practice in hashing).

/** What stands at `place` (0 ≤ place < count) in the order of this seed. @throws RangeError for a place outside. */
export function scattered(place: bigint, count: bigint, seed: number): bigint {
  if (!(place >= 0n && place < count)) throw new RangeError(`invalid place: ${place}; not in [0, ${count})`);
  const start = BigInt(Math.imul((seed ^ 0x9e3779b9) >>> 0, 0x85ebca6b) >>> 0);
  // 0.6180339887 of the count, and a little on by the seed.
  let stride = (count * 6180339887n) / 10_000_000_000n + (BigInt(seed >>> 0) % 7n) + 1n;
  while (divisor(stride, count) !== 1n) stride += 1n;
  return (stride * place + start) % count;
}

function divisor(a: bigint, b: bigint): bigint {
  return b === 0n ? a : divisor(b, a % b);
}
