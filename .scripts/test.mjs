// `npm test`: types, lint, unit, property, golden, house and oracle tests, then the browser tests on the production build.
// Stops at the first step that fails. The last line counts the tests of both runners.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { runBrowserTests } from "./browser-tests.mjs";

const reports = join(".cache", "reports");
const vitestReport = join(reports, "vitest.json");
const playwrightReport = join(reports, "playwright.json");
const counts = { passed: 0, failed: 0, skipped: 0 };

rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

await step("types", () => node("typescript/bin/tsc", "--pretty", "false"));
await step("types without DOM and React: core, drawing, output", () => node("typescript/bin/tsc", "--pretty", "false", "-p", ".config/tsconfig.core.json"));
await step("lint", () => node("eslint/bin/eslint.js", "-c", ".config/eslint.config.js", "--max-warnings", "0", "src", "tests", "vite.config.ts"));
await step("unit, property, golden, house and oracle tests", () => {
  const ok = node("vitest/vitest.mjs", "run", "--reporter=default", "--reporter=json", `--outputFile.json=${vitestReport}`);
  countVitest();
  return ok;
});
await step("production build", () => node("vite/bin/vite.js", "build"));
await step("browser tests on the production build", async () => {
  const ok = await runBrowserTests([], playwrightReport);
  countPlaywright();
  return ok;
});
finish(true);

async function step(name, run) {
  console.log(`\n== ${name}`);
  const start = performance.now();
  let ok = false;
  try {
    ok = (await run()) && counts.failed === 0 && counts.skipped === 0;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
  }
  console.log(`== ${name}: ${ok ? "passed" : "FAILED"} in ${((performance.now() - start) / 1000).toFixed(1)} s`);
  if (counts.skipped > 0) console.error(`${counts.skipped} tests were skipped; a test is either mended or taken out`);
  if (!ok) finish(false);
}

/** Runs a package's program and says whether it ended well. */
function node(program, ...args) {
  // CI: the runners must never write what they compare with.
  const env = { ...process.env, CI: "true" };
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
