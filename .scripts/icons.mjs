// Makes the icons of the installed program, public/icon-*.png, from public/favicon.svg: the mark on its paper, and for
// icons the system cuts to a shape of its own (maskable) the mark within the inner four fifths of a full square.
import { readFileSync } from "node:fs";
import { chromium } from "@playwright/test";
import { browserForTests } from "./browser.mjs";

const drawn = readFileSync("public/favicon.svg", "utf8");
const paper = /<rect[^>]*fill="(#\w+)"/.exec(drawn)[1];
const icons = [
  { name: "icon-192", size: 192, mark: 1, ground: "transparent" },
  { name: "icon-512", size: 512, mark: 1, ground: "transparent" },
  { name: "icon-maskable-512", size: 512, mark: 0.7, ground: paper },
  { name: "icon-apple-180", size: 180, mark: 0.85, ground: paper },
];

const asRoot = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
const browser = await chromium.launch({ executablePath: browserForTests().path, args: [...asRoot, "--disable-gpu"] });
for (const { name, size, mark, ground } of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  const side = Math.round(size * mark);
  await page.setContent(`<style>html, body { margin: 0; height: 100% } body { background: ${ground}; display: grid; place-content: center } svg { width: ${side}px; height: ${side}px }</style>${drawn}`);
  await page.screenshot({ path: `public/${name}.png`, omitBackground: true });
  await page.close();
}
await browser.close();
