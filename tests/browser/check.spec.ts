import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// A drawing checked with the keyboard alone, then with a column from a spreadsheet. The piece is the first example: 90 mm, cut at 35°, 16 stations.

const ordinate = (k: number): number => 220 - 45 * Math.tan((35 * Math.PI) / 180) * (1 + Math.cos((Math.PI * k) / 8));
const field = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });
const verdict = (page: Page) => page.locator(".verdict");

test("readings are typed from field to field, judged in words, and there again after reloading", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("link", { name: "Check" }).press("Enter");
  await field(page, "Stretch-out").focus();
  // Sixteen chords of 90 mm: 16 × 90 sin 11.25° = 280.93 (DIS-01: 0.9936 of 282.74).
  for (const text of ["281", "17.5", "35", ...[0, 1, 2, 3, 4].map((k) => `${Math.round(ordinate(k) * 2) / 2}`)]) {
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
  }
  await expect(field(page, "Station 5")).toBeFocused();
  await expect(verdict(page)).toContainText("1 of 8 readings is off by more than 1 mm");
  await expect(verdict(page)).toContainText("stepped off with chords");
  await page.reload();
  await expect(field(page, "Stretch-out")).toHaveValue("281");
  await expect(page.locator(".check-layer circle")).toHaveCount(5);
});

test("a table of stations and ordinates from a file is laid by its stations, its heading left out, and its commas turned round", async ({ page }) => {
  await page.goto("/#check");
  const text = ["Station;Ordinate", ...Array.from({ length: 17 }, (_, k) => `${k % 16};${ordinate(k).toFixed(3).replace(".", ",")}`)].join("\n");
  await field(page, "Station 3").evaluate((input, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text", text);
    input.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, text);
  await expect(verdict(page)).toContainText("All 17 readings are right within 1 mm");
  await expect(page.locator(".paste-note")).toContainText("The heading “Station; Ordinate” was left out. The first column names the stations");
  await page.getByRole("button", { name: "Read the commas as parting thousands" }).press("Enter");
  await expect(field(page, "Station 0")).toHaveValue(String(Math.round(ordinate(0) * 1000)));
  await page.getByRole("button", { name: "Take the paste back" }).press("Enter");
  await expect(field(page, "Station 0")).toHaveValue("");
});

test("a pasted column with an ordinate skipped is explained, and text among it is refused at its field", async ({ page }) => {
  await page.goto("/#check");
  const column = Array.from({ length: 17 }, (_, k) => (k === 15 ? "see over" : (Math.round(ordinate(k < 4 ? k : k + 1) * 2) / 2).toString().replace(".", ",")));
  await field(page, "Station 0").evaluate((input, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text", text);
    input.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, column.join("\n"));
  await expect(verdict(page)).toContainText("the ordinate of station 4 was left out");
  await expect(field(page, "Station 15")).toHaveValue("see over");
  await expect(field(page, "Station 15")).toHaveAttribute("aria-invalid", "true");
});
