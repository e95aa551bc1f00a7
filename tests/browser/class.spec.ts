import { readFile } from "node:fs/promises";
import type { Page } from "@playwright/test";
import jsQR from "jsqr";
import Papa from "papaparse";
import { pdfFile } from "../support/poppler";
import { expect, test } from "./page";

// A class set: ranges, a list, the files read back by poppler and a code reader, a student's piece opened by its code and by its link.

const list = 'Name,Class\n"Winter, Ada ""Addi""",3b\n=1+1,3b\nŁukasz Żółć,3b\nBo Sommer,3c\n';

async function toClass(page: Page): Promise<void> {
  await page.goto("/#teach");
  await page.getByRole("button", { name: "Own dimensions" }).click();
  await page.getByRole("checkbox", { name: "The pipe: Diameter", exact: true }).check();
  await page.getByRole("checkbox", { name: "Slanted end: Angle from square" }).check();
}

async function saved(page: Page, verb: string): Promise<Buffer> {
  const waiting = page.waitForEvent("download", { timeout: 60_000 });
  await page.getByRole("button", { name: verb }).click();
  return readFile(await (await waiting).path());
}

test("a class set is made from a list, and each student's piece is opened by its code and by the code on its sheet", async ({ page, context, baseURL }) => {
  test.setTimeout(120_000);
  await toClass(page);
  await page.getByRole("textbox", { name: "Slanted end: Angle from square, step" }).fill("2.5");
  await page.keyboard.press("Enter");
  await page.getByLabel("Class list to open").setInputFiles({ name: "class.csv", mimeType: "text/csv", buffer: Buffer.from(list) });
  await expect(page.locator(".class-fields")).toContainText("4 students");
  await expect(page.locator(".pieces-count")).toContainText("pieces that differ in their answers, of 81 ways to choose");
  const rows = page.locator(".pieces tbody tr");
  await expect(rows).toHaveCount(4);
  const codes = await page.locator(".pieces .code").allTextContents();
  expect(new Set(codes).size).toBe(4);

  const questions = pdfFile(await saved(page, "Questions (PDF)"));
  const pageText = (number: number) => questions.ask("pdftotext", "-layout", "-f", String(number), "-l", String(number));
  expect(questions.ask("pdfinfo")).toMatch(/Pages:\s+4\b/);
  for (const [i, name] of ['Winter, Ada "Addi"', "=1+1", "Łukasz Żółć", "Bo Sommer"].entries()) {
    expect(pageText(i + 1)).toContain(name);
    expect(pageText(i + 1)).toContain(codes[i]);
  }

  const answers = Papa.parse<Record<string, string>>((await saved(page, "Answers (CSV)")).toString("utf8").replace(/^\ufeff/, ""), { header: true, skipEmptyLines: true }).data;
  expect(answers.map(({ code }) => code)).toEqual(codes);
  expect(answers.map(({ name }) => name)).toEqual(['Winter, Ada "Addi"', "'=1+1", "Łukasz Żółć", "Bo Sommer"]);
  const keys = pdfFile(await saved(page, "Keys (PDF)"));
  const keyText = keys.ask("pdftotext", "-layout");
  for (const answer of answers) expect(keyText).toContain(Number(answer["Stretch-out mm"]).toString());

  // The code on the third sheet, as a camera sees it.
  const { width, height, grey } = questions.raster(3, 150);
  const pixels = new Uint8ClampedArray(width * height * 4);
  grey.forEach((tone, at) => pixels.set([tone, tone, tone, 255], at * 4));
  const [scale] = /\b1:(2|5|10)\b/.exec(pageText(3)) ?? [];
  const link = jsQR(pixels, width, height)?.data ?? "";
  expect(link.startsWith(`${baseURL}/#check/${codes[2]}?of=`)).toBe(true);
  questions.remove();
  keys.remove();

  // Another device: nothing of the exercise is there.
  const device = await context.browser()?.newContext();
  const other = await device?.newPage();
  if (!device || !other) throw new Error("no browser");
  await other.goto(link);
  await expect(other.getByLabel("Title of the job")).toHaveValue(`Vent through the lean-to roof, ${codes[2]}`);
  await expect(other.getByRole("textbox", { name: "Stretch-out", exact: true })).toBeVisible();
  await expect(other.locator(".rod")).toContainText(String(Number(answers[2]?.["Stretch-out mm"])));
  await expect(other.getByRole("button", { name: "Bring it back" })).toBeHidden();
  // Checked at the scale of the sheet.
  expect(scale).toBeDefined();
  await expect(other.getByRole("combobox", { name: "Drawn at" })).toHaveValue(scale ?? "");
  await device.close();

  await page.getByLabel("Code on the sheet").fill(` ${codes[1]?.toLowerCase()}`);
  await page.locator(".open-code").getByRole("button", { name: "Open" }).click();
  await expect(page.getByLabel("Title of the job")).toHaveValue(`Vent through the lean-to roof, ${codes[1]}`);
  await expect(page.locator(".rod")).toContainText(String(Number(answers[1]?.["Stretch-out mm"])));
  await page.getByRole("link", { name: "Check" }).click();
  await expect(page.getByRole("combobox", { name: "Drawn at" })).toHaveValue(scale ?? "");
  await page.getByRole("link", { name: "Teach" }).click();
  await page.getByRole("button", { name: "Bring it back" }).click();
  await expect(page.locator(".pieces .code").first()).toHaveText(codes[0] ?? "");
});

