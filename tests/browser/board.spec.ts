import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./page";

// The station and the clause in hand: taken anywhere, shown everywhere.

const inHand = ".station-layer .role-in-hand.line";
const trueLength = ".station-layer .role-true-length.letters";

test.beforeEach(async ({ page }) => {
  await page.goto("/");
});

test("pointing at a station line of the pattern shows its element in the views and its true length", async ({ page }) => {
  await pointAtColumnOf(page, "8");
  await expect(page.locator(".readout")).toContainText("Station 8");
  await expect.poll(() => page.locator(inHand).count()).toBeGreaterThanOrEqual(2);
  await expect(page.locator(trueLength)).toHaveText("220");
});

test("a click keeps the station; Escape puts it down", async ({ page }) => {
  await pointAtColumnOf(page, "8");
  await page.mouse.down();
  await page.mouse.up();
  await page.mouse.move(5, 5);
  await expect(page.locator(".readout")).toContainText("Station 8");
  await page.locator(".board").focus();
  await page.keyboard.press("Escape");
  await expect(page.locator(inHand)).toHaveCount(0);
});

test("arrow keys on the board move the station through all views and the table", async ({ page }) => {
  await page.locator(".board").focus();
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");
  await expect(page.locator(".readout")).toContainText("Station 1");
  await expect(page.locator('.station-table td[data-in-hand]').first()).toHaveText("337.5°");
  await page.keyboard.press("End");
  await expect(page.getByRole("slider", { name: "Stretch-out rod" })).toHaveAttribute("aria-valuenow", "16");
});

test("sweeping along the rod moves the station", async ({ page }) => {
  const box = await page.locator(".rod-scale").boundingBox();
  if (!box) throw new Error("no rod");
  await page.mouse.move(box.x + box.width / 2, box.y + 40);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width - 20, box.y + 40, { steps: 8 });
  await page.mouse.up();
  await expect(page.getByRole("slider", { name: "Stretch-out rod" })).toHaveAttribute("aria-valuenow", "16");
});

test("taking a station in hand moves nothing else on the page", async ({ page }) => {
  const before = await page.locator(".drawing").getAttribute("viewBox");
  await page.locator(".rod-scale").focus();
  await page.keyboard.press("ArrowRight");
  await expect(page.locator(".readout")).toContainText("Station 0");
  expect(await page.locator(".drawing").getAttribute("viewBox")).toBe(before);
});

test("a clause lights up its feature, and the feature its clause", async ({ page }) => {
  const clause = page.getByRole("group", { name: "Round opening" });
  await clause.hover();
  expect(await page.locator('.feature[data-lit][data-clause="cut:branch"]').count()).toBeGreaterThan(0);
  await page.mouse.move(5, 5);
  await expect(page.locator(".feature[data-lit]")).toHaveCount(0);
  await page.locator('[data-clause="cut:branch"] .reach path').first().dispatchEvent("pointerover");
  await expect(page.locator("li.clause[data-in-hand]")).toContainText("A round opening");
});

test("a number is stepped by dragging it sideways", async ({ page }) => {
  const field = page.getByRole("textbox", { name: "Angle from square" });
  const at = await readyToDrag(page, field);
  await page.mouse.down();
  await page.mouse.move(at.x + 27, at.y, { steps: 9 });
  await page.mouse.up();
  await expect(field).toHaveValue("40");
});

test("dragged beyond what can be made a number says why, and then stays at the last that could", async ({ page }) => {
  const field = page.getByRole("textbox", { name: "Angle from square" });
  const at = await readyToDrag(page, field);
  await page.mouse.down();
  await page.mouse.move(at.x + 150, at.y, { steps: 30 });
  await page.mouse.move(at.x + 600, at.y, { steps: 3 });
  const fault = page.locator("#description .fault");
  await expect(fault).not.toBeEmpty();
  await page.mouse.up();
  await expect(fault).toHaveCount(0);
  const kept = Number(await field.inputValue());
  expect(kept).toBeGreaterThan(40);
  expect(kept).toBeLessThan(90);
  await page.keyboard.press("Control+z");
  await expect(field).toHaveValue("35");
});

test("Escape gives a sideways drag up: the number, the drawing and undo are as before", async ({ page }) => {
  const field = page.getByRole("textbox", { name: "Angle from square" });
  const at = await readyToDrag(page, field);
  await page.mouse.down();
  await page.mouse.move(at.x + 40, at.y, { steps: 5 });
  await expect(field).toHaveValue("43");
  await page.keyboard.press("Escape");
  await expect(field).toHaveValue("35");
  await page.mouse.move(at.x + 80, at.y, { steps: 3 });
  await page.mouse.up();
  await expect(field).toHaveValue("35");
  await expect(page.locator(".drawing .letters").filter({ hasText: /^35°$/ })).toHaveCount(1);
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute("aria-disabled", "true");
});

/** Hovers over a field until what follows a sideways drag has come, fetched at the first touch, and the page stands still: where its middle is then. */
async function readyToDrag(page: Page, field: Locator): Promise<{ x: number; y: number }> {
  await field.hover();
  await page.waitForFunction(() => performance.getEntriesByType("resource").some(({ name }) => /\/editing-[^/]*\.js$/.test(name)));
  await expect(page.getByRole("button", { name: "Copy table" })).toBeVisible();
  await page.waitForLoadState("networkidle");
  await field.hover();
  const box = await field.boundingBox();
  if (!box) throw new Error("no field");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Moves the pointer to the middle of the pattern's line of this station. */
async function pointAtColumnOf(page: Page, label: string): Promise<void> {
  const numbers = page.locator('.drawing .letters').filter({ hasText: new RegExp(`^${label}$`) });
  const boxes = (await Promise.all((await numbers.all()).map((one) => one.boundingBox()))).flatMap((box) => (box ? [box] : []));
  // The pattern stands rightmost; its number stands at the foot and at the head of the line.
  const right = Math.max(...boxes.map((box) => box.x));
  const own = boxes.filter((box) => Math.abs(box.x - right) < 3);
  const ys = own.map((box) => box.y);
  await page.mouse.move((own[0]?.x ?? 0) + (own[0]?.width ?? 0) / 2, (Math.min(...ys) + Math.max(...ys)) / 2);
}
