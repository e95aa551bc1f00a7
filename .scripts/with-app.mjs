// The built app, served and opened in a browser, for scripts that look at it.
import { chromium } from "@playwright/test";
import { build, preview } from "vite";
import { browserForTests } from "./browser.mjs";

/** Builds the app, opens it in a window of 1440 by 900, calls `work(page, address)`, and puts everything away again. */
export async function withApp(work) {
  const { path, found } = browserForTests();
  console.log(`browser: ${path}, ${found}`);
  await build({ logLevel: "warn" });
  const server = await preview({ preview: { port: 4190 } });
  const asRoot = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  const quiet = ["--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
  const browser = await chromium.launch({ executablePath: path, args: [...asRoot, ...quiet] });
  try {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, reducedMotion: "reduce", colorScheme: "light", locale: "en-GB" });
    const page = await context.newPage();
    const [address] = server.resolvedUrls.local;
    await page.goto(address, { waitUntil: "networkidle" });
    await page.evaluate(() => document.fonts.ready.then(() => undefined));
    await work(page, address);
  } finally {
    await browser.close();
    await server.close();
  }
}
