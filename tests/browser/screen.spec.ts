import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// How the page sits in the window: what is seen without scrolling, what overlaps, and how it looks.

test("at 1440 x 900 description, views, pattern and rod are seen without scrolling", async ({ page }) => {
  await page.goto("/");
  expect(await overflow(page)).toEqual({ across: 0, down: 0 });
  for (const part of [".description", ".drawing", ".rod-scale", ".station-table"]) await expect(page.locator(part)).toBeInViewport({ ratio: 1 });
  const boxes = await Promise.all([".header", ".description", ".board", ".rod"].map((part) => page.locator(part).boundingBox()));
  for (const [i, a] of boxes.entries()) for (const b of boxes.slice(i + 1)) expect(a && b && overlap(a, b)).toBe(0);
});

test("at 1440 x 900 the margin of the first example holds all of its description, and below it what was measured, folded", async ({ page }) => {
  await page.goto("/");
  await page.locator(".rod-scale").focus();
  const proof = page.locator(".proof summary");
  await expect(proof).toBeInViewport({ ratio: 1 });
  await expect(page.getByRole("button", { name: "Add a seam, an edge, a plate" })).toBeVisible();
  expect(await page.locator(".description-page").evaluate(({ scrollHeight, clientHeight }) => scrollHeight - clientHeight)).toBeLessThanOrEqual(0);
  await expect(page.getByText("Rolls back within")).toBeHidden();
  await proof.click();
  await expect(page.getByText("Rolls back within")).toBeInViewport({ ratio: 1 });
});

test("no letters of the drawing overlap one another at 1440 x 900", async ({ page }) => {
  await page.goto("/");
  const boxes = await page.locator(".drawing .letters").evaluateAll((all) => all.map((one) => ({ ...one.getBoundingClientRect().toJSON(), text: one.textContent }) as DOMRect & { text: string }));
  expect(boxes.length).toBeGreaterThan(30);
  // A line box is taller than its figures: half of it is what is seen.
  const seen = boxes.map(({ x, y, width, height, text }) => ({ x, width, text, y: y + height * 0.25, height: height * 0.5 }));
  const pairs = seen.flatMap((a, i) => seen.slice(i + 1).flatMap((b) => (overlap(a, b) > 2 ? [`${a.text} on ${b.text}`] : [])));
  expect(pairs).toEqual([]);
});

test("at 1920 x 1080 the station numbers of the drawing are at least 14 px tall", async ({ page }) => {
  await page.setViewportSize({ width: 1920, height: 1080 });
  await page.goto("/");
  const heights = await page.locator(".drawing .letters").evaluateAll((all) => all.map((one) => parseFloat(getComputedStyle(one).fontSize) * ((one as SVGTextElement).ownerSVGElement?.getScreenCTM()?.a ?? 0)));
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(14);
});

for (const [width, height] of [[320, 700], [390, 844], [768, 1024], [1024, 768]] as const) {
  test(`at ${width} x ${height} nothing has to be scrolled sideways`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await page.goto("/");
    await page.locator(".rod-scale").focus();
    await page.keyboard.press("End");
    expect((await overflow(page)).across).toBe(0);
  });
}

for (const [width, rows] of [[320, 2], [390, 2], [768, 2], [1024, 1], [1440, 1]] as const) {
  test(`at ${width} px the header has ${rows === 1 ? "one row" : "two rows"}, with every word of it whole`, async ({ page }) => {
    await page.setViewportSize({ width, height: 700 });
    await page.goto("/");
    const words = await page.locator(".header :is(.verb, .purpose):visible").evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
    expect(words.length).toBeGreaterThan(6);
    expect(new Set(words.map(({ y, height }) => Math.round((y + height / 2) / 8))).size).toBe(rows);
    for (const [i, a] of words.entries()) {
      expect(a.x).toBeGreaterThanOrEqual(0);
      expect(a.x + a.width).toBeLessThanOrEqual(width);
      for (const b of words.slice(i + 1)) expect(overlap(a, b)).toBe(0);
    }
  });
}

