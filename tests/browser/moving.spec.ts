import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// Moving about the board with pointer, keys and fingers; projection lines, places between stations, the smooth curve.

const drawing = ".drawing";
const verbs = (page: Page, name: string) => page.locator(".board-foot").getByRole("button", { name, exact: true });

test.beforeEach(async ({ page }) => {
  await page.goto("/");
  await page.mouse.move(5, 5);
  await page.mouse.move(8, 8);
  await expect(verbs(page, "Closer")).toBeVisible();
});

test("closer by button keeps lettering and widths as they are on the screen", async ({ page }) => {
  const before = await lettering(page);
  for (let i = 0; i < 4; i++) await verbs(page, "Closer").click();
  const after = await lettering(page);
  expect(after.scale).toBeCloseTo(before.scale, 6);
  expect(after.sizes).toEqual(before.sizes);
  await verbs(page, "Fit").click();
  await expect(verbs(page, "Fit")).toBeDisabled();
});

test("the wheel with Ctrl goes closer about the pointer", async ({ page }) => {
  const opening = page.locator('.drawing [data-clause="cut:branch"] .reach path').last();
  const before = await middle(opening);
  await page.mouse.move(before.x, before.y);
  await page.keyboard.down("Control");
  for (let i = 0; i < 4; i++) await page.mouse.wheel(0, -100);
  await page.keyboard.up("Control");
  await expect(verbs(page, "Fit")).toBeEnabled();
  await expect.poll(() => moved(page)).toBe("");
  const after = await middle(page.locator('.drawing [data-clause="cut:branch"] .reach path').last());
  expect(Math.hypot(after.x - before.x, after.y - before.y)).toBeLessThan(3);
});

test("the wheel alone goes closer only while the board has the focus", async ({ page }) => {
  const paper = await boxOf(page, ".board-paper");
  await page.mouse.move(paper.x + paper.width / 2, paper.y + paper.height / 2);
  await page.mouse.wheel(0, -200);
  await expect.poll(() => moved(page)).toBe("");
  await expect(verbs(page, "Fit")).toBeDisabled();
  await page.locator(".board").focus();
  await page.mouse.wheel(0, -200);
  await expect(verbs(page, "Fit")).toBeEnabled();
});

test("a drag on the paper moves it and takes no station; a click still does", async ({ page }) => {
  const before = await page.locator(drawing).getAttribute("viewBox");
  const paper = await boxOf(page, ".board-paper");
  const from = { x: paper.x + paper.width * 0.7, y: paper.y + paper.height * 0.55 };
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 120, from.y + 30, { steps: 6 });
  expect(await moved(page)).toContain("translate(");
  await page.mouse.up();
  expect(await moved(page)).toBe("");
  expect(await page.locator(drawing).getAttribute("viewBox")).not.toBe(before);
  await page.mouse.move(5, 5);
  await expect(page.locator(".readout")).toContainText("Sweep along the rod");
  await page.mouse.click(from.x, from.y);
  await expect(page.locator(".readout")).toContainText("Station");
});

test("while it is dragged the drawing is not made anew", async ({ page }) => {
  const paper = await boxOf(page, ".board-paper");
  await page.mouse.move(paper.x + 400, paper.y + 300);
  await page.mouse.down();
  await page.mouse.move(paper.x + 420, paper.y + 300);
  await page.evaluate((selector) => {
    const seen = { changes: 0 };
    (window as unknown as { seen: typeof seen }).seen = seen;
    new MutationObserver((records) => (seen.changes += records.length)).observe(document.querySelector(selector) as Node, { childList: true, subtree: true });
  }, drawing);
  await page.mouse.move(paper.x + 600, paper.y + 320, { steps: 20 });
  expect(await page.evaluate(() => (window as unknown as { seen: { changes: number } }).seen.changes)).toBe(0);
  await page.mouse.up();
});

test("each view by its word, and keys: + − 0, Shift with the arrows", async ({ page }) => {
  for (const view of ["Front", "Top", "Side", "Pattern"]) {
    await page.getByRole("button", { name: `Show only: ${view}` }).click();
    await expect(verbs(page, "Fit")).toBeEnabled();
  }
  await page.locator(".board").focus();
  await page.keyboard.press("0");
  await expect(verbs(page, "Fit")).toBeDisabled();
  await page.keyboard.press("+");
  await expect(verbs(page, "Fit")).toBeEnabled();
  const before = await page.locator(drawing).getAttribute("viewBox");
  await page.keyboard.press("Shift+ArrowRight");
  expect(await page.locator(drawing).getAttribute("viewBox")).not.toBe(before);
  await page.keyboard.press("-");
  await expect(verbs(page, "Fit")).toBeDisabled();
});

