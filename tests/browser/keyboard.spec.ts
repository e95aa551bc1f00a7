import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// A whole job by keys alone, and what a screen reader is told on the way.

/** Goes on by the Tab key until a control whose name begins so has the focus. */
async function tabTo(page: Page, name: string, back = false): Promise<void> {
  const passed: string[] = [];
  for (let i = 0; i < 120; i++) {
    await page.keyboard.press(back ? "Shift+Tab" : "Tab");
    const now = await page.evaluate(() => {
      const one = document.activeElement as HTMLInputElement | null;
      return one?.getAttribute("aria-label") ?? one?.labels?.[0]?.textContent ?? one?.textContent ?? "";
    });
    if (now.startsWith(name)) return;
    passed.push(now.slice(0, 30));
  }
  throw new Error(`“${name}” is not reached by Tab; passed: ${passed.join(" | ")}`);
}

async function replace(page: Page, text: string): Promise<void> {
  await page.keyboard.press("Control+a");
  await page.keyboard.type(text);
  await page.keyboard.press("Enter");
}

test("a piece is built, changed, read, rolled up, printed, saved and undone by keys alone", async ({ page }) => {
  await page.addInitScript(() => (window.print = () => void (document.body.dataset.printed = "true")));
  await page.goto("/");
  const field = (key: string) => page.locator(`#description [data-field="${key}"]`);

  await tabTo(page, "New");
  await page.keyboard.press("Enter");
  await expect(page.getByLabel("Title of the job")).toHaveValue("");

  await expect(field("diameter")).toBeFocused();
  await replace(page, "2*60");
  await expect(field("diameter")).toHaveValue("120");
  await tabTo(page, "Add a cut or an opening");
  await page.keyboard.press("Enter");
  await tabTo(page, "Round opening");
  await page.keyboard.press("Enter");
  const openings = page.getByRole("group", { name: "Round opening", exact: true });
  await expect(openings).toHaveCount(1);
  await tabTo(page, "Diameter of the opening", true);
  await replace(page, "32");
  await expect(page.getByRole("textbox", { name: "Diameter of the opening" })).toHaveValue("32");

  await tabTo(page, "Stations, more");
  await page.keyboard.press("Enter");
  await tabTo(page, "Add a station");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("textbox", { name: /^Added station 1/ })).toBeVisible();

  // As by a drag: the handle of the pipe's length, in steps.
  const length = Number(await field("length").inputValue());
  await tabTo(page, "The pipe: Length of the pipe");
  await page.keyboard.press("Shift+ArrowUp");
  await expect(field("length")).toHaveValue(String(length + 10));
  await page.keyboard.press("PageDown");
  await page.keyboard.press("ArrowDown");
  await expect(field("diameter")).toHaveValue("119");

  await tabTo(page, "Stretch-out rod");
  await page.keyboard.press("Home");
  await page.keyboard.press("ArrowRight");
  const rod = page.getByRole("slider", { name: "Stretch-out rod" });
  await expect(rod).toHaveAttribute("aria-valuetext", /^Station 1 · .* from the front · .* · true length [\d.]+, /);
  await expect(page.locator(".rod .readout")).toContainText("Station 1");

  await tabTo(page, "Rolled up", true);
  await page.keyboard.press("Home");
  await expect(page.getByRole("slider", { name: "Rolled up" })).toHaveValue("0");
  await page.keyboard.press("i");
  await page.keyboard.press("End");

  await page.keyboard.press("Control+p");
  const dialog = page.getByRole("dialog");
  await expect(dialog).toBeVisible();
  await page.keyboard.press("Escape");
  await expect(dialog).toHaveCount(0);
  await expect(page.getByRole("slider", { name: "Rolled up" })).toBeFocused();

  await tabTo(page, "Examples", true);
  await page.keyboard.press("Shift+Tab");
  const saving = page.waitForEvent("download");
  await page.keyboard.press("Enter");
  expect((await saving).suggestedFilename()).toContain(".json");

  for (let i = 0; i < 7; i++) await page.keyboard.press("Control+z");
  await expect(page.getByLabel("Title of the job")).toHaveValue("Vent through the lean-to roof");
  await expect(page.getByRole("button", { name: "Undo", exact: true })).toHaveAttribute("aria-disabled", "true");
});

test("read in order, the page says what the piece is, its figures, what is in hand and what went wrong", async ({ page }) => {
  await page.goto("/");
  const description = page.getByRole("region", { name: "Description" });
  await expect(description).toMatchAriaSnapshot(`
    - list:
      - listitem:
        - group "The pipe":
          - paragraph:
            - text: A pipe, ⌀
            - textbox "Diameter": "90"
            - combobox "Diameter measured"
            - textbox "Length of the pipe": "220"
            - text: high,
            - combobox "Attitude"
      - listitem:
        - group "Slanted end":
          - paragraph:
            - combobox "Which end"
            - text: is cut at
            - textbox "Angle from square": "35"
      - listitem:
        - group "Round opening":
          - paragraph:
            - text: A round opening of ⌀
            - textbox "Diameter of the opening": "40"
  `);
  await page.keyboard.press("Tab");
  await expect(page.getByRole("button", { name: "Copy table" })).toBeVisible();
  // The shortest element of the first example in figures: 220 - 90 tan 35° = 156.98.
  await expect(page.getByRole("region", { name: "Station table" })).toMatchAriaSnapshot(`
    - table "Station table":
      - rowgroup:
        - row /Station 0 1 2 3/
      - rowgroup:
        - row /From the front 0° 337\\.5°/
        - row /Stretch-out 0 17\\.67/
        - row /Top 156\\.98/
  `);
  await expect(page.getByRole("slider", { name: "Slanted end: Angle from square" })).toHaveAttribute("aria-valuetext", "angle 35°");
  await page.getByRole("slider", { name: "Stretch-out rod" }).press("End");
  await expect(page.locator(".rod .readout[aria-live=polite]")).toContainText("true length 156.98");

  const diameter = page.getByRole("textbox", { name: "Diameter", exact: true });
  await diameter.fill("-5");
  await diameter.press("Enter");
  await expect(description.getByRole("alert")).not.toBeEmpty();
  await expect(diameter).toHaveAccessibleDescription(/\S/);
  await diameter.press("Escape");
  await expect(description.getByRole("alert")).toHaveCount(0);
  await diameter.fill("80");
  await diameter.press("Enter");
  await page.keyboard.press("Control+z");
  await expect(page.locator("[aria-live=polite]").filter({ hasText: "Undone: Diameter" })).toHaveCount(1);
});
