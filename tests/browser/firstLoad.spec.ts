import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build, preview } from "vite";
import { firstLoad, total } from "./firstLoad";
import { expect, test } from "./page";

const root = fileURLToPath(new URL("../../", import.meta.url));

test("the first load is at most twice that of an empty react, react-dom and zustand page, after gzip", async ({ page, context }) => {
  const empty = {
    configFile: join(root, "vite.config.ts"),
    root: join(root, "tests/browser/emptyPage"),
    logLevel: "error",
    publicDir: false,
    build: { outDir: join(root, ".cache/emptyPage"), emptyOutDir: true },
    preview: { port: 4199 },
  } as const;
  await build(empty);
  const server = await preview(empty);
  const emptyPage = await context.newPage();
  const least = await firstLoad(emptyPage, server.resolvedUrls?.local[0] ?? "");
  await emptyPage.close();
  await server.close();

  const loaded = await firstLoad(page, "/");
  for (const [name, size] of loaded) console.log(`  ${String(size).padStart(7)} ${name}`);
  console.log(`first load: ${total(loaded)} bytes after gzip; the empty page: ${total(least)}; ratio ${(total(loaded) / total(least)).toFixed(2)}`);
  expect(total(least)).toBeGreaterThan(40_000);
  expect(total(loaded)).toBeLessThanOrEqual(2 * total(least));
});

test("what is fetched after the first drawing moves nothing of it", async ({ page }) => {
  await page.goto("/");
  await expect(page.locator(".drawing")).toBeVisible();
  const boxes = () => Promise.all([".description", ".board", ".drawing", ".rod-scale", ".station-table"].map((part) => page.locator(part).boundingBox()));
  const before = await boxes();
  await expect(page.getByRole("button", { name: "Copy table" })).toHaveCount(0);
  await page.keyboard.press("Shift");
  for (const later of [page.getByRole("button", { name: "Copy table" }), page.locator(".adequacy select"), page.locator(".gauge"), page.locator(".proof")]) await expect(later).toBeVisible();
  expect(await boxes()).toEqual(before);
});
