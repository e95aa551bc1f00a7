import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { Page } from "@playwright/test";
import type { AxeResults } from "axe-core";
import { expect, test } from "./page";

// For everybody's eyes and hands: the rules of WCAG 2.2 AA that a program can check, and the keyboard.

const axeSource = readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

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
    await page.getByRole("slider", { name: "Girth rod" }).press("End");
    expect(await faults(page)).toEqual([]);
    for (const panel of ["Examples", "Print", "Settings"]) {
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
  await expect(page.getByRole("img", { name: /Vent through the lean-to roof: front, top and side view and flat pattern/ })).toBeVisible();
});

async function faults(page: Page): Promise<string[]> {
  await page.evaluate(await axeSource);
  const { violations } = await page.evaluate(() => (window as unknown as { axe: { run(options: object): Promise<AxeResults> } }).axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] }));
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary ?? ""}`));
}
