import type { CDPSession, Page } from "@playwright/test";
import { expect, test } from "./page";

// By fingers alone, on a phone: stations tapped, the rod swept, numbers dragged, figures typed, and touches the device breaks off.

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

const readout = (page: Page) => page.locator(".rod .readout");
const angle = (page: Page) => page.getByRole("textbox", { name: "Angle from square" });
const scrolled = (page: Page) => page.evaluate(() => scrollY);

test.beforeEach(async ({ page }) => {
  await page.goto("/");
  await page.touchscreen.tap(200, 4);
  await expect(page.getByRole("button", { name: "Closer", exact: true })).toBeAttached();
});

test("a tap takes a station in every view, the pattern and the table, between stations when asked for, and puts it down beside them", async ({ page }) => {
  const board = await toBoard(page);
  const middle = async (label: string) => {
    const box = await page.locator(".drawing .letters").filter({ hasText: new RegExp(`^${label}$`) }).first().boundingBox();
    if (!box) throw new Error(`no ${label}`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  // The first of each number stands at the circle of the top view, which stands under the front view.
  const four = await middle("4"), eight = await middle("8");
  await page.touchscreen.tap(four.x + 25, four.y);
  await expect(readout(page)).toContainText("Station 4");
  await page.touchscreen.tap(eight.x, eight.y - 60);
  await expect(readout(page)).toContainText("Station 0");
  await page.getByRole("button", { name: "Between stations" }).tap();
  await page.touchscreen.tap(eight.x + 9, eight.y - 60);
  await expect(readout(page)).toContainText("Between 15 and 0");
  await page.getByRole("button", { name: "Between stations" }).tap();
  await page.touchscreen.tap(board.x + 3, board.y + 3);
  await expect(readout(page)).toContainText("Sweep along the rod");
  await page.locator(".station-table td").nth(2).tap();
  await expect(readout(page)).toContainText("Station 2");
});

test("a finger sweeps the rod while the page stands, and drags a number sideways; upwards it scrolls the page and changes nothing", async ({ page, context }) => {
  const fingers = await context.newCDPSession(page);
  const rod = await page.locator(".rod-scale").boundingBox();
  if (!rod) throw new Error("no rod");
  await finger(fingers, { x: rod.x + 60, y: rod.y + 40 }, { x: 200, y: 0 });
  await expect(readout(page)).toContainText(/Station 1\d/);
  expect(await scrolled(page)).toBe(0);

  const box = await angle(page).boundingBox();
  if (!box) throw new Error("no field");
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await finger(fingers, at, { x: 30, y: 0 });
  await expect(angle(page)).toHaveValue("41");
  await finger(fingers, at, { x: 0, y: -120 });
  await expect.poll(() => scrolled(page)).toBeGreaterThan(50);
  await expect(angle(page)).toHaveValue("41");
  await page.getByRole("button", { name: "Undo: Angle from square" }).tap();
  await expect(angle(page)).toHaveValue("35");
});

test("a figure of the drawing is typed after a tap, and a handle's drag that the device breaks off has never been", async ({ page, context }) => {
  await toBoard(page);
  await page.getByRole("button", { name: /^Diameter of the opening/ }).tap();
  await page.locator(".figure-typing input").fill("30");
  await page.keyboard.press("Enter");
  const diameter = page.locator('#description [data-field="branch.outline.diameter"]');
  await expect(diameter).toHaveValue("30");

  await page.locator('.drawing [data-clause="cut:branch"] .reach path').first().dispatchEvent("pointerover");
  const handle = page.locator('[data-handle="branch.centre"]');
  await expect(handle).toBeVisible();
  const box = await handle.boundingBox();
  if (!box) throw new Error("no handle");
  const height = page.locator('#description [data-field="branch.height"]');
  const fingers = await context.newCDPSession(page);
  await finger(fingers, { x: box.x + box.width / 2, y: box.y + box.height / 2 }, { x: 0, y: -30 }, "touchCancel");
  await expect(page.locator('.handle[data-dragging="true"]')).toHaveCount(0);
  await expect(height).toHaveValue("70");
  await expect(page.getByRole("button", { name: "Undo: Diameter of the opening" })).toBeAttached();
});

// Whether the browser would go back at such a drag depends on its settings; that it is told not to does not.
test("a finger that drags too far neither leaves the page nor loads it again: the browser is told so", async ({ page }) => {
  expect(await page.evaluate(() => getComputedStyle(document.documentElement).overscrollBehavior)).toBe("none");
  const byDrawing = () => page.locator(".drawing").evaluate((drawing) => getComputedStyle(drawing).touchAction);
  expect(await byDrawing()).toBe("pan-y");
  await page.getByRole("button", { name: "Full screen" }).tap();
  await expect(page.locator(".board[data-full]")).toBeVisible();
  expect(await byDrawing()).toBe("none");
});

/** Brings the board to the top of the window; where its paper stands. */
async function toBoard(page: Page): Promise<{ x: number; y: number }> {
  await page.locator(".board").evaluate((board) => board.scrollIntoView());
  await expect(page.locator(".figure").first()).toBeAttached();
  const box = await page.locator(".board-paper").boundingBox();
  if (!box) throw new Error("no board");
  return box;
}

/** One finger put down, moved and lifted, or broken off. */
async function finger(fingers: CDPSession, from: { x: number; y: number }, by: { x: number; y: number }, end: "touchEnd" | "touchCancel" = "touchEnd"): Promise<void> {
  await fingers.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [from] });
  for (let i = 1; i <= 6; i++) {
    await fingers.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [{ x: from.x + (by.x * i) / 6, y: from.y + (by.y * i) / 6 }] });
  }
  await fingers.send("Input.dispatchTouchEvent", { type: end, touchPoints: [] });
}
