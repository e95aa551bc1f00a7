import { readFile } from "node:fs/promises";
import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./page";

// The teacher's side of checking: what is allowed, marks by a scheme, the overlay, a whole class. The piece is the first example: 90 mm,
// cut at 35°, 16 stations.

const ordinate = (k: number): number => 220 - 45 * Math.tan((35 * Math.PI) / 180) * (1 + Math.cos((Math.PI * k) / 8));
const field = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });
const verdict = (page: Page) => page.locator(".verdict");
const press = (verb: Locator) => verb.press("Enter");

test("keys alone: a scheme begun in a lesson gives marks to what is read, and the teacher's eye gives the rest", async ({ page }) => {
  await page.goto("/#teach");
  await press(page.getByRole("button", { name: "Marks", exact: true }));
  await press(page.getByRole("button", { name: "Start from" }));
  await press(page.getByRole("button", { name: "a whole sheet, 15 marks" }));
  await expect(page.getByText("15 marks in all.")).toBeVisible();
  await page.getByRole("link", { name: "Check" }).press("Enter");
  await field(page, "Stretch-out").focus();
  for (const text of ["282,5", "17.5+0.2", "35", ...[0, 1, 2, 3].map((k) => `${ordinate(k) + (k === 3 ? 5 : 0)}`)]) {
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
  }
  // Girth 3 of 3, angle 1 of 1, ordinates 3 of 4 read: 1.5 of 2.
  await expect(page.getByText("5.5 of 6 marks. 9 more are still to be given.")).toBeVisible();
  await field(page, "Marks: Dimensions, lettering, neatness").focus();
  await page.keyboard.type("0,5");
  await expect(page.getByText("6 of 7 marks. 8 more are still to be given.")).toBeVisible();
  await page.reload();
  await expect(page.getByText("6 of 7 marks. 8 more are still to be given.")).toBeVisible();
});

test("a stretch-out stepped off with chords is right where the teacher's rule is to step it, and wrong where it is not", async ({ page }) => {
  await page.goto("/#check");
  // Sixteen chords of 90 mm: 16 × 90 sin 11.25° = 280.93.
  await field(page, "Stretch-out").fill("281");
  await field(page, "One space").fill("17.56");
  await expect(verdict(page)).toContainText("1 of 2 readings is off by more than 1 mm");
  await press(page.getByRole("button", { name: "Set what is allowed, and a scheme" }));
  await page.getByRole("combobox", { name: "How the stretch-out is to be found" }).selectOption("stepped");
  await expect(verdict(page)).toContainText("All 2 readings are right within 1 mm");
  await expect(verdict(page)).toContainText("as the rule allows");
  await page.getByRole("combobox", { name: "How the stretch-out is to be found" }).selectOption("either");
  await expect(verdict(page)).toContainText("All 2 readings are right");
});

test("a drawing at 1:2 in 12 spaces numbered from the front the other way is read by its own numbering; errors are drawn larger when asked", async ({ page }) => {
  await page.goto("/#check");
  await page.getByRole("combobox", { name: "Drawn at" }).selectOption("1:2");
  await field(page, "Spaces").fill("12");
  await field(page, "Numbered from").fill("180");
  await page.getByRole("combobox", { name: "Numbered" }).last().selectOption("against");
  await expect(field(page, "Station 12")).toHaveCount(0);
  const at = (k: number) => (220 - 45 * Math.tan((35 * Math.PI) / 180) * (1 - Math.cos((Math.PI * k) / 6))) / 2;
  for (let k = 0; k < 12; k++) await field(page, `Station ${k}`).fill(`${at(k) + (k === 2 ? 3 : 0)}`);
  await expect(verdict(page)).toContainText("1 of 12 readings is off by more than 1 mm. Largest error 3 mm, station 2");
  const ring = page.locator(".check-layer circle").nth(2);
  const before = await ring.boundingBox();
  await page.getByRole("combobox", { name: "Errors drawn" }).selectOption("5");
  await expect.poll(async () => (before?.y ?? 0) - ((await ring.boundingBox())?.y ?? 0)).toBeGreaterThan(5);
});

test("mistakes are tried in a worker; another exercise's readings are not explained", async ({ page }) => {
  await page.goto("/#check");
  const texts = Array.from({ length: 17 }, (_, k) => String(Math.round(60 + 35 * Math.abs(Math.sin(k * 2.1)) + 3 * k)));
  for (const [k, text] of texts.entries()) await field(page, k === 16 ? "Station 0 again" : `Station ${k}`).fill(text);
  await expect(verdict(page)).toContainText("Not explained", { timeout: 20_000 });
  expect(page.workers().map((worker) => worker.url()).join()).toContain("diagnosis.worker");
});

test("an overlay at the drawing's scale is saved as PDF", async ({ page }) => {
  await page.goto("/#check");
  await page.getByRole("combobox", { name: "Drawn at" }).selectOption("1:2");
  const waiting = page.waitForEvent("download");
  await press(page.getByRole("button", { name: "Print an overlay" }));
  const download = await waiting;
  expect(download.suggestedFilename()).toBe("Vent through the lean-to roof, overlay.pdf");
  expect((await readFile(await download.path())).subarray(0, 5).toString()).toBe("%PDF-");
});

test("a class from a CSV file: everyone's line, one after the other in hand by keys, and out again as CSV", async ({ page }) => {
  await page.goto("/#check");
  await press(page.getByRole("button", { name: "Marking list" }));
  const tops = [0, 1, 2, 3, 4, 5].map((k) => ordinate(k));
  const line = (name: string, off: number) => [name, "282,5", ...tops.map((top) => (top + off).toFixed(1).replace(".", ","))].join(";");
  const text = [`Name;Stretch-out;${tops.map((_, k) => `Top ${k}`).join(";")}`, line("Ada Beck", 0), line("Cem Öz", 4), "\"=1+1\";about 280"].join("\r\n");
  const panel = page.getByRole("dialog", { name: "Marking list" });
  await panel.locator("input[type=file]").setInputFiles({ name: "class.csv", mimeType: "text/csv", buffer: Buffer.from(text) });
  await expect(panel.getByRole("row", { name: /Ada Beck/ })).toContainText("all right");
  await expect(panel.getByRole("row", { name: /Cem Öz/ })).toContainText("every ordinate is about 4 mm too long", { timeout: 20_000 });

  await press(panel.getByRole("button", { name: "Ada Beck", exact: true }));
  await expect(page.getByText("Ada Beck, 1 of 3")).toBeVisible();
  await press(page.getByRole("button", { name: "Next student" }));
  await expect(field(page, "Station 0")).toHaveValue("161,0");
  await press(page.getByRole("button", { name: "Next student" }));
  await expect(field(page, "Stretch-out")).toHaveValue("about 280");
  await expect(field(page, "Stretch-out")).toHaveAttribute("aria-invalid", "true");
  await field(page, "Stretch-out").fill("280");

  await press(page.getByRole("button", { name: "Marking list" }));
  const saved = panel.getByRole("button", { name: "Save as CSV" });
  await expect(saved).toBeEnabled({ timeout: 20_000 });
  const waiting = page.waitForEvent("download");
  await press(saved);
  const rows = (await readFile(await (await waiting).path(), "utf8")).split(/\r?\n/);
  expect(rows[0]).toContain("Name,Code,Drawn at");
  expect(rows[3]).toMatch(/^'=1\+1,,1:1,.*280/);
});
