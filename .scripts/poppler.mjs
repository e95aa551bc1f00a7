// Finds poppler's programs (pdftoppm, pdfinfo, pdffonts, pdftotext), with which the tests measure PDF files, or installs them.
// By itself it prints the folder they are in.
import { spawnSync } from "node:child_process";
import { accessSync, constants, existsSync } from "node:fs";
import { delimiter, join } from "node:path";
import { pathToFileURL } from "node:url";

const program = process.platform === "win32" ? "pdftoppm.exe" : "pdftoppm";

/** @returns {string} the folder of the programs; throws when they are not there and cannot be installed. */
export function popplerForTests() {
  const found = onSystem();
  if (found) return found;
  if (process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    console.error("poppler: not found; installing Debian's poppler-utils with apt-get");
    const env = { ...process.env, DEBIAN_FRONTEND: "noninteractive" };
    run("apt-get", ["update"], env);
    run("apt-get", ["install", "-y", "--no-install-recommends", "poppler-utils"], env);
    const installed = onSystem();
    if (installed) return installed;
  }
  throw new Error("no pdftoppm: install poppler (Debian: poppler-utils), or name the folder of its programs in FLATWRIGHT_POPPLER");
}

function onSystem() {
  const folders = [process.env.FLATWRIGHT_POPPLER ?? "", ...(process.env.PATH ?? "").split(delimiter), "/opt/homebrew/bin", "/usr/local/bin"].filter(Boolean);
  return folders.find((folder) => isProgram(join(folder, program))) ?? null;
}

function run(name, args, env) {
  const { status, error } = spawnSync(name, args, { stdio: ["ignore", 2, 2], env });
  if (status !== 0) console.error(`poppler: ${name} ${args.join(" ")} failed (${error?.message ?? `exit ${status}`})`);
}

function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) {
  try {
    console.log(popplerForTests());
  } catch (error) {
    console.error(error.message);
    process.exit(1);
  }
}