test("at 320 px no margin of any purpose is cut off at the side", async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 700 });
  await page.goto("/");
  const cutOff = () => page.locator(".description :is(p, label, input, select, button, textarea, td, th)").evaluateAll((all) =>
    all.filter((one) => one.getBoundingClientRect().right > window.innerWidth + 1 && !one.closest(".unseen")).map((one) => one.getAttribute("aria-label") ?? one.textContent));
  await page.getByRole("link", { name: "Check" }).click();
  await expect(page.locator(".readings")).toBeVisible();
  expect(await cutOff()).toEqual([]);
  await page.getByRole("link", { name: "Teach" }).click();
  for (const [part, there] of [["The construction", ".player"], ["Sheets", ".school-block"], ["Marks", ".teach .verb"], ["Own dimensions", ".teach fieldset"]] as const) {
    await page.locator(".teach-parts").getByRole("button", { name: part }).click();
    await expect(page.locator(there).first()).toBeVisible();
    expect(await cutOff(), part).toEqual([]);
  }
});

for (const width of [320, 390, 768]) {
  test(`at ${width} px the name of each reading ends before its field, which holds five figures`, async ({ page }) => {
    await page.setViewportSize({ width, height: 700 });
    await page.goto("/#check");
    await expect(page.locator(".readings")).toBeVisible();
    const rows = await page.locator(".readings tr:has(input)").evaluateAll((all) =>
      all.map((row) => {
        const name = document.createRange();
        name.selectNodeContents(row.querySelector("th") ?? row);
        const field = (row.querySelector("input") as HTMLElement).getBoundingClientRect();
        return { name: name.getBoundingClientRect().right, field: field.left, room: field.width };
      }),
    );
    expect(rows.length).toBeGreaterThan(15);
    for (const { name, field, room } of rows) {
      expect(name).toBeLessThan(field);
      expect(room).toBeGreaterThan(50);
    }
  });
}

test("on a phone the rod stays under the thumb while the description is read", async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto("/");
  await expect(page.locator(".rod-scale")).toBeInViewport({ ratio: 1 });
  for (const part of [".description", ".board"]) expect((await page.locator(part).boundingBox())?.width).toBe(390);
});

test("the same job is 360 stations wide without the page growing", async ({ page }) => {
  await page.goto("/");
  await page.getByLabel("Number of stations").fill("360");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("row", { name: /^Top / }).getByRole("cell")).toHaveCount(361);
  expect(await overflow(page)).toEqual({ across: 0, down: 0 });
});

const looks = [
  { name: "paper", width: 1440, height: 900, colorScheme: "light" },
  { name: "slate", width: 1440, height: 900, colorScheme: "dark" },
  { name: "phone", width: 390, height: 844, colorScheme: "light" },
] as const;

for (const { name, width, height, colorScheme } of looks) {
  test(`the page looks as it did: ${name}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    await page.goto("/");
    await page.locator(".rod-scale").focus();
    for (let i = 0; i < 5; i++) await page.keyboard.press("ArrowRight");
    await page.evaluate(() => (document.activeElement as HTMLElement).blur());
    // What is fetched at the first touch.
    const parts = [".board-verbs", ".adequacy select", ".proof", ".shop-part .verb", ".table-verbs .verb", ".station-layer", ...(width > 960 ? [".pictorial .line"] : [])];
    for (const part of parts) await expect(page.locator(part).first()).toBeAttached();
    // Another build of the browser smooths letters otherwise; a line out of place is far more than this.
    await expect(page).toHaveScreenshot(`${name}.png`, { threshold: 0.3, maxDiffPixelRatio: 0.02 });
  });
}

function overflow(page: Page): Promise<{ across: number; down: number }> {
  return page.evaluate(() => {
    const { scrollWidth, clientWidth, scrollHeight, clientHeight } = document.documentElement;
    return { across: scrollWidth - clientWidth, down: scrollHeight - clientHeight };
  });
}

interface Rectangle {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The shorter side, in px, of what two rectangles share. */
function overlap(a: Rectangle, b: Rectangle): number {
  const across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
  const down = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
  return Math.max(0, Math.min(across, down));
}
