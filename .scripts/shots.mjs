// `npm run shots`: builds the app and makes the picture in README.md anew.
import { chromium } from "@playwright/test";
import { build, preview } from "vite";
import { browserForTests } from "./browser.mjs";

const { path, found } = browserForTests();
console.log(`browser: ${path}, ${found}`);
await build({ logLevel: "warn" });
const server = await preview({ preview: { port: 4190 } });
const args = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
const browser = await chromium.launch({ executablePath: path, args: [...args, "--disable-gpu", "--disable-background-networking"] });
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: "reduce", colorScheme: "light", locale: "en-GB" });
  await page.goto(server.resolvedUrls.local[0], { waitUntil: "networkidle" });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await page.screenshot({ path: "docs/screenshot.png" });
  console.log("docs/screenshot.png");
} finally {
  await browser.close();
  await server.close();
}
