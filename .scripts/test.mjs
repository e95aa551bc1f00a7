// `npm test`: types, lint, unit, property, golden, house and oracle tests, then the browser tests on the production build.
// Stops at the first step that fails. The last line counts the tests of both runners. Types, lint and build, which keep
// one core busy each, run side by side.
import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { runBrowserTests } from "./browser-tests.mjs";
import { popplerForTests } from "./poppler.mjs";

const reports = join(".cache", "reports");
const vitestReport = join(reports, "vitest.json");
const playwrightReport = join(reports, "playwright.json");
const counts = { passed: 0, failed: 0, skipped: 0 };

rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

await Promise.all([
  step("lint", () => nodeAside("eslint/bin/eslint.js", "-c", ".config/eslint.config.js", "--max-warnings", "0", "src", "tests", "vite.config.ts")),
  step("types", () => nodeAside("typescript/bin/tsc", "--pretty", "false"))
    .then(() => step("types without DOM and React: core, drawing, output", () => nodeAside("typescript/bin/tsc", "--pretty", "false", "-p", ".config/tsconfig.core.json")))
    .then(() => step("production build", () => nodeAside("vite/bin/vite.js", "build"))),
]);
await step("poppler, to measure PDF files with", () => Boolean(popplerForTests()));
await step("unit, property, golden, house and oracle tests", () => {
  const ok = node("vitest/vitest.mjs", "run", "--reporter=default", "--reporter=json", `--outputFile.json=${vitestReport}`);
  countVitest();
  return ok;
});
await step("browser tests on the production build", async () => {
  const ok = await runBrowserTests([], playwrightReport);
  countPlaywright();
  return ok;
});
finish(true);

async function step(name, run) {
  console.log(`\n== ${name}: begun`);
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
  return spawnSync(process.execPath, [join("node_modules", program), ...args], { stdio: "inherit", env: neverWriting() }).status === 0;
}

/** The same beside others: what it says is held back until it ends, so that no two speak at once. */
function nodeAside(program, ...args) {
  return new Promise((resolve, reject) => {
    const said = [];
    const child = spawn(process.execPath, [join("node_modules", program), ...args], { stdio: ["ignore", "pipe", "pipe"], env: neverWriting() });
    for (const stream of [child.stdout, child.stderr]) stream.on("data", (text) => said.push(text));
    child.once("error", reject);
    process.once("exit", () => child.kill());
    child.once("close", (status) => {
      process.stdout.write(Buffer.concat(said));
      resolve(status === 0);
    });
  });
}

/** CI: the runners must never write what they compare with. */
function neverWriting() {
  return { ...process.env, CI: "true" };
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
