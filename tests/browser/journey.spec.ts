import { readFile, writeFile } from "node:fs/promises";
import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./page";

// One sitting at the app: describe a pipe, read its table, keep it, get it back, and come through bad input.

test.beforeEach(async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Examples" }).click();
  await page.getByRole("button", { name: "Vent through the lean-to roof" }).click();
  await expect(row(page, "Top")).toBeVisible();
});

test("a steeper cut shows its new ordinates in the table", async ({ page }) => {
  await type(page.getByLabel("Diameter", { exact: true }), "100");
  await type(page.getByRole("textbox", { name: "Angle from square" }), "45");
  await expect(cells(page, "Top").first()).toHaveText("120");
  await expect(cells(page, "Element").first()).toHaveText("120");
  await expect(cells(page, "Stretch-out").last()).toHaveText("314.16");
});

test("the table has a column for each station asked for, and the first again at the end", async ({ page }) => {
  await type(page.getByLabel("Number of stations"), "24");
  await expect(cells(page, "Top")).toHaveCount(25);
  await expect(cells(page, "Top").nth(12)).toHaveText("220");
});

test("a measure may be typed as a sum, a fraction, or in inches", async ({ page }) => {
  const diameter = page.getByLabel("Diameter", { exact: true });
  await type(diameter, "180-2*45");
  await expect(diameter).toHaveValue("90");
  await type(diameter, "4 1/2 in");
  await expect(diameter).toHaveValue("114.3");
});

test("a measure that cannot be is said at its field, and the last good drawing stays", async ({ page }) => {
  const diameter = page.getByLabel("Diameter", { exact: true });
  const before = await drawn(page);
  for (const bad of ["abc", "0", "-5", "1e99"]) {
    await type(diameter, bad);
    await expect(diameter).toHaveAttribute("aria-invalid", "true");
    await expect(diameter).toHaveValue(bad);
    expect(await drawn(page)).toEqual(before);
  }
});

test("the job is there again after the page is loaded anew", async ({ page }) => {
  await type(page.getByRole("textbox", { name: "Angle from square" }), "41.5");
  await page.reload();
  await expect(page.getByRole("textbox", { name: "Angle from square" })).toHaveValue("41.5");
});

test("a saved job is a file that opens to the same job", async ({ page }) => {
  await type(page.getByRole("textbox", { name: "Angle from square" }), "41.5");
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const path = await (await waiting).path();
  const saved = await readFile(path, "utf8");
  await page.getByRole("button", { name: "New" }).click();
  await expect(page.getByRole("textbox", { name: "Angle from square" })).toHaveCount(0);
  await open(page, "saved.json", saved);
  await expect(page.getByRole("textbox", { name: "Angle from square" })).toHaveValue("41.5");
});

test("the table is saved as CSV", async ({ page }) => {
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as CSV" }).click();
  const text = await readFile(await (await waiting).path(), "utf8");
  expect(text.trim().split(/\r?\n/).length).toBeGreaterThan(16);
  expect(text).toContain("156.98");
});

const badFiles: Readonly<Record<string, string>> = {
  "not a job": JSON.stringify({ hello: "world" }),
  "cut short": `{"format":"flatwright-job","version":2,"title":"half`,
  "of a newer version": JSON.stringify({ format: "flatwright-job", version: 99 }),
  "fifty megabytes long": `"${"x".repeat(50_000_000)}"`,
};
for (const [what, text] of Object.entries(badFiles)) {
  test(`a file that is ${what} is refused by name, and the drawing stays`, async ({ page }) => {
    const before = await drawn(page);
    await open(page, "bad.json", text);
    await expect(page.getByRole("status").first()).toContainText("bad.json");
    expect(await drawn(page)).toEqual(before);
  });
}

test("a title that holds a script is shown as the text it is", async ({ page }) => {
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const job = JSON.parse(await readFile(await (await waiting).path(), "utf8")) as { title: string };
  const title = `<img src=x onerror="document.title='run'"><script>document.title='run'</script>`;
  await open(page, "title.json", JSON.stringify({ ...job, title }));
  await expect(page.getByLabel("Title of the job")).toHaveValue(title);
  expect(await page.title()).not.toBe("run");
});

/** Every line and every figure on the board. */
function drawn(page: Page): Promise<(string | null)[]> {
  return page.locator("section.board svg").first().locator("path, circle, text").evaluateAll((all) => all.map((one) => one.getAttribute("d") ?? one.textContent));
}

function row(page: Page, name: string): Locator {
  return page.getByRole("row", { name: new RegExp(`^${name} `) });
}

function cells(page: Page, name: string): Locator {
  return row(page, name).getByRole("cell");
}

async function type(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press("Enter");
}

async function open(page: Page, name: string, text: string): Promise<void> {
  const path = test.info().outputPath(name);
  await writeFile(path, text);
  await page.getByLabel("Job file to open").setInputFiles(path);
}