test("making thirty keys says how far it is, leaves the page in hand, and is given up on request", async ({ page }) => {
  await toClass(page);
  await expect(page.locator(".pieces-count")).toContainText("45 pieces");
  let downloads = 0;
  page.on("download", () => downloads++);
  // The longest pause between two moments in which the page can answer.
  await page.evaluate(() => {
    const longest = { pause: 0, last: performance.now() };
    Object.assign(window, { longest });
    setInterval(() => {
      longest.pause = Math.max(longest.pause, performance.now() - longest.last);
      longest.last = performance.now();
    }, 1);
  });
  await page.getByRole("button", { name: "Keys (PDF)" }).click();
  await expect(page.locator(".set")).toContainText(/Student \d+ of 30/, { timeout: 60_000 });
  await page.getByRole("button", { name: "Cancel" }).click();
  await expect(page.getByRole("button", { name: "Keys (PDF)" })).toBeVisible();
  expect(downloads).toBe(0);
  expect(await page.evaluate(() => (window as unknown as { longest: { pause: number } }).longest.pause)).toBeLessThan(1500);
});

test("a list that cannot be read, ranges without pieces and a wrong code are said where they are", async ({ page }) => {
  await toClass(page);
  await page.getByLabel("Class list to open").setInputFiles({ name: "list.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from([0x50, 0x4b, 3, 4, 0, 0]) });
  await expect(page.locator(".class-fields .fault")).toContainText("This is no text");
  await page.getByRole("checkbox", { name: "Least ordinate" }).check();
  await page.getByRole("textbox", { name: "Least ordinate" }).fill("215");
  await page.keyboard.press("Enter");
  await expect(page.locator(".pieces-count .fault")).toContainText("No piece can be had; 30 students need one each.");
  await expect(page.locator(".pieces-count .fault li")).toHaveText("45 had an ordinate too short");
  await page.getByLabel("Code on the sheet").fill("5KQ2M-3F");
  await page.keyboard.press("Enter");
  await expect(page.locator(".open-code + .fault")).toContainText(/letter of this code is wrong|another exercise/);
});

test("what differs is kept with the job, and the list on the device, when the page is loaded again", async ({ page }) => {
  await toClass(page);
  await page.getByPlaceholder(/^Names, one a line/).fill("Ada Winter\nBo Sommer");
  await page.getByRole("button", { name: "Take these names" }).click();
  await expect(page.locator(".pieces .who")).toHaveText(["Ada Winter", "Bo Sommer"]);
  const codes = await page.locator(".pieces .code").allTextContents();
  await page.reload();
  await page.getByRole("button", { name: "Own dimensions" }).click();
  await expect(page.getByRole("checkbox", { name: "The pipe: Diameter", exact: true })).toBeChecked();
  await expect(page.locator(".pieces .code")).toHaveText(codes);

  // So is the exercise of a piece that was opened by its code.
  const openCode = async (code: string) => {
    await page.getByLabel("Code on the sheet").fill(code);
    await page.keyboard.press("Enter");
    await expect(page.getByLabel("Title of the job")).toHaveValue(`Vent through the lean-to roof, ${code}`);
  };
  await openCode(codes[0] ?? "");
  await page.reload();
  await page.getByRole("button", { name: "Own dimensions" }).click();
  await openCode(codes[1] ?? "");
  await page.getByRole("button", { name: "Back to the exercise" }).click();
  await expect(page.locator(".pieces .code")).toHaveText(codes);
});
