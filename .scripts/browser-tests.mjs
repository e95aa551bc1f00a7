// The browser tests on the production build. By itself: `npm run test:browser -- [arguments of playwright test]`.
import { spawnSync } from "node:child_process";
import { createServer } from "node:net";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { browserForTests } from "./browser.mjs";

/** Runs them and says whether all passed; counts go to the file `report`, when given. The build must be there. */
export async function runBrowserTests(args, report) {
  const browser = browserForTests();
  const version = spawnSync(browser.path, ["--version"], { encoding: "utf8" }).stdout?.trim();
  console.log(`browser: ${browser.path}, ${browser.found}${version ? ` (${version})` : ""}`);
  const env = { ...process.env, CI: "true", FLATWRIGHT_BROWSER: browser.path, FLATWRIGHT_PORT: String(await freePort()) };
  if (report) env.FLATWRIGHT_REPORT = report;
  const program = join("node_modules", "@playwright", "test", "cli.js");
  const { status } = spawnSync(process.execPath, [program, "test", "-c", "tests/browser/playwright.config.ts", ...args], { stdio: "inherit", env });
  return status === 0;
}

function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once("error", reject);
    server.listen(0, "127.0.0.1", () => {
      const { port } = server.address();
      server.close(() => resolve(port));
    });
  });
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  process.exit((await runBrowserTests(process.argv.slice(2))) ? 0 : 1);
}
