import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { Page } from "@playwright/test";
import type { AxeResults } from "axe-core";
import { expect, test } from "./page";

// For everybody's eyes and hands: the rules of WCAG 2.2 AA that a program can check, and the keyboard.

const axeSource = readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

/** A window so tall that nothing of the page lies under the rod at its foot. */
const TALL = 3600;

for (const [colorScheme, width] of [["light", 1440], ["dark", 1440], ["light", 390], ["dark", 390]] as const) {
  test(`axe finds nothing wrong: ${colorScheme}, ${width} px`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 844 });
    await page.goto("/");
    await page.locator(".rod-scale").focus();
    await page.keyboard.press("ArrowRight");
    expect(await faults(page)).toEqual([]);
    const diameter = page.getByLabel("Diameter", { exact: true });
    await diameter.fill("x");
    await page.keyboard.press("Enter");
    expect(await faults(page)).toEqual([]);
  });
}

for (const [colorScheme, width] of [["light", 320], ["dark", 1440]] as const) {
  test(`axe finds nothing wrong with the sheets for a class, and nothing runs over the side: ${colorScheme}, ${width} px`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: width < 960 ? TALL : 844 });
    await page.goto("/#teach/data");
    await page.getByRole("button", { name: "Sheets", exact: true }).click();
    await page.getByRole("checkbox", { name: "Question with the pattern begun" }).check();
    await page.getByRole("checkbox", { name: "Card model" }).check();
    await expect(page.getByRole("region", { name: "Card model with glue laps and discs" })).toBeVisible();
    expect(await faults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  });
}

for (const [colorScheme, width] of [["light", 320], ["dark", 1440]] as const) {
  test(`axe finds nothing wrong with readings, marks and the list of a class, and nothing runs over the side: ${colorScheme}, ${width} px`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: width < 960 ? TALL : 844 });
    await page.goto("/#check");
    await page.getByRole("textbox", { name: "Stretch-out", exact: true }).fill("281");
    await page.getByRole("textbox", { name: "Station 0", exact: true }).fill("about 150");
    await page.getByRole("button", { name: "Set what is allowed, and a scheme" }).click();
    await page.getByRole("button", { name: "Start from" }).click();
    await page.getByRole("button", { name: "20 marks, faults taken off" }).click();
    await expect(page.getByText("20 marks in all.")).toBeVisible();
    expect(await faults(page)).toEqual([]);
    await page.getByRole("button", { name: "Marking list" }).click();
    await page.getByRole("textbox", { name: "Name" }).fill("Ada Beck");
    await page.keyboard.press("Enter");
    await expect(page.getByRole("row", { name: /Ada Beck/ })).toContainText("none yet");
    expect(await faults(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  });
}

for (const [colorScheme, width] of [["light", 320], ["dark", 1440]] as const) {
  test(`axe finds nothing wrong with own dimensions for a class, and nothing runs over the side: ${colorScheme}, ${width} px`, async ({ page }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 844 });
    await page.goto("/#teach/data");
    await page.getByRole("button", { name: "Own dimensions" }).click();
    await page.getByRole("checkbox", { name: "The pipe: Diameter", exact: true }).check();
    await page.getByRole("checkbox", { name: "Least ordinate" }).check();
    await page.getByPlaceholder(/^Names, one a line/).fill("Name,Class\nAda Winter,3b\nAda Winter,3b");
    await page.getByRole("button", { name: "Take these names" }).click();
    await expect(page.locator(".pieces tbody tr")).toHaveCount(2);
    await page.getByLabel("Code on the sheet").fill("x");
    await page.keyboard.press("Enter");
    await expect(page.locator(".open-code + .fault")).toBeVisible();
    // Clear of the rod, which stays under the thumb.
    await page.locator(".open-code").evaluate((form) => form.scrollIntoView({ block: "center" }));
    expect(await faults(page)).toEqual([]);
    if (width > 960) expect(await page.evaluate(() => document.documentElement.scrollHeight <= window.innerHeight)).toBe(true);
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth)).toBe(true);
  });
}

for (const colorScheme of ["light", "dark"] as const) {
  test(`axe finds nothing wrong in high contrast, ${colorScheme}, and every line of the drawing has at least 7:1`, async ({ page }) => {
    await page.emulateMedia({ colorScheme, contrast: "more" });
    await page.goto("/");
    await page.locator(".rod-scale").focus();
    await page.keyboard.press("ArrowRight");
    await page.getByRole("button", { name: "Explain" }).click();
    await page.getByRole("textbox", { name: "Angle from square" }).focus();
    await expect(page.locator(".help-drawing")).toBeVisible();
    expect(await faults(page)).toEqual([]);
    const ratios = await page.evaluate(() => {
      const luminance = (colour: string) => {
        const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => Number(part) / 255).map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
        return 0.2126 * r + 0.7152 * g + 0.0722 * b;
      };
      const paper = luminance(getComputedStyle(document.body).backgroundColor);
      return [...document.querySelectorAll(".drawing .line")].map((line) => luminance(getComputedStyle(line).stroke)).map((ink) => (Math.max(ink, paper) + 0.05) / (Math.min(ink, paper) + 0.05));
    });
    expect(ratios.length).toBeGreaterThan(20);
    expect(Math.min(...ratios)).toBeGreaterThanOrEqual(7);
  });
}

