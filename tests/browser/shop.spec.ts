import { readFile } from "node:fs/promises";
import type { Download, Page } from "@playwright/test";
import DxfParser from "dxf-parser";
import { expect, test } from "./page";
import { pdfPages } from "./pdfPages";

// What a fabricator does: seam and hem by keys, the pattern with them, a template and a cut file, a printer measured.

test("a grooved seam and a hem are added by keys, stand on the pattern, and go into template and DXF", async ({ page }) => {
  await page.goto("/");
  await page.keyboard.press("Shift");
  await add(page, "Grooved seam");
  await expect(page.getByRole("combobox", { name: "Joint of the seam" })).toBeFocused();
  await add(page, "Single hem");
  await page.getByRole("group", { name: "Top edge" }).getByRole("combobox", { name: "Which end" }).selectOption("bottom");
  await expect(page.getByRole("group", { name: "Bottom edge" })).toBeVisible();
  await expect(page.getByText("3 × 6 = 18 mm added: 9 on the first edge, 9 on the last")).toBeVisible();
  await expect(page.locator(".drawing")).toContainText("3 × 6");

  await page.getByRole("button", { name: "Print and cut" }).click();
  await page.getByLabel("Paper", { exact: true }).selectOption("A3");
  const template = await saved(page, "Save as PDF");
  expect(template.name).toBe("Vent through the lean-to roof, template, A3.pdf");
  const girth = Math.PI * 90;
  const widths = pdfPages(template.bytes).flatMap(({ paths }) => paths).map(({ points }) => Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x)));
  // The blank: girth and nine at each edge of the seam.
  expect(widths.filter((width) => Math.abs(width - girth - 18) < 0.05)).not.toHaveLength(0);

  await page.getByLabel("What to make").selectOption("dxf");
  const cut = await saved(page, "Save as DXF");
  expect(cut.name).toMatch(/^Vent through the lean-to roof, pipe, 301x\d+\.dxf$/);
  const read = new DxfParser().parseSync(cut.bytes.toString("ascii"));
  const outline = (read?.entities ?? []).flatMap((entity) => (/cut/i.test(entity.layer) && "vertices" in entity ? (entity.vertices as { x: number }[]) : []));
  const xs = outline.map(({ x }) => x);
  expect(Math.abs(Math.max(...xs) - Math.min(...xs) - girth - 18)).toBeLessThan(0.05);

  // The browser itself reads the SVG back: as wide in millimetres, its lines as long as the part list says.
  await page.getByLabel("What to make").selectOption("svg");
  const [stated] = /[\d.]+(?= mm)/.exec(await page.getByRole("region", { name: "Part list" }).locator("td").nth(3).innerText()) ?? [];
  const svg = await saved(page, "Save as SVG");
  const { width, length } = await page.evaluate((text) => {
    document.body.innerHTML = text;
    const lines = [...document.querySelectorAll<SVGGeometryElement>("svg #cut path, svg #cut circle, svg #slit path")];
    const boxes = lines.map((line) => line.getBBox());
    return {
      width: Math.max(...boxes.map((box) => box.x + box.width)) - Math.min(...boxes.map((box) => box.x)), length: lines.reduce((sum, line) => sum + line.getTotalLength(), 0),
    };
  }, svg.bytes.toString("utf8"));
  expect(Math.abs(width - girth - 18)).toBeLessThan(0.05);
  expect(Math.abs(length - Number(stated))).toBeLessThan(0.1);
  expect(svg.bytes.toString("utf8")).toMatch(/width="[\d.]+mm"/);
});

test("each part goes into a DXF of its own, its curves as splines", async ({ page }) => {
  await page.goto("/");
  await page.keyboard.press("Shift");
  await add(page, "End plate");
  await page.getByRole("button", { name: "Print and cut" }).click();
  await page.getByLabel("What to make").selectOption("dxf");
  await page.getByLabel("Parts in one file or apart").selectOption("apart");
  await page.getByLabel("How curves are written").selectOption("splines");
  const downloads: Download[] = [];
  page.on("download", (one) => downloads.push(one));
  await page.getByRole("button", { name: "Save as DXF" }).click();
  await expect.poll(() => downloads.length).toBe(2);
  expect(downloads.map((one) => one.suggestedFilename())).toEqual([
    expect.stringMatching(/^Vent through the lean-to roof, pipe, \d+x\d+, splines\.dxf$/), expect.stringMatching(/^Vent through the lean-to roof, pipe (top|bottom) plate, \d+x\d+, splines\.dxf$/),
  ]);
  for (const one of downloads) {
    const read = new DxfParser().parseSync((await readFile(await one.path())).toString("ascii"));
    expect(read?.entities.some(({ type }) => type === "SPLINE")).toBe(true);
  }
});

test("a printer is measured, its correction is kept on the device and goes into the pages", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Print and cut" }).click();
  await page.getByLabel("Paper", { exact: true }).selectOption("A3");
  await page.getByRole("button", { name: "Measure a printer" }).click();
  await page.getByLabel("Name of the printer").fill("Workshop");
  const rulers = await saved(page, "Save the page of rulers");
  expect(pdfPages(rulers.bytes)).toHaveLength(1);
  const across = page.getByLabel("Ruler across, as measured");
  const length = Number(await across.inputValue());
  await across.fill(String(length * 2));
  await page.getByRole("button", { name: "Keep the correction" }).click();
  await expect(across).toHaveAttribute("aria-invalid", "true");
  await across.fill(String(length / 1.01));
  await page.getByRole("button", { name: "Keep the correction" }).click();
  await expect(page.getByRole("dialog")).toContainText("corrected by +1.00 % across and +0.00 % along");
  await page.reload();
  await page.getByRole("button", { name: "Print and cut" }).click();
  await expect(page.getByRole("dialog")).toContainText("Workshop");
  await expect(page.getByRole("dialog")).toContainText("+1.00 %");
});

test("the panel fits a narrow phone without scrolling sideways", async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto("/");
  await page.getByRole("button", { name: "Print and cut" }).click();
  await expect(page.getByRole("heading", { name: "Part list" })).toBeVisible();
  const dialog = page.getByRole("dialog");
  expect(await dialog.evaluate((element) => element.scrollWidth - element.clientWidth)).toBeLessThanOrEqual(0);
});

async function add(page: Page, what: string): Promise<void> {
  await page.getByRole("button", { name: "Add a seam, an edge, a plate" }).focus();
  await page.keyboard.press("Enter");
  await page.getByRole("button", { name: what, exact: true }).focus();
  await page.keyboard.press("Enter");
}

async function saved(page: Page, verb: string): Promise<{ name: string; bytes: Buffer }> {
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: verb }).click();
  const download = await waiting;
  return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
}