test("no letters overlap when the pattern is looked at by itself", async ({ page }) => {
  await page.getByRole("button", { name: "Show only: Pattern" }).click();
  await expect(verbs(page, "Fit")).toBeEnabled();
  const boxes = await page.locator(`${drawing} .letters`).evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
  const seen = boxes.map(({ x, y, width, height }) => ({ x, width, y: y + height * 0.25, height: height * 0.5 }));
  const pairs = seen.flatMap((a, i) => seen.slice(i + 1).filter((b) => Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x) > 2 && Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y) > 2));
  expect(pairs).toEqual([]);
});

test("full screen shows the board alone with its readout, and is left again", async ({ page }) => {
  await verbs(page, "Full screen").click();
  await expect(page.locator(".board[data-full]")).toBeVisible();
  const { width, height } = await boxOf(page, ".board");
  const window = await page.evaluate(() => ({ width: innerWidth, height: innerHeight }));
  expect({ width, height }).toEqual(window);
  await page.locator(".board").focus();
  await page.keyboard.press("Home");
  await expect(page.locator(".board .readout")).toContainText("Station 0");
  await verbs(page, "Leave full screen").click();
  await expect(page.locator(".board[data-full]")).toHaveCount(0);
  await verbs(page, "Full screen").click();
  await expect(page.locator(".board[data-full]")).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(page.locator(".board[data-full]")).toHaveCount(0);
});

test("larger lettering is a setting of the device", async ({ page }) => {
  const before = await lettering(page);
  await page.getByRole("button", { name: "Settings" }).click();
  await page.getByLabel("Lettering of the board").selectOption("largest");
  await page.getByRole("button", { name: "Close", exact: true }).click();
  expect((await lettering(page)).scale / before.scale).toBeCloseTo(1.8, 2);
  await page.reload();
  expect((await lettering(page)).scale / before.scale).toBeCloseTo(1.8, 2);
});

test("projection lines: kept ones by Shift and click or by k, then all", async ({ page }) => {
  const lines = page.locator(".projections .line");
  await page.locator(".board").focus();
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");
  await page.keyboard.press("k");
  await expect(page.getByLabel("Projection lines")).toHaveValue("kept");
  await expect(lines).not.toHaveCount(0);
  const one = await lines.count();
  const paper = await boxOf(page, ".board-paper");
  await page.keyboard.down("Shift");
  await page.mouse.click(paper.x + paper.width * 0.75, paper.y + paper.height * 0.5);
  await page.keyboard.up("Shift");
  await expect.poll(() => lines.count()).toBeGreaterThan(one);
  await page.getByLabel("Projection lines").selectOption("all");
  await expect.poll(() => lines.count()).toBeGreaterThan(14);
});

test("between stations: Alt over the pattern and the rod, Alt with the arrows", async ({ page }) => {
  const paper = await boxOf(page, ".board-paper");
  await page.keyboard.down("Alt");
  await page.mouse.move(paper.x + paper.width * 0.7, paper.y + paper.height * 0.5);
  await expect(page.locator(".readout")).toContainText("Between ");
  await expect(page.locator(".station-layer .role-true-length.letters")).toHaveCount(1);
  const rod = await boxOf(page, ".rod-scale");
  await page.mouse.click(rod.x + rod.width * 0.43, rod.y + 40);
  await page.keyboard.up("Alt");
  await page.mouse.move(5, 5);
  const before = await page.locator(".readout").textContent();
  expect(before).toContain("Between ");
  await page.locator(".rod-scale").focus();
  await page.keyboard.press("Alt+ArrowRight");
  expect(await page.locator(".readout").textContent()).not.toBe(before);
  await page.keyboard.press("Escape");
  await expect(page.locator(".readout")).toContainText("Sweep along the rod");
});

