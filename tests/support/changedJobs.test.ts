import { describe, expect, it } from "vitest";
import { expectAllClose } from "./approximate";
import { keptElements } from "./keptElements";
import { mirroredJob } from "./mirroredJob";
import { randomPipe } from "./randomPipe";
import { refusalExpected } from "./lawCase";
import { scaledJob } from "./scaledJob";

const ends = (reaches: readonly { from: number; to: number }[]): number[] => reaches.flatMap(({ from, to }) => [from, to]);

describe("mirroredJob", () => {
  it("gives back the job when done twice", () => {
    for (let n = 0; n < 200; n += 1) expect(mirroredJob(mirroredJob(randomPipe(n)))).toEqual(randomPipe(n));
  });

  it("keeps at -theta what the job keeps at theta", () => {
    for (let n = 0; n < 200; n += 1) {
      const job = randomPipe(n);
      if (refusalExpected(job) !== null) continue;
      const [a, b] = [keptElements(job), keptElements(mirroredJob(job))];
      for (const theta of [0.123, 1.234, 2.345, 3.456, 4.567, 5.678]) expectAllClose(ends(a.at(theta)), ends(b.at(-theta)), 1e-6, `random pipe ${n}`);
    }
  });
});

describe("scaledJob", () => {
  it("keeps elements as many times as long", () => {
    for (let n = 0; n < 200; n += 1) {
      const job = randomPipe(n);
      if (refusalExpected(job) !== null) continue;
      const [a, b] = [keptElements(job), keptElements(scaledJob(job, 1.7))];
      for (const theta of [0.123, 1.234, 2.345, 3.456, 4.567, 5.678]) expectAllClose(ends(a.at(theta)).map((z) => z * 1.7), ends(b.at(theta)), 1e-6, `random pipe ${n}`);
    }
  });
});
