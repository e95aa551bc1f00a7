import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./page";

// The pictorial view: in the corner of a wide board, behind a verb on a phone; turned and rolled.

const slider = (page: Page) => page.getByRole("slider", { name: "Rolled up" });
const picture = (page: Page) => page.getByRole("img", { name: /^The piece/ });
const drawing = (page: Page) => picture(page).locator("svg").innerHTML();
const rolled = async (page: Page) => Number(await slider(page).inputValue());

async function open(page: Page): Promise<void> {
  await page.goto("/");
  await page.getByLabel("Board", { exact: true }).first().hover({ position: { x: 20, y: 20 } });
  await expect(picture(page)).toBeVisible();
}

async function drag(page: Page, what: Locator, right: number, down: number): Promise<void> {
  const box = await what.boundingBox();
  if (!box) throw new Error("nothing to drag");
  const x = box.x + box.width / 2, y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + right, y + down, { steps: 4 });
  await page.mouse.up();
}

test("it is fetched when the page is touched, not with the page", async ({ page }) => {
  await page.goto("/", { waitUntil: "networkidle" });
  await expect(picture(page)).toHaveCount(0);
  await page.keyboard.press("Tab");
  await expect(picture(page)).toBeVisible();
});

test("where motion is unwelcome Roll up and Lay flat go to the end at once", async ({ page }) => {
  await open(page);
  expect(await rolled(page)).toBe(100);
  await page.getByRole("button", { name: "Lay flat" }).click();
  expect(await rolled(page)).toBe(0);
  await page.getByRole("button", { name: "Roll up" }).click();
  expect(await rolled(page)).toBe(100);
});

test("else Roll up plays from the flat sheet to the pipe, through every stage between", async ({ page }) => {
  await page.emulateMedia({ reducedMotion: "no-preference" });
  await open(page);
  const pipe = await drawing(page);
  await page.getByRole("button", { name: "Roll up" }).click();
  await expect.poll(() => rolled(page)).toBeLessThan(100);
  await expect(page.getByRole("button", { name: "Pause" })).toBeVisible();
  await expect(page.getByRole("button", { name: "Roll up" })).toBeVisible();
  expect(await rolled(page)).toBe(100);
  expect(await drawing(page)).toBe(pipe);
});

test("dragging and arrow keys turn it, i and the button bring the isometric view back", async ({ page }) => {
  await open(page);
  const isometric = await drawing(page);
  await drag(page, picture(page), 40, -20);
  await expect.poll(() => drawing(page)).not.toBe(isometric);
  await page.getByRole("button", { name: "Isometric" }).click();
  await page.mouse.move(0, 0);
  await expect.poll(() => drawing(page)).toBe(isometric);
  await picture(page).focus();
  await page.keyboard.press("ArrowLeft");
  await expect.poll(() => drawing(page)).not.toBe(isometric);
  await page.keyboard.press("i");
  await expect.poll(() => drawing(page)).toBe(isometric);
});

test("the slider keeps its arrow keys to itself", async ({ page }) => {
  await open(page);
  await slider(page).focus();
  await page.keyboard.press("ArrowLeft");
  expect(await rolled(page)).toBe(99);
  await expect(page.locator(".role-in-hand")).toHaveCount(0);
});

test("every control is large enough to be pressed", async ({ page }) => {
  await open(page);
  for (const control of await page.locator(".roll-up-controls :is(button, input)").all()) {
    const box = await control.boundingBox();
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(24);
  }
});

test("pointing at it takes a station in hand on the board too, and the other way round", async ({ page }) => {
  await open(page);
  const box = await picture(page).boundingBox();
  if (!box) throw new Error("no picture");
  await page.mouse.move(box.x + box.width / 2, box.y + box.height * 0.7);
  await expect(page.locator(".station-layer .role-in-hand").first()).toBeAttached();
  await page.mouse.move(0, 0);
  await expect(page.locator(".pictorial .role-in-hand")).toHaveCount(0);
  await page.getByRole("slider", { name: "Stretch-out rod" }).focus();
  await page.keyboard.press("Home");
  await expect(page.locator(".pictorial .role-in-hand").first()).toBeAttached();
});

test("on a phone a verb opens it, and a finger turns it", async ({ browser, baseURL }) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, reducedMotion: "reduce" });
  const page = await context.newPage();
  await page.goto(baseURL ?? "");
  await page.getByRole("button", { name: "More", exact: true }).tap();
  await page.getByRole("button", { name: "Roll up" }).tap();
  await expect(picture(page)).toBeVisible();
  const before = await drawing(page);
  const box = await picture(page).boundingBox();
  if (!box) throw new Error("no picture");
  const touch = await context.newCDPSession(page);
  const at = (x: number) => [{ x: box.x + x, y: box.y + box.height / 2 }];
  await touch.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: at(100) });
  await touch.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: at(150) });
  await touch.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await expect.poll(() => drawing(page)).not.toBe(before);
  await context.close();
});

test("the verb that a board without room brings waits until what is pressed just then has been taken", async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto("/");
  const diameter = page.getByRole("textbox", { name: "Diameter", exact: true });
  await diameter.focus();
  await expect(page.locator(".board-corner")).toBeVisible();
  await diameter.fill("60");
  const verb = page.getByRole("banner").getByRole("button", { name: "Examples", exact: true });
  await verb.hover();
  const stood = await verb.boundingBox();
  await page.mouse.down();
  await expect(page.locator(".board-corner")).toHaveCount(0);
  expect(await verb.boundingBox()).toEqual(stood);
  await page.mouse.up();
  await expect(page.getByRole("dialog", { name: "Examples" })).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(page.getByRole("banner").getByRole("button", { name: "Roll up" })).toBeVisible();
});
