import jsQR from "jsqr";
import { afterAll, describe, expect, test } from "vitest";
import { develop } from "../../../src/core/index";
import { classAnswers } from "../../../src/app/class/classAnswers";
import { scaleForAll, setPages, SheetFault, type SetOf } from "../../../src/app/class/classSet";
import { unpackVariant } from "../../../src/app/class/packedVariant";
import { variantJob } from "../../../src/app/class/variantJob";
import { readVariantLink } from "../../../src/app/class/variantLink";
import { onSheets, sheetScaleOf } from "../../../src/app/teach/sheets/sheetScale";
import { exercise, format, pupilsNamed, setOf, writtenSet } from "../../support/classSet";
import { pdfFile, type PdfFile } from "../../support/poppler";
import { pipeWith, slant } from "../pipe";

const names = ["Ada Winter", "Bo \"Bob\" Sommer", "=1+1", "Łukasz"];
const pupils = pupilsNamed(names);
const onAnd = () => Promise.resolve(true);

async function pagesOf(set: SetOf) {
  const pages = [];
  for await (const page of setPages(set, await scaleForAll(set, onAnd), () => undefined)) pages.push(page);
  return pages;
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
    const file = opened(await writtenSet(setOf(pupils, "question")));
    expect(file.ask("pdfinfo")).toMatch(/Pages:\s+4\b/);
    for (const [i, { student, variant: { code, job } }] of pupils.entries()) {
      const text = file.ask("pdftotext", "-f", String(i + 1), "-l", String(i + 1), "-layout");
      for (const said of [student.name, "3b", code, `⌀ ${job.part.diameter}`]) expect(text).toContain(said);
    }
  });

  test("has a code on every sheet that a camera reads: it opens that student's piece, at the scale of the sheet", async () => {
    const scale = sheetScaleOf(await scaleForAll(setOf(pupils, "question"), onAnd));
    expect(scale).toBe("1:2");
    const file = opened(await writtenSet(setOf(pupils, "question")));
    for (const [i, { variant }] of pupils.entries()) {
      const { width, height, grey } = file.raster(i + 1, 150);
      const pixels = new Uint8ClampedArray(width * height * 4);
      grey.forEach((tone, at) => pixels.set([tone, tone, tone, 255], at * 4));
      const read = jsQR(pixels, width, height);
      const address = readVariantLink(new URL(read?.data ?? "").hash);
      expect(address?.code).toBe(variant.code);
      expect(await unpackVariant(address?.packed ?? "")).toEqual(onSheets(variantJob(variant), scale));
    }
  }, 60_000);

  test("is the same file when it is made again", async () => {
    expect(Buffer.from(await writtenSet(setOf(pupils, "question"))).equals(Buffer.from(await writtenSet(setOf(pupils, "question"))))).toBe(true);
  });

  test("has keys that give every ordinate of each piece as the core finds it", async () => {
    const file = opened(await writtenSet(setOf(pupils, "key")));
    const text = file.ask("pdftotext", "-layout");
    for (const { variant: { job } } of pupils) {
      const outcome = develop(job);
      if (!outcome.ok) throw new Error("no piece");
      for (const { top } of outcome.development.pieces[0]?.stations ?? []) expect(text).toContain(format.length(top ?? NaN));
    }
  });

  test("has questions that give no answer away", async () => {
    const file = opened(await writtenSet(setOf(pupils, "question")));
    const text = file.ask("pdftotext", "-layout");
    for (const { variant: { job } } of pupils) {
      const outcome = develop(job);
      const [piece] = outcome.ok ? outcome.development.pieces : [];
      expect(text).not.toContain(format.length(piece?.pattern.girth ?? NaN));
      expect(text).not.toContain(format.length(piece?.stations[3]?.top ?? NaN));
    }
  });

  test("has all its sheets at one scale", async () => {
    const texts = (await pagesOf(setOf(pupils, "question"))).map(({ items }) => items.flatMap((item) => (item.kind === "text" && /^\d+:\d+$/.test(item.text) ? [item.text] : [])));
    expect(new Set(texts.flat()).size).toBe(1);
  });

  test("says whose sheet cannot be made, and why", async () => {
    const nothing = pipeWith([{ ...slant, height: -50 } as typeof slant]);
    const all = [...pupils.slice(0, 2), { student: { name: "Cy", group: "" }, variant: { code: "5KQ2M-3F", job: nothing } }];
    const fault = await scaleForAll(setOf(all, "question"), onAnd).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(SheetFault);
    expect(fault).toMatchObject({ place: 2, problem: { code: "nothing-left" } });
  });

  test("is given up when it is stopped", async () => {
    let told = 0;
    expect(await scaleForAll(setOf(pupils, "question"), () => Promise.resolve(++told < 2))).toBeNull();
    expect(told).toBe(2);
  });
});

describe("the answers of a class", () => {
  test("are a row a student, with what differs", async () => {
    const text = await classAnswers(pupils, { ...exercise.exercise, seams: [{ at: "shortest" }], hands: ["described"] }, format, onAnd);
    const rows = text?.trim().split("\r\n") ?? [];
    expect(rows).toHaveLength(names.length + 1);
    expect(rows[0]).toContain('"The pipe, diameter mm","Slanted end, angle from square °",Seam at,Hand,');
    pupils.forEach(({ variant: { code, job } }, i) => expect(rows[i + 1]).toContain(`,3b,${code},${job.part.diameter},`));
    expect(rows[3]).toMatch(/^3,'=1\+1,/);
  });

  test("are given up when stopped", async () => {
    expect(await classAnswers(pupils, exercise.exercise, format, () => Promise.resolve(false))).toBeNull();
  });
});
