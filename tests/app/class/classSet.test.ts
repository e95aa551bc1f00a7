import { readFileSync } from "node:fs";
import jsQR from "jsqr";
import { afterAll, describe, expect, test } from "vitest";
import { develop, exerciseOf, variants, type Job } from "../../../src/core/index";
import { classAnswers } from "../../../src/app/class/classAnswers";
import { scaleForAll, setPages, SheetFault, type Pupil, type SetOf } from "../../../src/app/class/classSet";
import { packVariant, unpackVariant } from "../../../src/app/class/packedVariant";
import { qrModules } from "../../../src/app/class/qrModules";
import { variantJob } from "../../../src/app/class/variantJob";
import { readVariantLink, writeVariantLink } from "../../../src/app/class/variantLink";
import { sentencesOf } from "../../../src/app/describe/sentenceText";
import { formatOf } from "../../../src/app/quantity/format";
import { DEFAULT_LESSON } from "../../../src/drawing/lesson/lessonSheets";
import { DEFAULT_SETUP } from "../../../src/drawing/sheets/setup";
import { pdfDocument } from "../../../src/output/pdf/pdfDocument";
import { pdfFile, type PdfFile } from "../../support/poppler";
import { pipeWith, slant } from "../pipe";

const count = 4;
const exercise: Job = {
  ...pipeWith([slant]), title: "Roof vent",
  exercise: { ...pipeWith([]).exercise, ranges: [{ field: "part.diameter", from: 50, to: 80, step: 1 }, { field: "part.cuts.slope.angle", from: 20, to: 45, step: 5 }] },
};
const format = formatOf("mm", { places: 2, denominator: 0, comma: false });
const made = variants(exerciseOf(exercise), count);
const pupils: Pupil[] = made.ok ? made.variants.map((variant, i) => ({ variant, student: { name: ["Ada Winter", "Bo \"Bob\" Sommer", "=1+1", "Łukasz"][i] ?? "", group: "3b" } })) : [];
const link = async (code: string, job: Job) => writeVariantLink("https://school.example/pipes/", { code, packed: await packVariant(job) });
const setOf = (change: Partial<SetOf> = {}): SetOf => ({ kind: "question", pupils, title: "Roof vent", lesson, qr: async (code, job) => qrModules(await link(code, job)), ...change });
const lesson: SetOf["lesson"] = ({ name, className, title, ...piece }) => ({
  ...DEFAULT_LESSON, ...piece, figures: format, school: { ...DEFAULT_LESSON.school, name, className, title }, setup: { ...DEFAULT_SETUP, paper: { kind: "named", name: "A3" } },
  text: sentencesOf(piece.development.job, ({ value, quantity }) => format.field(value, quantity)),
});
const onAnd = () => Promise.resolve(true);

async function pagesOf(set: SetOf) {
  const pages = [];
  for await (const page of setPages(set, await scaleForAll(set, onAnd), () => undefined)) pages.push(page);
  return pages;
}

async function written(set: SetOf): Promise<Uint8Array> {
  const scale = await scaleForAll(set, onAnd);
  const bytes = await pdfDocument(setPages(set, scale, () => undefined), { title: "set", lettering: readFileSync("src/app/print/lettering.otf"), made: new Date(0) });
  if (!bytes) throw new Error("no file");
  return bytes;
}

const files: PdfFile[] = [];
afterAll(() => files.forEach((file) => file.remove()));
const opened = (bytes: Uint8Array) => {
  const file = pdfFile(bytes);
  files.push(file);
  return file;
};

