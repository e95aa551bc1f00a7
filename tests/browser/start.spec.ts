import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// From an empty pipe to a first pattern, and what helps on the way.

const pattern = (page: Page) => page.locator(".drawing .letters", { hasText: "stretch-out" });

test("by keys alone: begin a pipe of one's own, give its size, begin with a piece, give its angle", async ({ page }) => {
  await page.goto("/");
  await page.keyboard.press("Tab");
  await page.keyboard.press("Enter");
  let keys = 2;
  const to = async (name: string) => {
    for (; (await page.evaluate(() => document.activeElement?.textContent)) !== name; keys++) {
      expect(keys, name).toBeLessThan(60);
      await page.keyboard.press("Tab");
    }
    await page.keyboard.press("Enter");
  };
  await to("begin a pipe of your own");
  await expect(page.getByRole("textbox", { name: "Diameter", exact: true })).toBeFocused();
  await page.keyboard.type("120");
  for (let i = 0; i < 2; i++) await page.keyboard.press("Tab");
  await page.keyboard.type("300");
  await to("Cut at a slant");
  await expect(page.getByRole("textbox", { name: "Angle from square" })).toBeFocused();
  await page.keyboard.type("40");
  await page.keyboard.press("Enter");
  await expect(pattern(page)).toHaveText("stretch-out 376.99");
  // 300 less 120 tan 40°.
  await expect(page.getByRole("row", { name: /^Top / }).getByRole("cell").first()).toHaveText((300 - 120 * Math.tan((40 * Math.PI) / 180)).toFixed(2));
});

test("by touch, on a phone: four taps and one number", async ({ browser, baseURL }) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
  const page = await context.newPage();
  await page.goto(baseURL ?? "");
  await page.getByRole("button", { name: "More", exact: true }).tap();
  await page.getByRole("button", { name: "New", exact: true }).tap();
  const diameter = page.getByRole("textbox", { name: "Diameter", exact: true });
  await expect(diameter).toBeFocused();
  await page.keyboard.type("80");
  await page.getByRole("button", { name: "Standing on a sloping roof" }).tap();
  await expect(page.getByRole("group", { name: "Slanted end" })).toBeVisible();
  await expect(pattern(page)).toHaveText("stretch-out 251.33");
  await context.close();
});

test("on a phone the header is one row of verbs at 390 and at 320, the rest in a menu that keys open and close", async ({ page }) => {
  for (const width of [390, 320]) {
    await page.setViewportSize({ width, height: 700 });
    await page.goto("/");
    const tops = await page.locator(".verbs .verb:visible").evaluateAll((all) => all.map((one) => one.getBoundingClientRect().top));
    expect(new Set(tops).size, String(width)).toBe(1);
    const more = page.getByRole("button", { name: "More", exact: true });
    await more.focus();
    await page.keyboard.press("Enter");
    for (const name of ["New", "Open", "Save", "Examples", "Roll up", "Settings"]) await expect(page.getByRole("button", { name, exact: true })).toBeVisible();
    await page.keyboard.press("Escape");
    await expect(page.getByRole("button", { name: "Settings", exact: true })).toBeHidden();
    await expect(more).toBeFocused();
  }
});

test("F1 says what the field in hand means, without moving it, and the field is described by it", async ({ page }) => {
  for (const width of [1440, 390]) {
    await page.setViewportSize({ width, height: 900 });
    await page.goto("/");
    const angle = page.getByRole("textbox", { name: "Angle from square" });
    await angle.focus();
    const before = await angle.boundingBox();
    await page.keyboard.press("F1");
    await expect(angle).toHaveAccessibleDescription(/How far the cut leans from square/);
    await expect(page.locator(".help-drawing .role-in-hand").first()).toBeVisible();
    expect(await angle.boundingBox()).toEqual(before);
    const thickness = page.getByRole("textbox", { name: "Sheet thickness" });
    await thickness.focus();
    await expect(thickness).toHaveAccessibleDescription(/How thick the sheet is/);
    const [help, field] = await Promise.all([page.locator(".field-help").boundingBox(), thickness.boundingBox()]);
    expect(help && field && (help.y >= field.y + field.height || help.y + help.height <= field.y)).toBe(true);
    await page.keyboard.press("F1");
    await expect(page.locator(".field-help")).toHaveCount(0);
  }
});

test("the words of the trade change on screen and drawing, and stay after a reload", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Settings" }).click();
  await page.getByRole("combobox", { name: "Words" }).selectOption("girth");
  await page.keyboard.press("Escape");
  for (const again of [false, true]) {
    if (again) await page.reload();
    await expect(page.locator(".drawing .letters", { hasText: "girth 282.74" })).toBeVisible();
    await expect(page.getByRole("row", { name: /^Along the girth / })).toBeVisible();
    await expect(page.getByRole("row", { name: /^Generator / })).toBeVisible();
    await expect(page.getByRole("combobox", { name: "Place of the seam" })).toContainText("shortest generator");
    await expect(page.getByRole("img", { name: /front elevation, plan and end elevation and development/ })).toBeVisible();
  }
});
