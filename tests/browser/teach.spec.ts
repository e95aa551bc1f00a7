import { expect, test } from "./page";

// A lesson: from the purpose in the header through the steps, and a link that opens one of them.

test("a lesson is led by hand and keys, keeps the job and the drawing, and its address opens it again", async ({ page, context }) => {
  await page.goto("/");
  await page.getByRole("textbox", { name: "Angle from square" }).fill("30");
  await page.keyboard.press("Enter");
  await page.getByRole("link", { name: "Teach" }).click();
  const heading = page.locator(".teach h2");
  await expect(heading).toHaveText("Read the data, choose the projection");
  const viewBox = await page.locator(".drawing").getAttribute("viewBox");
  await page.keyboard.press("PageDown");
  await expect(heading).toHaveText("Draw the views");
  await page.getByRole("button", { name: "Carry each ordinate" }).click();
  await page.getByRole("checkbox", { name: "One station at a time" }).check();
  await page.keyboard.press("PageDown");
  await page.getByRole("button", { name: "Next" }).click();
  await expect(page.locator(".step-station")).toHaveText("Station 2: ordinate 175.65.");
  await expect(page.locator(".readout").first()).toContainText("Station 2");
  expect(await page.locator(".drawing").getAttribute("viewBox")).toBe(viewBox);

  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  await page.getByRole("button", { name: "Copy link" }).click();
  await expect(page.locator(".told")).toContainText("copied");
  const linked = await context.newPage();
  await linked.goto(await page.evaluate(() => navigator.clipboard.readText()));
  await expect(linked.locator(".teach h2")).toHaveText("Carry each ordinate");
  await expect(linked.locator(".step-station")).toHaveText("Station 2: ordinate 175.65.");
  await linked.close();

  await page.getByRole("button", { name: "Full screen" }).click();
  await expect(page.locator(".desk")).toHaveAttribute("data-full", "true");
  await expect(page.locator(".rod")).toBeHidden();
  await page.getByRole("button", { name: "Leave full screen" }).click();
  await page.getByRole("link", { name: "Develop" }).click();
  await expect(page.getByRole("textbox", { name: "Diameter", exact: true })).toHaveValue("90");
});

test("a station in hand tells its true length in a lesson no sooner than the lesson has found it", async ({ page }) => {
  await page.goto("/");
  await page.locator(".rod-scale").focus();
  await page.keyboard.press("ArrowRight");
  const length = page.locator(".station-layer .role-true-length");
  await expect(length.first()).toBeAttached();
  await page.getByRole("link", { name: "Teach" }).click();
  await expect(page.locator(".teach h2")).toHaveText("Read the data, choose the projection");
  await expect(length).toHaveCount(0);
  await page.getByRole("button", { name: "Carry each ordinate" }).click();
  await expect(length.first()).toBeAttached();
});
