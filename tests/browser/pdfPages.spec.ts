import { expect, test } from "./page";
import { pdfPages } from "./pdfPages";

test("a printed line of 100 mm measures 100 mm, on a sheet of its true size", async ({ page }) => {
  await page.setContent(`<style>@page { size: 297mm 210mm; margin: 10mm } body { margin: 0 }</style>
    <svg width="120mm" height="40mm" viewBox="0 0 120 40"><path d="M10 20 H110" stroke="black" stroke-width="0.5" fill="none"/>
    <g opacity="0.5"><path d="M10 5 V35" stroke="black" stroke-width="0.25"/><path d="M20 5 V35" stroke="black" stroke-width="0.25"/></g></svg>`);
  const pages = pdfPages(await page.pdf({ preferCSSPageSize: true }));
  expect(pages).toHaveLength(1);
  // The browser cuts the sheet to whole points and pixels.
  expect(Math.abs((pages[0]?.width ?? NaN) - 297)).toBeLessThan(0.3);
  expect(Math.abs((pages[0]?.height ?? NaN) - 210)).toBeLessThan(0.3);
  const strokes = pages[0]?.paths.filter(({ paint }) => paint === "stroke") ?? [];
  const lengths = strokes.map(({ points: [a, b] }) => (a && b ? Math.hypot(b.x - a.x, b.y - a.y) : NaN));
  expect(lengths).toHaveLength(3);
  for (const [i, length] of [100, 30, 30].entries()) expect(Math.abs((lengths[i] ?? NaN) - length)).toBeLessThan(0.01);
});
