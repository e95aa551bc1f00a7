import { describe, expect, it } from "vitest";
import { defaultJob } from "../../../src/core/job/defaultJob";
import { parseJob } from "../../../src/core/job/parseJob";

describe("defaultJob", () => {
  it("defaultJob is a good job", () => {
    expect(parseJob(defaultJob())).toEqual({ ok: true, job: defaultJob() });
  });

  it("defaultJob is a fresh object at each call", () => {
    defaultJob().part.cuts.length = 0;
    expect(defaultJob().part.cuts).toHaveLength(1);
  });
});