test("high contrast can be chosen, and a device that forces its colours keeps every line", async ({ page }) => {
  await page.goto("/");
  await page.getByRole("button", { name: "Settings" }).click();
  await page.getByRole("combobox", { name: "Light" }).selectOption("contrast");
  await page.keyboard.press("Escape");
  expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe("rgb(255, 255, 255)");
  expect(await page.locator(".drawing .role-part.line").first().evaluate((line) => parseFloat(getComputedStyle(line).strokeWidth))).toBeGreaterThan(0.5);
  await page.emulateMedia({ forcedColors: "active" });
  const same = await page.evaluate(() => {
    const paper = getComputedStyle(document.body).backgroundColor;
    return [...document.querySelectorAll(".drawing .line, .rod-scale .tick line")].filter((line) => getComputedStyle(line).stroke === paper).length;
  });
  expect(same).toBe(0);
  expect(await faults(page)).toEqual([]);
});

test("axe finds nothing wrong where a pipe is begun", async ({ page }) => {
  await page.setViewportSize({ width: 390, height: TALL });
  await page.goto("/");
  await page.getByRole("button", { name: "begin a pipe of your own" }).click();
  await expect(page.getByRole("button", { name: "Astride a ridge" })).toBeVisible();
  expect(await faults(page)).toEqual([]);
});

for (const panel of ["Examples", "Print and cut", "Settings"]) {
  test(`axe finds nothing wrong in the panel ${panel}, and Escape closes it`, async ({ page }) => {
    await page.goto("/");
    await page.getByRole("button", { name: panel, exact: true }).click();
    await expect(page.getByRole("dialog")).toBeVisible();
    expect(await faults(page)).toEqual([]);
    await page.keyboard.press("Escape");
    await expect(page.getByRole("dialog")).toHaveCount(0);
  });
}

for (const theme of ["dark", "contrast"]) {
  test(`axe finds nothing wrong in the theme ${theme}, on the board with its hands and in every panel`, async ({ page }) => {
    await page.addInitScript((theme) => localStorage.setItem("flatwright.settings", JSON.stringify({ theme })), theme);
    await page.goto("/");
    await expect(page.locator("html")).toHaveAttribute("data-theme", theme);
    await page.getByRole("textbox", { name: "Diameter of the opening" }).focus();
    await page.locator('.handle[data-state="in hand"] .grip').first().focus();
    await page.getByRole("button", { name: "Smooth curve" }).click();
    await page.getByRole("slider", { name: "Stretch-out rod" }).press("End");
    expect(await faults(page)).toEqual([]);
    for (const panel of ["Examples", "Print and cut", "Settings"]) {
      await page.getByRole("button", { name: panel, exact: true }).click();
      await expect(page.getByRole("dialog")).toBeVisible();
      expect(await faults(page), panel).toEqual([]);
      await page.keyboard.press("Escape");
      await expect(page.getByRole("dialog")).toHaveCount(0);
    }
  });
}

test("every control can be reached with the Tab key, in the order of the page, and shows its focus", async ({ page }) => {
  await page.goto("/");
  await expect(page.locator(".drawing")).toBeVisible();
  // What is fetched at the first touch of the page is there before the keys come to it.
  await page.keyboard.press("Shift");
  await expect(page.getByRole("button", { name: "Copy table" })).toBeVisible();
  const reached: string[] = [];
  for (let i = 0; i < 120; i++) {
    await page.keyboard.press("Tab");
    const now = await page.evaluate(() => {
      const element = document.activeElement;
      if (!element || element === document.body) return null;
      const { outlineStyle, outlineWidth } = getComputedStyle(element);
      const label = (element as HTMLInputElement).labels?.[0]?.textContent;
      return { name: element.getAttribute("aria-label") ?? label ?? element.textContent ?? "", seen: outlineStyle !== "none" && parseFloat(outlineWidth) >= 2 };
    });
    if (!now) break;
    expect(now.seen, now.name).toBe(true);
    reached.push(now.name);
  }
  for (const name of ["Skip to the description", "Title of the job", "Save", "Print", "Diameter", "Angle from square", "Add a cut or an opening", "Number of stations", "Note", "Board", "Stretch-out rod", "Station table", "Copy table"]) {
    expect(reached.some((one) => one.startsWith(name)), name).toBe(true);
  }
  expect(reached.indexOf("Diameter")).toBeLessThan(reached.indexOf("Stretch-out rod"));
});

test("targets are at least 24 px in both directions", async ({ page }) => {
  for (const width of [1440, 390]) {
    await page.setViewportSize({ width, height: 844 });
    await page.goto("/");
    const small = await page.locator("button, select, input:not([type=file]), textarea").evaluateAll((all) =>
      all.flatMap((one) => {
        const { width: across, height: down } = one.getBoundingClientRect();
        return across > 0 && (across < 24 || down < 24) ? [`${one.getAttribute("aria-label") ?? one.textContent}: ${across} x ${down}`] : [];
      }),
    );
    expect(small).toEqual([]);
  }
});

test("the drawing has a title and a description in words", async ({ page }) => {
  await page.goto("/");
  const drawing = page.getByRole("img", { name: "Vent through the lean-to roof: front, top and side view and flat pattern", exact: true });
  await expect(drawing).toBeVisible();
  await expect(drawing).toHaveAccessibleDescription(/^Drawn in first angle\..* table /);
});

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(await axeSource);
  const { violations } = await page.evaluate(() => (window as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }));
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ""}`));
}
