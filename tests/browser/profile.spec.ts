import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// A free profile and an opening by hand: corners, an arc that snaps to its tangents, an opening moved over the pattern.

const field = (page: Page, key: string) => page.locator(`#description [data-field="${key}"]`);
const valueOf = async (page: Page, key: string) => Number((await field(page, key).inputValue()).replace("−", "-"));

test.beforeEach(async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Examples" }).click();
  await page.locator(".example").nth(5).click();
  await field(page, "tongue.profile.start.z").focus();
  await expect(page.locator('[data-handle="tongue.corner-2"]')).toBeVisible();
});

test("a corner of the profile goes with the hand to round numbers, with Alt to hundredths, and both numbers stand in the sentence", async ({ page }) => {
  const [x, z] = [await valueOf(page, "tongue.profile.legs.3.to.x"), await valueOf(page, "tongue.profile.legs.3.to.z")];
  await drag(page, "tongue.corner-4", [{ x: 7, y: 11 }], null);
  const moved = { x: await valueOf(page, "tongue.profile.legs.3.to.x"), z: await valueOf(page, "tongue.profile.legs.3.to.z") };
  expect(moved.x).toBeGreaterThan(x);
  expect(moved.z).toBeLessThan(z);
  expect([moved.x % 0.5, moved.z % 0.5]).toEqual([0, 0]);
  await expect(page.locator('[data-handle="tongue.corner-4"]')).toHaveAttribute("aria-valuetext", `across ${moved.x} mm, height ${moved.z} mm`);
  await page.keyboard.press("Control+z");
  await expect(field(page, "tongue.profile.legs.3.to.x")).toHaveValue(String(x));

  await page.keyboard.down("Alt");
  await drag(page, "tongue.corner-4", [{ x: 7, y: 11 }], null);
  await page.keyboard.up("Alt");
  const exact = { x: await valueOf(page, "tongue.profile.legs.3.to.x"), z: await valueOf(page, "tongue.profile.legs.3.to.z") };
  expect(Math.abs(exact.x - moved.x)).toBeLessThan(2);
  expect([exact.x % 0.5, exact.z % 0.5].some((rest) => rest !== 0)).toBe(true);
});

test("an arc takes the radius at which it runs on from its neighbours, and says so beside the hand", async ({ page }) => {
  // From (-40, 180), where a level leg ends, to (-10, 210): tangent to both neighbours at 30 mm.
  const radius = field(page, "tongue.profile.legs.1.radius");
  await radius.fill("26");
  await radius.press("Enter");
  await expect(page.locator('[data-handle="tongue.radius-2"]')).toHaveAttribute("aria-valuetext", "radius 26 mm");
  await expect(radius).toHaveValue("26");
  const beside = page.locator(".beside");
  await drag(page, "tongue.radius-2", [{ x: 0, y: -4 }, { x: -1, y: -5 }], async () => {
    await expect(beside).toContainText("tangent");
    await expect(beside).toContainText("radius 30 mm");
  });
  await expect(radius).toHaveValue("30");
  await drag(page, "tongue.radius-2", [{ x: 0, y: -60 }], async () => expect(beside).not.toContainText("tangent"));
  await expect(field(page, "tongue.profile.legs.1.turn")).toHaveValue("right");
});

test("an opening not seen squarely is moved over the pattern by direction and height, and by keys", async ({ page }) => {
  await field(page, "clamp.height").focus();
  const direction = field(page, "clamp.direction");
  if ((await direction.count()) === 0) await field(page, "clamp.direction.side").selectOption({ label: "an angle" });
  await direction.fill("130");
  await direction.press("Enter");
  const handle = page.locator('[data-handle="clamp.centre"]');
  await expect(handle).toHaveAttribute("aria-valuetext", /^direction 130°/);
  const height = await valueOf(page, "clamp.height");
  await drag(page, "clamp.centre", [{ x: 12, y: -9 }], null);
  const turned = await valueOf(page, "clamp.direction");
  expect(turned).not.toBe(130);
  expect(await valueOf(page, "clamp.height")).toBeGreaterThan(height);
  await handle.focus();
  await page.keyboard.press("ArrowRight");
  await expect.poll(() => valueOf(page, "clamp.direction")).toBeCloseTo(turned + 1, 9);
});

/** Presses the handle, goes by each of the ways, tells when there, and lets go. */
async function drag(page: Page, handle: string, ways: readonly { x: number; y: number }[], there: (() => Promise<void>) | null): Promise<void> {
  const box = await page.locator(`[data-handle="${handle}"]`).boundingBox();
  if (!box) throw new Error(`no ${handle}`);
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  for (const way of ways) await page.mouse.move(at.x + way.x, at.y + way.y, { steps: 3 });
  await there?.();
  await page.mouse.up();
  await expect(page.locator('.handle[data-dragging="true"]')).toHaveCount(0);
}