describe("a class set", () => {
  test("has a sheet for every student, with name, class, code and own dimensions, read back from the file", async () => {
    const file = opened(await written(setOf()));
    expect(file.ask("pdfinfo")).toMatch(/Pages:\s+4\b/);
    for (const [i, { student, variant: { code, job } }] of pupils.entries()) {
      const text = file.ask("pdftotext", "-f", String(i + 1), "-l", String(i + 1), "-layout");
      for (const said of [student.name, "3b", code, `⌀ ${job.part.diameter}`]) expect(text).toContain(said);
    }
  });

  test("has a code on every sheet that a camera reads: it opens that student's piece", async () => {
    const file = opened(await written(setOf()));
    for (const [i, { variant }] of pupils.entries()) {
      const { width, height, grey } = file.raster(i + 1, 150);
      const pixels = new Uint8ClampedArray(width * height * 4);
      grey.forEach((tone, at) => pixels.set([tone, tone, tone, 255], at * 4));
      const read = jsQR(pixels, width, height);
      const address = readVariantLink(new URL(read?.data ?? "").hash);
      expect(address?.code).toBe(variant.code);
      expect(await unpackVariant(address?.packed ?? "")).toEqual(variantJob(variant));
    }
  }, 60_000);

  test("is the same file when it is made again", async () => {
    expect(Buffer.from(await written(setOf())).equals(Buffer.from(await written(setOf())))).toBe(true);
  });

  test("has keys that give every ordinate of each piece as the core finds it", async () => {
    const file = opened(await written(setOf({ kind: "key" })));
    const text = file.ask("pdftotext", "-layout");
    for (const { variant: { job } } of pupils) {
      const outcome = develop(job);
      if (!outcome.ok) throw new Error("no piece");
      for (const { top } of outcome.development.pieces[0]?.stations ?? []) expect(text).toContain(format.length(top ?? NaN));
    }
  });

  test("has questions that give no answer away", async () => {
    const file = opened(await written(setOf()));
    const text = file.ask("pdftotext", "-layout");
    for (const { variant: { job } } of pupils) {
      const outcome = develop(job);
      const [piece] = outcome.ok ? outcome.development.pieces : [];
      expect(text).not.toContain(format.length(piece?.pattern.girth ?? NaN));
      expect(text).not.toContain(format.length(piece?.stations[3]?.top ?? NaN));
    }
  });

  test("has all its sheets at one scale", async () => {
    const texts = (await pagesOf(setOf())).map(({ items }) => items.flatMap((item) => (item.kind === "text" && /^\d+:\d+$/.test(item.text) ? [item.text] : [])));
    expect(new Set(texts.flat()).size).toBe(1);
  });

  test("says whose sheet cannot be made, and why", async () => {
    const nothing = pipeWith([{ ...slant, height: -50 } as typeof slant]);
    const all = [...pupils.slice(0, 2), { student: { name: "Cy", group: "" }, variant: { code: "5KQ2M-3F", job: nothing } }];
    const fault = await scaleForAll(setOf({ pupils: all }), onAnd).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(SheetFault);
    expect(fault).toMatchObject({ place: 2, problem: { code: "nothing-left" } });
  });

  test("is given up when it is stopped", async () => {
    let told = 0;
    expect(await scaleForAll(setOf(), () => Promise.resolve(++told < 2))).toBeNull();
    expect(told).toBe(2);
  });
});

describe("the answers of a class", () => {
  test("are a row a student, with what differs", async () => {
    const text = await classAnswers(pupils, { ...exercise.exercise, seams: [{ at: "shortest" }], hands: ["described"] }, format, onAnd);
    const rows = text?.trim().split("\r\n") ?? [];
    expect(rows).toHaveLength(count + 1);
    expect(rows[0]).toContain('"The pipe, diameter mm","Slanted end, angle from square °",Seam at,Hand,');
    pupils.forEach(({ variant: { code, job } }, i) => expect(rows[i + 1]).toContain(`,3b,${code},${job.part.diameter},`));
    expect(rows[3]).toMatch(/^3,'=1\+1,/);
  });

  test("are given up when stopped", async () => {
    expect(await classAnswers(pupils, exercise.exercise, format, () => Promise.resolve(false))).toBeNull();
  });
});
