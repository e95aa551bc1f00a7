import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// Cuts by hand: handles dragged by mouse and by touch, stepped by keys; figures typed where they stand.

const angle = '[data-handle="roof-slope.angle"]';

/** The first example with the clause of a cut in hand. */
async function take(page: Page, clause: string): Promise<void> {
  await page.goto("/");
  await page.locator(`.clause[data-clause="${clause}"] input`).first().focus();
  await expect(page.locator('.handle[data-state="in hand"]')).not.toHaveCount(0);
}

async function middle(page: Page, handle: string): Promise<{ x: number; y: number }> {
  const box = await page.locator(handle).boundingBox();
  if (!box) throw new Error(`${handle} is not on the page`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function drag(page: Page, handle: string, x: number, y: number, drop = true): Promise<void> {
  const from = await middle(page, handle);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  for (let i = 1; i <= 6; i++) await page.mouse.move(from.x + (x * i) / 6, from.y + (y * i) / 6);
  if (drop) await page.mouse.up();
}

const field = (page: Page, key: string) => page.locator(`#description [data-field="${key}"]`);

test("a drag of the tilt changes the angle in the sentence, the figure and the handle, and is undone in one step", async ({ page }) => {
  await take(page, "cut:roof-slope");
  await expect(field(page, "roof-slope.angle")).toHaveValue("35");
  await drag(page, angle, 0, -40, false);
  await expect(page.locator(".beside")).toContainText("angle");
  await page.mouse.up();
  const value = await field(page, "roof-slope.angle").inputValue();
  expect(Number(value)).toBeLessThan(30);
  await expect(page.locator(angle)).toHaveAttribute("aria-valuetext", `angle ${value}°`);
  await expect(page.locator(`.letters >> text="${value}°"`)).toHaveCount(1);
  await page.keyboard.press("Control+z");
  await expect(field(page, "roof-slope.angle")).toHaveValue("35");
});

test("the drawing keeps its scale under the hand and fits the window again after it", async ({ page }) => {
  await take(page, "part");
  const before = await middle(page, '[data-handle="part.length"]');
  await drag(page, '[data-handle="part.length"]', 0, 60, false);
  const during = await middle(page, '[data-handle="part.length"]');
  expect(Math.abs(during.y - before.y - 60)).toBeLessThan(4);
  await page.mouse.up();
  await expect(page.locator(".beside")).toHaveCount(0);
});

test("Escape abandons a drag", async ({ page }) => {
  await take(page, "cut:roof-slope");
  await drag(page, angle, 0, -40, false);
  await page.keyboard.press("Escape");
  await page.mouse.up();
  await expect(field(page, "roof-slope.angle")).toHaveValue("35");
  await expect(page.getByRole("button", { name: "Redo" })).toHaveAttribute("aria-disabled", "true");
});

test("all handles are one stop of the Tab key, and so are all figures; Page Down and the arrow keys go on from there", async ({ page }) => {
  await take(page, "cut:branch");
  expect(await page.locator(".grip").count()).toBeGreaterThan(5);
  await expect(page.locator('.grip[tabindex="0"]')).toHaveCount(1);
  await expect(page.locator('.figure[tabindex="0"]')).toHaveCount(1);
  await page.locator('[data-handle="branch.centre"]').focus();
  await page.keyboard.press("Home");
  await expect(page.locator('[data-handle="part.length"]')).toBeFocused();
  await page.keyboard.press("PageDown");
  await expect(page.locator('[data-handle="part.diameter"]')).toBeFocused();
  await page.keyboard.press("PageUp");
  await page.keyboard.press("ArrowUp");
  await expect(field(page, "length")).toHaveValue("221");
  await page.locator(".figure").first().focus();
  await page.keyboard.press("ArrowRight");
  await expect(page.locator(".figure").nth(1)).toBeFocused();
  await expect(page.locator('.figure[tabindex="0"]')).toHaveCount(1);
});

test("a handle does not go where nothing can be cut, and says why", async ({ page }) => {
  await take(page, "cut:roof-slope");
  await drag(page, '[data-handle="roof-slope.height"]', 0, 420, false);
  await expect(page.locator(".beside")).toContainText("Nothing would be left");
  await page.mouse.up();
  const value = Number(await field(page, "roof-slope.height").inputValue());
  expect(value).toBeGreaterThan(0);
  await expect(field(page, "roof-slope.height")).not.toHaveAttribute("aria-invalid", "true");
});

test("keys step a handle, and Enter goes to the field", async ({ page }) => {
  await take(page, "cut:branch");
  const centre = page.locator('[data-handle="branch.centre"]');
  await centre.focus();
  await page.keyboard.press("ArrowUp");
  await expect(field(page, "branch.height")).toHaveValue("71");
  await page.keyboard.press("Shift+ArrowDown");
  await expect(field(page, "branch.height")).toHaveValue("61");
  await page.keyboard.press("Alt+ArrowRight");
  await expect(field(page, "branch.offset")).toHaveValue("0.1");
  await page.keyboard.press("Enter");
  await expect(field(page, "branch.offset")).toBeFocused();
});

test("a number typed in the sentence moves the handle", async ({ page }) => {
  await take(page, "cut:branch");
  const before = await middle(page, '[data-handle="branch.centre"]');
  await field(page, "branch.height").fill("100");
  await field(page, "branch.height").press("Enter");
  await expect.poll(async () => (await middle(page, '[data-handle="branch.centre"]')).y).toBeLessThan(before.y - 20);
});

test("a figure that states a field is typed where it stands; one that follows leads to its clause", async ({ page }) => {
  await take(page, "cut:branch");
  await page.getByRole("button", { name: /^Diameter of the opening/ }).click();
  const typing = page.locator(".figure-typing input");
  await expect(typing).toBeFocused();
  await typing.fill("20*2+4");
  await typing.press("Enter");
  await expect(field(page, "branch.outline.diameter")).toHaveValue("44");
  await page.getByRole("button", { name: /^Diameter of the opening/ }).click();
  await typing.fill("9");
  await typing.press("Escape");
  await expect(typing).toHaveCount(0);
  await expect(field(page, "branch.outline.diameter")).toHaveValue("44");
  await page.getByRole("button", { name: /^(?:stretch-out|girth) / }).click();
  await expect(page.locator('.clause[data-clause="stations"] :focus')).toHaveCount(1);
});

test("the board is calm until a cut is in hand, and after the bare paper is pressed", async ({ page }) => {
  await page.goto("/");
  await page.mouse.move(700, 500);
  await expect(page.locator(".handle")).not.toHaveCount(0);
  await expect(page.locator('.handle:not([data-state="away"])')).toHaveCount(0);
  await page.locator('[data-clause="cut:branch"] .reach path').first().hover({ force: true });
  await expect(page.locator('[data-handle="branch.centre"]')).toBeVisible();
  await page.locator(".drawing").click({ position: { x: 5, y: 5 } });
  await expect(page.locator('.handle:not([data-state="away"])')).toHaveCount(0);
});

test.describe("under a finger", () => {
  test.use({ hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } });

  test("a handle is dragged and the board stays where it is on the screen", async ({ page }) => {
    await take(page, "cut:branch");
    const handle = page.locator('[data-handle="branch.centre"]');
    await handle.scrollIntoViewIfNeeded();
    const box = await handle.boundingBox();
    expect(box?.width).toBeGreaterThanOrEqual(24);
    expect((await page.locator('[data-handle="branch.direction"]').boundingBox())?.width).toBeGreaterThanOrEqual(44);
    // What is said at a field above goes away meanwhile, and the page scrolls by as much: the board itself is watched.
    const boardTop = () => page.locator(".drawing").first().evaluate((board) => Math.round(board.getBoundingClientRect().top));
    const stood = await boardTop();
    const from = await middle(page, '[data-handle="branch.centre"]');
    const touch = await page.context().newCDPSession(page);
    const at = (type: string, y: number) => touch.send("Input.dispatchTouchEvent", { type: type as "touchMove", touchPoints: type === "touchEnd" ? [] : [{ x: from.x, y }] });
    await at("touchStart", from.y);
    for (let i = 1; i <= 8; i++) await at("touchMove", from.y - 4 * i);
    await at("touchEnd", 0);
    await expect.poll(async () => Number(await field(page, "branch.height").inputValue())).toBeGreaterThan(80);
    expect(await boardTop()).toBe(stood);
    expect(Number(await field(page, "branch.height").inputValue()) % 1).toBe(0);
    // Without snapping the same hand meets hundredths.
    const snap = page.getByRole("button", { name: "Snap" });
    // Where other work holds the machine up, the browser takes a touch for no tap: then it is tapped again.
    await expect(async () => {
      if ((await snap.getAttribute("aria-pressed")) === "true") await snap.tap();
      await expect(snap).toHaveAttribute("aria-pressed", "false", { timeout: 1000 });
    }).toPass();
    // The page may still be moving after the tap: the finger takes hold again until it has the handle.
    await expect(async () => {
      await handle.scrollIntoViewIfNeeded();
      const again = await middle(page, '[data-handle="branch.centre"]');
      const then = (type: string, y: number) => touch.send("Input.dispatchTouchEvent", { type: type as "touchMove", touchPoints: type === "touchEnd" ? [] : [{ x: again.x, y }] });
      await then("touchStart", again.y);
      for (let step = 1; step <= 7; step++) await then("touchMove", again.y + 3 * step);
      await then("touchEnd", 0);
      await expect.poll(async () => Number(await field(page, "branch.height").inputValue()) % 1, { timeout: 3000 }).not.toBe(0);
    }).toPass();
  });
});