test("the smooth curve: its gap enlarged, a station added there, enough stations taken", async ({ page }) => {
  await page.getByRole("textbox", { name: "Number of stations" }).fill("6");
  await page.keyboard.press("Enter");
  await verbs(page, "Smooth curve").click();
  const details = page.getByRole("region", { name: "The smooth curve against the true edge" });
  await expect(details).toContainText("Top: strays");
  await expect(details.locator("svg .letters").filter({ hasText: ":1" })).toHaveCount(1);
  await expect(page.locator(".smooth-layer circle")).toHaveCount(1);
  await details.getByRole("button", { name: "Add this station" }).click();
  await expect(page.locator(".station-table thead th")).toHaveCount(1 + 6 + 1 + 1);
  await details.getByRole("button", { name: /^Use \d+ stations$/ }).click();
  await expect(page.getByRole("textbox", { name: "Number of stations" })).not.toHaveValue("6");
});

test("the projection symbol stands in a free corner", async ({ page }) => {
  const symbol = await boxOf(page, ".symbol");
  const paper = await boxOf(page, ".board-paper");
  expect(symbol.x).toBeGreaterThanOrEqual(paper.x);
  expect(symbol.y + symbol.height).toBeLessThanOrEqual(paper.y + paper.height);
  const corner = await page.locator(".board-corner").boundingBox();
  if (corner) expect(symbol.x + symbol.width <= corner.x || symbol.x >= corner.x + corner.width || symbol.y >= corner.y + corner.height || symbol.y + symbol.height <= corner.y).toBe(true);
});

test.describe("by touch", () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });

  test("two fingers go closer, one then moves the paper, and the page scrolls under one while the board stands whole", async ({ page }) => {
    await page.locator(".board").scrollIntoViewIfNeeded();
    const touch = await page.context().newCDPSession(page);
    const send = (type: "touchStart" | "touchMove" | "touchEnd", points: readonly (readonly [number, number])[]) =>
      touch.send("Input.dispatchTouchEvent", { type, touchPoints: points.map(([x, y], id) => ({ x, y, id })) });
    const paper = await boxOf(page, ".board-paper");
    const x = paper.x + paper.width / 2, y = Math.max(paper.y, 0) + 200;

    const scrolled = await page.evaluate(() => scrollY);
    await send("touchStart", [[x, y]]);
    for (let i = 1; i <= 8; i++) await send("touchMove", [[x, y + i * 12]]);
    await send("touchEnd", []);
    await expect.poll(() => page.evaluate(() => scrollY)).toBeLessThan(scrolled);
    await expect(verbs(page, "Fit")).toBeDisabled();

    await page.locator(".board").evaluate((board) => board.scrollIntoView());
    await page.waitForFunction(() => (document.querySelector(".board")?.getBoundingClientRect().top ?? 0) < 400);
    await send("touchStart", [[x - 40, 300], [x + 40, 300]]);
    for (let i = 1; i <= 8; i++) await send("touchMove", [[x - 40 - 8 * i, 300], [x + 40 + 8 * i, 300]]);
    await send("touchEnd", []);
    await expect(verbs(page, "Fit")).toBeEnabled();

    const before = await page.locator(drawing).getAttribute("viewBox");
    const at = await page.evaluate(() => scrollY);
    await send("touchStart", [[x, 300]]);
    for (let i = 1; i <= 8; i++) await send("touchMove", [[x + 6 * i, 300 + 6 * i]]);
    await send("touchEnd", []);
    await expect.poll(() => page.locator(drawing).getAttribute("viewBox")).not.toBe(before);
    expect(await page.evaluate(() => scrollY)).toBe(at);
  });
});

async function lettering(page: Page): Promise<{ scale: number; sizes: string[] }> {
  return page.locator(drawing).evaluate((svg) => ({
    scale: (svg as SVGSVGElement).getScreenCTM()?.a ?? 0,
    sizes: [...new Set([...svg.querySelectorAll(".letters")].map((one) => one.getAttribute("font-size") ?? ""))],
  }));
}

function moved(page: Page): Promise<string> {
  return page.locator(drawing).evaluate((svg) => (svg as SVGElement).style.transform);
}

async function boxOf(page: Page, selector: string): Promise<{ x: number; y: number; width: number; height: number }> {
  const box = await page.locator(selector).first().boundingBox();
  if (!box) throw new Error(`no ${selector}`);
  return box;
}

async function middle(one: ReturnType<Page["locator"]>): Promise<{ x: number; y: number }> {
  const box = await one.boundingBox();
  if (!box) throw new Error("nothing to measure");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}
