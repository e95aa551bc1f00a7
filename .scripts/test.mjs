// `npm test`: types, lint, unit, property, golden, house and oracle tests, then the browser tests on the production build.
// Stops at the first step that fails. The last line counts the tests of both runners.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { browserForTests } from "./browser.mjs";

const reports = join(".cache", "reports");
const vitestReport = join(reports, "vitest.json");
const playwrightReport = join(reports, "playwright.json");
const counts = { passed: 0, failed: 0, skipped: 0 };

rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

step("types", () => node("typescript/bin/tsc", "--pretty", "false"));
step("types without DOM and React: core, drawing, output", () => node("typescript/bin/tsc", "--pretty", "false", "-p", ".config/tsconfig.core.json"));
step("lint", () => node("eslint/bin/eslint.js", "-c", ".config/eslint.config.js", "--max-warnings", "0", "src", "tests", "vite.config.ts"));
step("unit, property, golden, house and oracle tests", () => {
  const ok = node("vitest/vitest.mjs", "run", "--reporter=default", "--reporter=json", `--outputFile.json=${vitestReport}`);
  countVitest();
  return ok;
});
step("production build", () => node("vite/bin/vite.js", "build"));
step("browser tests on the production build", () => {
  const browser = browserForTests();
  const version = spawnSync(browser.path, ["--version"], { encoding: "utf8" }).stdout?.trim();
  console.log(`browser: ${browser.path}, ${browser.found}${version ? ` (${version})` : ""}`);
  const ok = node("@playwright/test/cli.js", "test", "-c", "tests/browser/playwright.config.ts", { FLATWRIGHT_BROWSER: browser.path, FLATWRIGHT_REPORT: playwrightReport });
  countPlaywright();
  return ok;
});
finish(true);

function step(name, run) {
  console.log(`\n== ${name}`);
  const start = performance.now();
  let ok = false;
  try {
    ok = run() && counts.failed === 0 && counts.skipped === 0;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
  }
  console.log(`== ${name}: ${ok ? "passed" : "FAILED"} in ${((performance.now() - start) / 1000).toFixed(1)} s`);
  if (counts.skipped > 0) console.error(`${counts.skipped} tests were skipped; a test is either mended or taken out`);
  if (!ok) finish(false);
}

/** Runs a package's program and says whether it ended well; the last argument may be an object of environment variables. */
function node(program, ...args) {
  const extra = typeof args.at(-1) === "object" ? args.pop() : {};
  // CI: the runners must never write what they compare with.
  const env = { ...process.env, CI: "true", ...extra };
  return spawnSync(process.execPath, [join("node_modules", program), ...args], { stdio: "inherit", env }).status === 0;
}

function countVitest() {
  const report = readReport(vitestReport);
  counts.passed += report.numPassedTests;
  counts.failed += report.numFailedTests;
  counts.skipped += report.numPendingTests + report.numTodoTests;
}

function countPlaywright() {
  const { stats } = readReport(playwrightReport);
  counts.passed += stats.expected;
  counts.failed += stats.unexpected + stats.flaky;
  counts.skipped += stats.skipped;
}

function readReport(path) {
  if (!existsSync(path)) throw new Error(`the runner wrote no report: ${path}`);
  return JSON.parse(readFileSync(path, "utf8"));
}

function finish(ok) {
  const failed = ok ? counts.failed : Math.max(1, counts.failed);
  console.log(`\n${counts.passed} passed, ${failed} failed`);
  process.exit(ok && failed === 0 ? 0 : 1);
}
