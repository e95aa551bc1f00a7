import { defineConfig } from "@playwright/test";

const port = process.env.FLATWRIGHT_PORT ?? "4179";
const executablePath = process.env.FLATWRIGHT_BROWSER;
const report = process.env.FLATWRIGHT_REPORT;
const address = `http://127.0.0.1:${port}`;

/** Quiet flags: on a closed network a browser's own look-ups fail by the dozen. */
const quiet = ["--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
const asRoot = process.getuid?.() === 0 ? ["--no-sandbox"] : [];

// The browser tests on the production build in dist; started by .scripts/browser-tests.mjs, which builds and finds a browser.
export default defineConfig({
  testDir: ".",
  testMatch: "**/*.spec.ts",
  outputDir: "../../test-results",
  // Files side by side, each test in a context of its own; one browser keeps about one core busy.
  workers: 2,
  retries: 0,
  forbidOnly: true,
  // A guard against hanging only; no test asserts a time.
  timeout: 120_000,
  expect: { timeout: 20_000 },
  reporter: [["list"], ...(report ? [["json", { outputFile: `../../${report}` }] as const] : [])],
  use: {
    baseURL: address,
    viewport: { width: 1440, height: 900 },
    reducedMotion: "reduce",
    locale: "en-GB",
    launchOptions: { ...(executablePath ? { executablePath } : {}), args: [...quiet, ...asRoot] },
  },
  webServer: {
    command: `node node_modules/vite/bin/vite.js preview --port ${port} --strictPort`,
    cwd: "../..",
    url: address,
    reuseExistingServer: false,
  },
});
