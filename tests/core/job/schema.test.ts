import { readFileSync, writeFileSync } from "node:fs";
import type { InferInput, InferOutput } from "valibot";
import { describe, expect, expectTypeOf, it } from "vitest";
import type { Job } from "../../../src/core/job/job";
import { PRESENT_VERSION } from "../../../src/core/job/migrate";
import type { jobSchema } from "../../../src/core/job/schema";
import { jobJsonSchema } from "./jobJsonSchema";

const FILE = new URL("../../../public/job.schema.json", import.meta.url);

describe("jobSchema", () => {
  it("jobSchema gives exactly a Job", () => {
    expectTypeOf<InferOutput<typeof jobSchema>>().toEqualTypeOf<Job>();
  });

  it("jobSchema accepts every Job", () => {
    expectTypeOf<Job>().toExtend<InferInput<typeof jobSchema>>();
  });

  it("jobSchema is of the present version", () => {
    expectTypeOf<Job["version"]>().toEqualTypeOf<2>();
    expect(PRESENT_VERSION).toBe(2);
  });
});

describe("public/job.schema.json", () => {
  it("public/job.schema.json is the schema the core checks with", () => {
    const text = `${JSON.stringify(jobJsonSchema(), null, 2)}\n`;
    if (process.env["UPDATE"] && !process.env["CI"]) writeFileSync(FILE, text);
    expect(readFileSync(FILE, "utf8")).toBe(text);
  });
});
