import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { noExercise, readJobText, type Job } from "../../../src/core/index";
import { leanJob } from "../../../src/app/class/leanJob";
import { packVariant, unpackVariant } from "../../../src/app/class/packedVariant";
import { qrModules } from "../../../src/app/class/qrModules";
import { readVariantLink, writeVariantLink } from "../../../src/app/class/variantLink";
import { jobArbitrary } from "../../core/job/jobArbitrary";
import { pipeWith, slant } from "../pipe";

const asChecked = (job: Job): Job => ({ ...job, note: "", readings: null, exercise: noExercise(), marking: { ...job.marking, items: [] } });

describe("a packed piece", () => {
  test("comes back as it was, without what checking does not need, whatever the job", async () => {
    await fc.assert(fc.asyncProperty(jobArbitrary, async (job) => {
      expect(await unpackVariant(await packVariant(job))).toEqual(asChecked(job));
    }), { numRuns: 30 });
  });

  test("is small enough for a code read from paper, whatever the example: at most 81 modules across", async () => {
    for (const file of readdirSync("src/app/examples").filter((name) => name.endsWith(".json"))) {
      const read = readJobText(readFileSync(`src/app/examples/${file}`, "utf8"));
      if (!read.ok) throw new Error(file);
      const link = writeVariantLink("https://drafting.school.example/flatwright/", { code: "5KQ2M-3F", packed: await packVariant(read.job) });
      expect((await qrModules(link))?.length).toBeLessThanOrEqual(81);
    }
  });

  test("of a link already printed is read as it was meant", async () => {
    // Packed when the dictionary was made: it must not change.
    expect(await unpackVariant("1QwRQGNA0HQVT70AjX11jNyKDCyVEUL0PTC1gDbT3PoqHAA")).toEqual(asChecked({ ...pipeWith([slant]), title: "Vent, 5KQ2M-3F" }));
  });

  test("that is none, damaged or of a later kind is no job", async () => {
    const good = await packVariant(pipeWith([slant]));
    for (const bad of ["", "1", "2" + good.slice(1), good.slice(0, -9), "1AAAA", "1!!", "1" + "A".repeat(70_000)]) expect(await unpackVariant(bad)).toBeNull();
  });
});

test("a lean job holds only what is not as usual", () => {
  const { on: _on, ...cut } = { ...slant };
  expect(leanJob(pipeWith([slant]))).toEqual({
    format: "flatwright-job", version: 2, title: "Vent", part: { kind: "pipe", diameter: 90, length: 220, cuts: [cut] }, development: { stations: 16 },
  });
});

describe("the address of a piece", () => {
  test("is read as written", () => {
    const address = { code: "5KQ2M-3F", packed: "1a-_Z" };
    expect(readVariantLink(new URL(writeVariantLink("https://school.example/x/", address)).hash)).toEqual(address);
  });

  test("is none without a piece", () => {
    for (const hash of ["", "#check", "#check/5KQ2M-3F", "#teach/5KQ2M-3F?of=1abc", "#check/a?of=1<b>"]) expect(readVariantLink(hash)).toBeNull();
  });
});

test("a text too long to be read from paper has no code", async () => {
  expect(await qrModules("x".repeat(600))).toBeNull();
});
