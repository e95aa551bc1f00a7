import { gzipSync } from "node:zlib";
import type { Page } from "@playwright/test";

/** Bytes after gzip of each thing the page at `address` fetches before it falls quiet, by its name. */
export async function firstLoad(page: Page, address: string): Promise<Map<string, number>> {
  const sizes = new Map<string, number>();
  const reading: Promise<void>[] = [];
  page.on("response", (response) => {
    const name = new URL(response.url()).pathname;
    reading.push(response.body().then((body) => void sizes.set(name, gzipSync(body, { level: 9 }).length)));
  });
  await page.goto(address, { waitUntil: "networkidle" });
  await page.evaluate(() => document.fonts.ready.then(() => undefined));
  await Promise.all(reading);
  return sizes;
}

/** Bytes of all of it. */
export function total(sizes: ReadonlyMap<string, number>): number {
  return [...sizes.values()].reduce((sum, size) => sum + size, 0);
}
