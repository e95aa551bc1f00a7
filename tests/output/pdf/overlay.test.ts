import { readFileSync } from "node:fs";
import { afterAll, beforeAll, expect, it } from "vitest";
import { boundsOfItem } from "../../../src/drawing/bounds";
import { overlayPages } from "../../../src/drawing/overlay/overlayPages";
import type { Page } from "../../../src/drawing/sheets/page";
import { DEFAULT_SETUP } from "../../../src/drawing/sheets/setup";
import { pdfDocument } from "../../../src/output/pdf/pdfDocument";
import { developed } from "../../support/developed";
import { type PdfFile, type Raster, inkAlong, inkMiddles, pdfFile } from "../../support/poppler";
import { pipeJob, planeCut } from "../../support/pipeJob";

// An overlay measured in pictures that poppler makes of the finished file: the two lines at what is allowed to either side of a mitre,
// y = h - r tan b cos(s / r) (checked in tests/values), at two scales.

const DPI = 600;
/** mm. */
const TOLERANCE = 0.05;
const radius = 30, height = 70, slope = Math.tan(Math.PI / 4);
const lettering = new Uint8Array(readFileSync(new URL("../../../src/app/print/lettering.otf", import.meta.url)));
const development = developed(pipeJob({ diameter: 2 * radius, length: 200, stations: 12, cuts: [planeCut({ angle: 45, direction: 180, height })] }));
const cases = [{ scale: 1, allowed: 1 }, { scale: 0.5, allowed: 1.5 }] as const;
const pages: Page[] = cases.map(({ scale, allowed }) => {
  const outcome = overlayPages(development, { ...DEFAULT_SETUP, paper: { kind: "named", name: "A3" } }, { scale, tolerance: allowed, stepped: false });
  const [page] = outcome.ok ? outcome.pages : [];
  if (!page) throw new Error("no page");
  return page;
});

let file: PdfFile;

beforeAll(async () => {
  file = pdfFile((await pdfDocument(pages, { title: "Overlay", lettering }))!);
});
afterAll(() => file.remove());

for (const [i, { scale, allowed }] of cases.entries()) {
  it(`at ${scale}: both lines lie ${allowed} mm off the true edge, all along a mitre`, () => {
    const page = pages[i]!;
    const edge = page.items.find((item) => item.kind === "path" && item.pen === "true edge");
    const { left: x, bottom: y } = boundsOfItem(edge!);
    const picture = file.raster(i + 1, DPI);
    let worst = 0, places = 0;
    for (let step = 0; step < 192; step++) {
      // Midway between the stations, where no element crosses the lines.
      if (step % 16 < 6 || step % 16 > 9) continue;
      const s = ((step + 0.5) * 2 * Math.PI * radius) / 192;
      const at = { x: x + scale * s, y: y + scale * (height - radius * slope * Math.cos(s / radius)) };
      const angle = Math.atan(slope * Math.sin(s / radius));
      for (const side of [1, -1]) worst = Math.max(worst, Math.abs(inkAcross(picture, page, at, angle, side * allowed)));
      places++;
    }
    expect(places).toBe(48);
    expect(worst).toBeLessThan(TOLERANCE);
  });

  it(`at ${scale}: the ruler of 100 mm is true`, () => {
    const page = pages[i]!;
    const base = page.items.filter((item) => item.kind === "path" && item.pen === "ruler").map(boundsOfItem).find(({ left, right, bottom, top }) => top === bottom && Math.abs(right - left - 100) < 1e-9);
    const picture = file.raster(i + 1, DPI, { left: base!.left - 1, top: page.height - base!.bottom - 3, width: 102, height: 0.5 });
    const middles = inkMiddles(inkAlong(picture, "x"), 1);
    expect(middles).toHaveLength(11);
    expect(Math.abs((middles.at(-1)! - middles[0]!) / picture.density - 100)).toBeLessThan(TOLERANCE);
  });
}

/** How far the ink about the place `off` mm beside an edge lies from there, across the edge. */
function inkAcross({ grey, width, density }: Raster, page: Page, at: { x: number; y: number }, angle: number, off: number): number {
  const normal = { x: -Math.sin(angle), y: Math.cos(angle) };
  let weight = 0, moment = 0;
  for (let d = -0.4; d <= 0.4; d += 0.01) {
    const x = at.x + (off + d) * normal.x, y = page.height - at.y - (off + d) * normal.y;
    const ink = 1 - (grey[Math.floor(y * density) * width + Math.floor(x * density)] ?? 255) / 255;
    weight += ink;
    moment += ink * d;
  }
  return weight > 0 ? moment / weight : Infinity;
}
