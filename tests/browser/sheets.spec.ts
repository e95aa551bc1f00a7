import { readFile } from "node:fs/promises";
import { expect, test } from "./page";
import { pdfPages } from "./pdfPages";

// Sheets for a class: chosen and worded in the margin of a lesson, shown before they are made, saved as a PDF true to scale.

test("a question with its development begun is worded, shown and saved, as long as the stretch-out at its scale", async ({ page }) => {
  await page.goto("/#teach/data");
  await page.getByRole("button", { name: "Sheets", exact: true }).click();
  await expect(page.getByRole("heading", { name: "Sheets for the class" })).toBeVisible();
  await page.getByRole("combobox", { name: "Paper", exact: true }).selectOption("A3");
  await page.getByRole("checkbox", { name: /^Key/ }).uncheck();
  await page.getByRole("checkbox", { name: "Question with the pattern begun" }).check();
  await page.getByRole("textbox", { name: "School", exact: true }).fill("Harbour Road School");
  await page.getByRole("textbox", { name: "What is to be done" }).fill("Develop the vent.");
  await expect(page.getByText("1 page of A3, drawn 1:2")).toHaveCount(2);
  const preview = page.getByRole("img", { name: "Question, page 1" });
  await expect(preview).toContainText("Harbour Road School");
  await expect(preview).toContainText("Develop the vent.");
  await expect(preview).not.toContainText("282.74");

  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as PDF" }).click();
  const download = await waiting;
  expect(download.suggestedFilename()).toBe("Vent through the lean-to roof, class sheets, A3.pdf");
  const sheets = pdfPages(await readFile(await download.path()));
  expect(sheets.map(({ width, height }) => [Math.round(width), Math.round(height)])).toEqual([[420, 297], [420, 297]]);
  // ⌀90 at 1:2: only the development begun has a line as long as the stretch-out.
  const stretchOut = (Math.PI * 90) / 2;
  const lines = sheets.map(({ paths }) => paths.filter(({ points }) => Math.abs(Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x)) - stretchOut) < 0.01).length);
  expect(lines[0]).toBe(0);
  expect(lines[1]).toBeGreaterThan(0);

  await page.reload();
  await page.getByRole("button", { name: "Sheets", exact: true }).click();
  await expect(page.getByRole("textbox", { name: "School", exact: true })).toHaveValue("Harbour Road School");
});

test("a scale that does not fit its paper is said, and nothing is made until another is chosen", async ({ page }) => {
  await page.goto("/#teach/data");
  await page.getByRole("button", { name: "Sheets", exact: true }).click();
  await page.getByRole("combobox", { name: "Paper", exact: true }).selectOption("A4");
  await page.getByRole("combobox", { name: "Scale", exact: true }).selectOption("1:1");
  await expect(page.getByRole("alert").first()).toBeVisible();
  await expect(page.getByRole("button", { name: "Save as PDF" })).toBeDisabled();
  await page.getByRole("combobox", { name: "Scale", exact: true }).selectOption("the largest that fits");
  await expect(page.getByRole("button", { name: "Save as PDF" })).toBeEnabled();
});
