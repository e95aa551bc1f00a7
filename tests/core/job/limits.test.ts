import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { CHOICES, LIMITS, type Limit } from "../../../src/core/job/limits";

const PAGE = readFileSync(new URL("../../../docs/job-format.md", import.meta.url), "utf8");

describe("LIMITS", () => {
  it.each(Object.entries<Limit>(LIMITS))("LIMITS of %s are a range with the default inside", (_, { min, max, ...rest }) => {
    expect(min).toBeLessThan(max);
    if (rest.default !== undefined) expect(rest.default).toSatisfy((value: number) => value >= min && value <= max);
  });

  it.each(Object.entries(LIMITS).filter(([name]) => name !== "file"))(
    "docs/job-format.md gives the range of %s",
    (_, { min, max }) => expect(PAGE).toContain(`${min} to ${max}`),
  );

  it("docs/job-format.md gives the longest file", () => {
    expect(PAGE).toContain(`over ${LIMITS.file.max} characters`);
  });
});

describe("CHOICES", () => {
  it.each(Object.entries<{ of: readonly string[] }>(CHOICES))("docs/job-format.md gives the words of %s", (_, choice) => {
    expect(choice.of.filter((word) => !PAGE.includes(`\`"${word}"\``))).toEqual([]);
  });
});
