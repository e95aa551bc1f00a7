import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import { expect, test } from "./page";
import { pdfPages, type PdfPath } from "./pdfPages";

// The pattern on paper: saved as a PDF of true size, in one sheet or in tiles, and given up half way.

test.beforeEach(async ({ page }) => {
  await page.goto("/");
  await openPrint(page);
});

test("the PDF is true to size: the pattern is as wide as its stretch-out, the ruler measures 100 mm", async ({ page }) => {
  const bytes = await savedPdf(page);
  const [sheet] = pdfPages(bytes);
  const spans = (sheet?.paths ?? []).map(span);
  const girth = Math.PI * 90;
  expect(spans.filter(({ across }) => Math.abs(across - girth) < 0.01)).not.toHaveLength(0);
  expect(spans.filter(({ across, up }) => Math.abs(across - 100) < 0.01 && up < 0.01)).not.toHaveLength(0);
  expect(Buffer.from(bytes).toString("latin1")).toMatch(/\/PrintScaling \/None\s*\/PickTrayByPDFSize true/);
});

test("what writes PDF, and its lettering, is fetched when the first one is made", async ({ page }) => {
  const fetched = () => page.evaluate(() => performance.getEntriesByType("resource").map(({ name }) => name).filter((name) => /pdfkit|lettering.*\.otf/.test(name)).length);
  await expect(page.locator(".outcome").first()).toBeVisible();
  expect(await fetched()).toBe(0);
  await savedPdf(page);
  expect(await fetched()).toBeGreaterThan(1);
});

test("a sheet too small gives tiles, each the size of the paper, with a cover", async ({ page }) => {
  await page.getByRole("dialog").getByRole("combobox", { name: "Paper", exact: true }).selectOption("A4");
  await expect(page.locator(".outcome")).toContainText("sheets of A4");
  const pages = pdfPages(await savedPdf(page));
  expect(pages.length).toBe(3);
  for (const { width, height } of pages) expect([width, height].map((one) => Math.round(one * 1000) / 1000).sort()).toEqual([210, 297]);
});

test("a long PDF says how far it is, and is given up on request: nothing is saved, and the next one is", async ({ page }) => {
  await page.keyboard.press("Escape");
  await expect(page.getByRole("dialog")).toBeHidden();
  await page.getByLabel("Diameter", { exact: true }).fill("300");
  await page.keyboard.press("Enter");
  await expect(page.locator(".drawing")).toContainText("⌀300");
  await openPrint(page);
  // Many small sheets on a slow machine, so that there is time to give it up.
  await page.getByRole("dialog").getByRole("combobox", { name: "Paper", exact: true }).selectOption("own");
  for (const side of ["Width", "Height"]) {
    await page.getByLabel(`${side} of the paper`).fill("150");
    await page.keyboard.press("Enter");
  }
  await expect(page.locator(".outcome").first()).toContainText(/\d\d sheets of 150 × 150 mm/);
  const device = await page.context().newCDPSession(page);
  await device.send("Emulation.setCPUThrottlingRate", { rate: 6 });
  let saved = 0;
  page.on("download", () => saved++);
  await page.getByRole("button", { name: "Save as PDF" }).click();
  await expect(page.getByRole("dialog").getByRole("status").last()).toContainText(/Page \d+ of \d+/);
  // At once: on a quick machine the last page is not far away.
  await page.getByRole("button", { name: "Cancel" }).click({ force: true });
  await expect(page.getByRole("button", { name: "Save as PDF" })).toBeVisible();
  expect(saved).toBe(0);
  await device.send("Emulation.setCPUThrottlingRate", { rate: 1 });
  await page.getByRole("dialog").getByRole("combobox", { name: "Paper", exact: true }).selectOption("A0");
  expect(pdfPages(await savedPdf(page))).toHaveLength(1);
  expect(saved).toBe(1);
});

async function openPrint(page: Page): Promise<void> {
  await page.getByRole("banner").getByRole("button", { name: "Print" }).click();
  await expect(page.getByRole("heading", { name: "Print and cut" })).toBeVisible();
}

async function savedPdf(page: Page): Promise<Buffer> {
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as PDF" }).click();
  return readFile(await (await waiting).path());
}

/** Width and height of a painted path, mm. */
function span({ points }: PdfPath): { readonly across: number; readonly up: number } {
  const xs = points.map(({ x }) => x), ys = points.map(({ y }) => y);
  return { across: Math.max(...xs) - Math.min(...xs), up: Math.max(...ys) - Math.min(...ys) };
}
