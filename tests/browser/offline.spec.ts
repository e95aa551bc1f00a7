import { createServer, type Server } from "node:http";
import { readFile } from "node:fs/promises";
import { extname, join } from "node:path";
import type { AddressInfo } from "node:net";
import { fileURLToPath } from "node:url";
import type { Page } from "@playwright/test";
import { expect, test } from "./page";

// The page sends nothing, obeys its own policy, works without a network, and is brought up to date only when asked.

test.use({ keepsFiles: true });

const built = fileURLToPath(new URL("../../dist/", import.meta.url));

test("a sitting at the page asks no other address and breaks no rule of its policy", async ({ page, context, baseURL }) => {
  const asked = new Set<string>();
  const broken: string[] = [];
  context.on("request", (request) => asked.add(new URL(request.url()).origin));
  await page.exposeFunction("policyBroken", (what: string) => void broken.push(what));
  await page.addInitScript(() => {
    document.addEventListener("securitypolicyviolation", (event) => {
      void (window as unknown as { policyBroken(what: string): Promise<void> }).policyBroken(`${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  await page.goto("/");
  await untilKept(page);
  await page.getByRole("textbox", { name: "Angle from square", exact: true }).fill("41");
  await page.keyboard.press("Enter");
  for (const panel of ["Examples", "Print and cut", "Settings"]) {
    await page.getByRole("button", { name: panel, exact: true }).click();
    await expect(page.getByRole("dialog")).toBeVisible();
    await page.keyboard.press("Escape");
  }
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as CSV" }).click();
  await waiting;
  await page.getByRole("button", { name: "Examples" }).click();
  await page.locator(".example").last().click();
  await page.reload();
  await expect(page.locator(".drawing")).toBeVisible();
  expect([...asked].filter((origin) => origin !== baseURL && origin !== "null")).toEqual([]);
  expect(broken).toEqual([]);
});

test("the policy allows nothing but what comes with the page", async ({ page }) => {
  await page.goto("/");
  const policy = await page.locator("meta[http-equiv=Content-Security-Policy]").getAttribute("content");
  const rules = new Map((policy ?? "").split("; ").map((rule) => [rule.split(" ")[0], rule.split(" ").slice(1).join(" ")]));
  expect(Object.fromEntries(rules)).toEqual({
    "default-src": "'none'",
    "script-src": "'self'",
    "style-src": "'self'",
    "img-src": "'self' data: blob:",
    "font-src": "'self'",
    "connect-src": "'self'",
    "worker-src": "'self'",
    "manifest-src": "'self'",
    "object-src": "'none'",
    "base-uri": "'none'",
    "form-action": "'none'",
  });
});

test("after one visit the page works without a network, with every part of it", async ({ page, context }) => {
  await page.goto("/");
  await untilKept(page);
  await context.setOffline(true);
  await page.reload();
  await expect(page.locator(".drawing")).toBeVisible();
  await page.getByRole("textbox", { name: "Angle from square", exact: true }).fill("41");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("button", { name: "Undo: Angle from square" })).toBeVisible();
  await page.getByRole("button", { name: "Print" }).first().click();
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as PDF" }).click();
  expect((await waiting).suggestedFilename()).toMatch(/\.pdf$/);
  await page.keyboard.press("Escape");
  await page.reload();
  await expect(page.getByRole("textbox", { name: "Angle from square", exact: true })).toHaveValue("41");
  expect(await page.evaluate(() => document.fonts.ready.then((fonts) => [...fonts].filter((font) => font.status === "loaded").length))).toBeGreaterThan(0);
});

test("every built file is kept for use without a network", async ({ page }) => {
  await page.goto("/");
  await untilKept(page);
  const kept = await page.evaluate(async () => {
    const caches = await window.caches.keys();
    const requests = await Promise.all(caches.map(async (name) => (await window.caches.open(name)).keys()));
    return requests.flat().map(({ url }) => new URL(url).pathname.slice(1));
  });
  const scripts = await page.evaluate(() => [...document.querySelectorAll("script[src], link[href]")].map((one) => new URL(one.getAttribute("src") ?? one.getAttribute("href") ?? "", location.href).pathname.slice(1)));
  expect(kept).toEqual(expect.arrayContaining(["index.html", "manifest.webmanifest", ...scripts.filter((path) => !path.endsWith("/"))]));
  expect(kept.filter((path) => /OutputPanel|changes|HandleLayer/.test(path)).length).toBeGreaterThanOrEqual(3);
});

test("the page can be installed: it names a manifest whose icons are there, in their sizes", async ({ page }) => {
  await page.goto("/");
  const address = await page.locator("link[rel=manifest]").getAttribute("href");
  const manifest = (await (await page.request.get(new URL(address ?? "", page.url()).href)).json()) as { name: string; display: string; start_url: string; icons: { src: string; sizes: string; purpose?: string }[] };
  expect(manifest).toMatchObject({ name: "Flatwright", display: "standalone", start_url: "./" });
  expect(manifest.icons.some(({ purpose }) => purpose === "maskable")).toBe(true);
  for (const { src, sizes } of manifest.icons) {
    const size = await page.evaluate(async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      return `${image.naturalWidth}x${image.naturalHeight}`;
    }, src);
    if (sizes !== "any") expect(size).toBe(sizes);
  }
});

test("a newer version is offered in words, waits until it is asked for, and the work stays", async ({ browser }) => {
  let newer = false;
  const server = await serve((path, body) => (newer && path.endsWith("sw.js") ? Buffer.concat([body, Buffer.from("\n// newer")]) : body));
  const page = await (await browser.newContext()).newPage();
  try {
    await page.goto(`http://127.0.0.1:${(server.address() as AddressInfo).port}/`);
    await untilKept(page);
    await page.reload();
    await page.getByRole("textbox", { name: "Angle from square", exact: true }).fill("41");
    await page.keyboard.press("Enter");
    newer = true;
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration())?.update());
    const banner = page.locator(".banner-place");
    await expect(banner).toContainText("A newer version is ready");
    expect(await waiting(page)).toBe(true);
    await page.getByRole("textbox", { name: "Angle from square", exact: true }).fill("42");
    await page.keyboard.press("Enter");
    const loaded = page.waitForEvent("load");
    await banner.getByRole("button", { name: "Reload" }).click();
    await loaded;
    await expect(page.getByRole("textbox", { name: "Angle from square", exact: true })).toHaveValue("42");
    expect(await waiting(page)).toBe(false);
  } finally {
    await page.context().close();
    server.close();
  }
});

/** Waits until the service worker has kept the files. */
async function untilKept(page: Page): Promise<void> {
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
}

/** Whether a newer service worker waits to be let in. */
function waiting(page: Page): Promise<boolean> {
  return page.evaluate(async () => Boolean((await navigator.serviceWorker.getRegistration())?.waiting));
}

const types: Readonly<Record<string, string>> = { ".html": "text/html", ".js": "text/javascript", ".css": "text/css", ".svg": "image/svg+xml", ".png": "image/png", ".woff2": "font/woff2", ".otf": "font/otf", ".json": "application/json", ".webmanifest": "application/manifest+json" };

/** Serves the built files, each passed through `change`, at a port of its own. */
async function serve(change: (path: string, body: Buffer) => Buffer): Promise<Server> {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? "/", "http://127.0.0.1");
    const path = join(built, pathname === "/" ? "index.html" : pathname);
    readFile(path).then(
      (body) => response.writeHead(200, { "Content-Type": types[extname(path)] ?? "application/octet-stream", "Cache-Control": "no-cache" }).end(change(path, body)),
      () => response.writeHead(404).end(),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  return server;
}
