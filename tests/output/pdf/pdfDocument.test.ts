import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import type { Item } from "../../../src/drawing/display";
import { AS_DRAWN, type Page } from "../../../src/drawing/sheets/page";
import { stroke } from "../../../src/drawing/strokes";
import { pdfDocument } from "../../../src/output/pdf/pdfDocument";
import { pdfObjects } from "../../browser/pdfObjects";
import { pdfPages } from "../../browser/pdfPages";
import { pdfFile } from "../../support/poppler";

const lettering = new Uint8Array(readFileSync(new URL("../../../src/app/print/lettering.otf", import.meta.url)));
const page = (items: readonly Item[], more: Partial<Page> = {}): Page => ({ name: "1", width: 210, height: 297, items, stretch: AS_DRAWN, ...more });
const line = stroke("outline", { x: 10, y: 20 }, { x: 110, y: 20 });
const text = (value: string): Item => ({ kind: "text", pen: "lettering", text: value, height: 3.5, align: "start", turn: 0, at: { x: 10, y: 30 } });

async function made(pages: readonly Page[]): Promise<Uint8Array> {
  const bytes = await pdfDocument(pages, { title: "Vent, ⌀90", lettering, made: new Date(0) });
  if (!bytes) throw new Error("no file");
  return bytes;
}

const source = (bytes: Uint8Array) => Buffer.from(bytes).toString("latin1");
const contents = (bytes: Uint8Array) => [...pdfObjects(bytes).values()].map(({ stream }) => stream).find((stream) => stream.includes(" cm")) ?? "";

describe("pdfDocument", () => {
  it("gives each page a MediaBox of its paper to a thousandth of a point", async () => {
    const text = source(await made([page([line]), page([line], { width: 431.8, height: 279.4 })]));
    const boxes = [...text.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/g)].map(([, width, height]) => [Number(width), Number(height)]);
    expect(boxes).toHaveLength(2);
    expect(Math.abs(boxes[0]![0]! - 595.27559)).toBeLessThan(1e-3);
    expect(Math.abs(boxes[0]![1]! - 841.88976)).toBeLessThan(1e-3);
    expect(boxes[1]).toEqual([1224, 792]);
  });

  it("asks viewers not to scale, and to pick the tray by the paper", async () => {
    const bytes = await made([page([line])]);
    const root = /\/Root (\d+) 0 R/.exec(source(bytes))?.[1];
    const objects = pdfObjects(bytes);
    const preferences = /\/ViewerPreferences (\d+) 0 R/.exec(objects.get(Number(root))?.head ?? "")?.[1];
    const head = objects.get(Number(preferences))?.head ?? "";
    expect(head).toMatch(/\/PrintScaling \/None\b/);
    expect(head).toMatch(/\/PickTrayByPDFSize true\b/);
    expect(head).toMatch(/\/DisplayDocTitle true\b/);
  });

  it("draws in true mm, stretched about the middle of the paper by the correction", async () => {
    const [plain] = pdfPages(await made([page([line])]));
    expect(plain!.paths[0]!.points.map(({ x, y }) => [x, y].map((one) => one.toFixed(4)))).toEqual([["10.0000", "20.0000"], ["110.0000", "20.0000"]]);
    const [stretched] = pdfPages(await made([page([line], { stretch: { x: 1.01, y: 0.98 } })]));
    const [a, b] = stretched!.paths[0]!.points;
    expect(b!.x - a!.x).toBeCloseTo(101, 4);
    expect((a!.x - 105) / 1.01 + 105).toBeCloseTo(10, 4);
    expect((a!.y - 148.5) / 0.98 + 148.5).toBeCloseTo(20, 4);
  });

  it("puts what is drawn on layers by its meaning", async () => {
    const bytes = await made([page([line, stroke("station", { x: 0, y: 0 }, { x: 1, y: 1 }), text("a"), stroke("frame", { x: 0, y: 0 }, { x: 1, y: 1 })])]);
    expect([...contents(bytes).matchAll(/\/OC \/(\w+) BDC/g)].map(([, name]) => name)).toEqual(["part", "construction", "notes", "sheet"]);
    expect(contents(bytes).match(/\bEMC\b/g)).toHaveLength(4);
    expect([...source(bytes).matchAll(/\/Type \/OCG/g)]).toHaveLength(4);
  });

  it("leaves out of a window what does not show in it", async () => {
    const far = Array.from({ length: 50 }, (_, i) => stroke("outline", { x: 1000 + i, y: 0 }, { x: 1000 + i, y: 50 }));
    const bytes = await made([page([{ kind: "group", move: { x: 5, y: 5 }, clip: { left: 10, right: 200, bottom: 10, top: 280 }, items: [line, ...far] }])]);
    expect(pdfPages(bytes)[0]!.paths.filter(({ paint }) => paint === "stroke")).toHaveLength(1);
  });

  it("writes letters the face lacks without their accents, other signs as question marks", async () => {
    const [glyphs, plain] = await Promise.all([made([page([text("Łṃ 漢 ⌀")])]), made([page([text("Łm ? ⌀")])])]);
    const shown = (bytes: Uint8Array) => /<([0-9a-f]+)> Tj/.exec(contents(bytes))?.[1];
    expect(shown(glyphs)).toBe(shown(plain));
    expect(shown(glyphs)).toBeDefined();
  });

  it("writes names in Latin, Greek and Cyrillic letters so that poppler reads them back", async () => {
    const names = "Łódź, Győr, Çeşme, Χανιά, Львів";
    const file = pdfFile(await made([page([text(names)])]));
    expect(file.ask("pdftotext")).toContain(names);
    file.remove();
  });

  it("tells how far it is, and stops when it is no longer wanted", async () => {
    const told: number[] = [];
    const signal = { aborted: false };
    const given = await pdfDocument(Array.from({ length: 9 }, () => page([line])), {
      title: "", lettering, signal, onPage: (written) => {
        told.push(written);
        signal.aborted = written === 3;
      },
    });
    expect(given).toBeNull();
    expect(told).toEqual([1, 2, 3]);
  });

  it("refuses a file without pages, and a number that is none", async () => {
    await expect(made([])).rejects.toThrow(RangeError);
    await expect(made([page([stroke("outline", { x: NaN, y: 0 }, { x: 1, y: 1 })])])).rejects.toThrow(RangeError);
  });
});
