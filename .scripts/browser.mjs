// Finds the browser for the browser tests, or installs one. Answers with its path and where it was found.
import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { chromium } from "@playwright/test";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "microsoft-edge", "chrome.exe", "msedge.exe"];
const places = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** @returns {{ path: string, found: string }} a Chromium to drive; throws when none is there and none can be installed. */
export function browserForTests() {
  return fromEnvironment() ?? onSystem() ?? inDriverCache() ?? installed();
}

function fromEnvironment() {
  const path = process.env.FLATWRIGHT_BROWSER;
  if (!path) return null;
  if (!isProgram(path)) throw new Error(`FLATWRIGHT_BROWSER names no program: ${path}`);
  return { path, found: "named by FLATWRIGHT_BROWSER" };
}

function onSystem() {
  const folders = (process.env.PATH ?? "").split(delimiter).filter(Boolean);
  const paths = [...names.flatMap((name) => folders.map((folder) => join(folder, name))), ...places];
  const path = paths.find(isProgram);
  return path ? { path, found: "on the system" } : null;
}

function inDriverCache() {
  const path = chromium.executablePath();
  return isProgram(path) ? { path, found: "in the driver's own cache" } : null;
}

function installed() {
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.log("browser: none found; installing Debian's chromium with apt-get");
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    run("apt-get", ["update"], env);
    run("apt-get", ["install", "-y", "--no-install-recommends", "chromium"], env);
    const found = onSystem();
    if (found) return { ...found, found: "installed with apt-get" };
  }
  console.log("browser: none found; asking the test driver to install its own");
  run(process.execPath, [join("node_modules", "@playwright", "test", "cli.js"), "install", "chromium"], process.env);
  const found = inDriverCache();
  if (found) return { ...found, found: "installed by the test driver" };
  throw new Error("no browser: install Chromium or Chrome, or name one in FLATWRIGHT_BROWSER");
}

function run(program, args, env) {
  const { status, error } = spawnSync(program, args, { stdio: "inherit", env });
  if (status !== 0) console.log(`browser: ${program} ${args.join(" ")} failed (${error?.message ?? `exit ${status}`})`);
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
