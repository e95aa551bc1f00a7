import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// One station in all views, pattern, table and rod, from wherever it is taken.

const readout = (page: Page) => page.locator(".rod .readout");
const inHand = (page: Page) => page.locator(".station-layer .line");

test.beforeEach(async ({ page }) => {
  await page.goto("/");
  await page.mouse.move(700, 5);
  await expect(page.getByRole("button", { name: "Closer", exact: true })).toBeVisible();
});

test("a station pointed at in the front, top or side view, the pattern or the table stands in all of them", async ({ page }) => {
  const places = await placesOf(page, 2);
  expect(places).toHaveLength(4);
  const column = await page.locator(".station-table td").nth(2).boundingBox();
  if (!column) throw new Error("no table");
  for (const place of [...places, { x: column.x + column.width / 2, y: column.y + column.height / 2 }]) {
    await page.mouse.move(place.x, place.y);
    await expect(readout(page)).toHaveText(/^Station 2 · 315° from the front · stretch-out 35\.34 · true length 166\.21/);
    await expect(inHand(page)).toHaveCount(4);
    await expect(page.locator(".station-projections .line")).toHaveCount(3);
    await expect(page.locator(".station-table td[data-in-hand]").first()).toHaveText("315°");
    await page.mouse.move(5, 5);
    await expect(inHand(page)).toHaveCount(0);
  }
});

test("beyond the cut the front view means the far wall that is seen there", async ({ page }) => {
  const [front] = await placesOf(page, 2);
  const box = await page.locator(".drawing").boundingBox();
  if (!front || !box) throw new Error("no front view");
  const [{ top }] = await linesOf(page, 2) as [DOMRect];
  await page.mouse.move(front.x, top - 8);
  await expect(readout(page)).toContainText("Station 6");
  await page.keyboard.down("Alt");
  await page.mouse.move(front.x + 2, top - 8);
  await expect(readout(page)).toContainText("Between 6 and 7");
  await page.mouse.move(front.x + 2, top + 8);
  await expect(readout(page)).toContainText("Between 1 and 2");
  await page.keyboard.up("Alt");
});

test("the table is gone along by keys and pressed; beside its columns a press puts the station down", async ({ page }) => {
  const table = page.getByRole("region", { name: "Station table" });
  await table.focus();
  await page.keyboard.press("ArrowRight");
  await expect(readout(page)).toContainText("Station 0");
  await page.keyboard.press("ArrowRight");
  await expect(readout(page)).toContainText("Station 1");
  await page.keyboard.press("ArrowDown");
  await expect(readout(page)).toContainText("Station 1");
  await table.locator("td").nth(7).click();
  await page.mouse.move(5, 5);
  await expect(readout(page)).toContainText("Station 7");
  await table.locator("tbody th").first().click();
  await expect(readout(page)).toContainText("Sweep along the rod");
});

test("every station stands at the same part of the rod as of the pattern, and at its figure in the table", async ({ page }) => {
  const stations = page.getByRole("textbox", { name: "Number of stations" });
  await stations.fill("7");
  await stations.press("Enter");
  await page.getByRole("button", { name: "Stations, more" }).click();
  await page.getByRole("button", { name: "Add a station", exact: true }).click();
  await expect(page.locator(".station-table thead th")).toHaveCount(1 + 7 + 1 + 1);
  await page.locator(".rod-scale").focus();
  await page.keyboard.press("Home");
  const seen: { rod: number; pattern: number; girth: number }[] = [];
  for (let i = 0; i < 9; i++) {
    await expect(page.locator(".rod-scale")).toHaveAttribute("aria-valuenow", String(i));
    await expect(page.locator(".station-layer .role-true-length.line")).not.toHaveCount(0);
    seen.push(
      await page.evaluate((column) => {
        const middle = (selector: string) => {
          const { left, width } = document.querySelector(selector)?.getBoundingClientRect() ?? { left: NaN, width: 0 };
          return left + width / 2;
        };
        const girth = [...document.querySelectorAll("tbody tr")][1]?.querySelectorAll("td")[column]?.textContent;
        return { rod: middle(".rod-scale .hand rect"), pattern: middle(".station-layer .role-true-length.line"), girth: Number(girth) };
      }, i),
    );
    await page.keyboard.press("ArrowRight");
  }
  const part = (of: "rod" | "pattern" | "girth", i: number) => {
    const from = seen[0]?.[of] ?? NaN, to = seen.at(-1)?.[of] ?? NaN;
    return ((seen[i]?.[of] ?? NaN) - from) / (to - from);
  };
  for (let i = 0; i < 9; i++) {
    expect(part("rod", i)).toBeCloseTo(part("girth", i), 3);
    expect(part("pattern", i)).toBeCloseTo(part("girth", i), 3);
  }
});

/** The boxes of a station's element in front, top and side view and in the pattern; puts it down again. */
async function linesOf(page: Page, station: number): Promise<DOMRect[]> {
  await page.locator(".board").focus();
  await page.keyboard.press("Home");
  for (let i = 0; i < station; i++) await page.keyboard.press("ArrowRight");
  await expect(readout(page)).toContainText(`Station ${station}`);
  await expect(inHand(page)).not.toHaveCount(0);
  const boxes = await inHand(page).evaluateAll((all) => all.map((one) => one.getBoundingClientRect().toJSON() as DOMRect));
  await page.keyboard.press("Escape");
  await expect(inHand(page)).toHaveCount(0);
  return boxes;
}

/** A point of each: of a line two thirds down, of the mark on the circle its middle. */
async function placesOf(page: Page, station: number): Promise<{ x: number; y: number }[]> {
  return (await linesOf(page, station)).map(({ x, y, width, height }) => ({ x: x + width / 2, y: y + height * (height > 10 ? 0.66 : 0.5) }));
}
