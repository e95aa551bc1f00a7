import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { noExercise, readJobText, type Job } from "../../../src/core/index";
import { leanJob } from "../../../src/app/class/leanJob";
import { packVariant, unpackVariant } from "../../../src/app/class/packedVariant";
import { qrModules } from "../../../src/app/class/qrModules";
import { pieceCode } from "../../../src/app/class/pieceCode";
import { readyItems, readySchemes, type ReadyScheme } from "../../../src/app/marking/readySchemes";
import { TRADE } from "../../../src/drawing/tradeWords";
import { readVariantLink, writeVariantLink } from "../../../src/app/class/variantLink";
import { jobArbitrary } from "../../core/job/jobArbitrary";
import { pipeWith, slant } from "../pipe";

const PLACE = "https://drafting.school.example/flatwright/";
const asChecked = (job: Job): Job => ({ ...job, note: "", readings: null, exercise: noExercise() });
const withScheme = (job: Job, name: ReadyScheme = "fifteen"): Job => ({ ...job, marking: { ...job.marking, items: readyItems(name, TRADE["stretch-out"]) } });
const example = (file: string): Job => {
  const read = readJobText(readFileSync(`src/app/examples/${file}`, "utf8"));
  if (!read.ok) throw new Error(file);
  return read.job;
};
const EXAMPLES = readdirSync("src/app/examples").filter((name) => name.endsWith(".json"));

describe("a packed piece", () => {
  test("comes back as it was, without what checking does not need, whatever the job", async () => {
    await fc.assert(fc.asyncProperty(jobArbitrary, async (job) => {
      expect(await unpackVariant(await packVariant(job))).toEqual(asChecked(job));
    }), { numRuns: 30 });
  });

  test("is small enough for a code read from paper, whatever the example: at most 81 modules across", async () => {
    for (const file of EXAMPLES) expect((await pieceCode(PLACE, "5KQ2M-3F", example(file)))?.length).toBeLessThanOrEqual(81);
  });

  test("brings the scheme it is marked by along; without it when told so", async () => {
    for (const name of readySchemes) {
      const job = withScheme(example("1-lean-to-vent.json"), name);
      expect((await unpackVariant(await packVariant(job)))?.marking).toEqual(job.marking);
      expect((await unpackVariant(await packVariant(job, { scheme: false })))?.marking.items).toEqual([]);
    }
  });

  test("takes no more than a coarse code with a ready scheme in it, whatever the example; a scheme of many words of its own is left out of it", async () => {
    for (const file of EXAMPLES) {
      const alone = await pieceCode(PLACE, "5KQ2M-3F", example(file)), ready = await pieceCode(PLACE, "5KQ2M-3F", withScheme(example(file)));
      expect(ready!.length).toBeLessThanOrEqual(Math.max(alone!.length, 69));
    }
    const random = fc.sample(fc.string({ minLength: 100, maxLength: 100 }), { numRuns: 8, seed: 1 });
    const job = example("1-lean-to-vent.json");
    const wordy: Job = { ...job, marking: { ...job.marking, items: random.map((text, i) => ({ id: `own-${i}`, text: text.trim(), marks: 1, by: "eye" })) } };
    expect(await pieceCode(PLACE, "5KQ2M-3F", wordy)).toEqual(await pieceCode(PLACE, "5KQ2M-3F", job));
  });

  test("of a link already printed is read as it was meant", async () => {
    // Packed when the dictionaries were made: they must not change.
    expect(await unpackVariant("1QwRQGNA0HQVT70AjX11jNyKDCyVEUL0PTC1gDbT3PoqHAA")).toEqual(asChecked({ ...pipeWith([slant]), title: "Vent, 5KQ2M-3F" }));
    expect(await unpackVariant("2QwRQGNA0HQVT70AjX11jNyKDCyVEUL0PTC1gDbT3PrKH8LVvRuu40TqO7DoOAA")).toEqual(asChecked(withScheme({ ...pipeWith([slant]), title: "Vent, 5KQ2M-3F" })));
  });

  test("that is none, damaged or of a later kind is no job", async () => {
    const good = await packVariant(pipeWith([slant]));
    for (const bad of ["", "1", "3" + good.slice(1), good.slice(0, -9), "1AAAA", "1!!", "1" + "A".repeat(70_000)]) expect(await unpackVariant(bad)).toBeNull();
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
