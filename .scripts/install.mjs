// Installs the packages of package-lock.json when node_modules is not what the lock says.
// Runs before `npm start` and `npm test` on a folder without node_modules: Node's own modules only.
import { createHash } from "node:crypto";
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..");
const stampPath = join(root, "node_modules", ".flatwright-lock");
const lockText = readFileSync(join(root, "package-lock.json"), "utf8");
const stamp = createHash("sha256").update(`${process.platform} ${process.arch} ${process.versions.modules}\n${lockText}`).digest("hex");

if (!stamped() && !installedByHand()) {
  console.log("packages: installing what package-lock.json names (npm ci)");
  const shell = process.platform === "win32";
  const npm = spawnSync(shell ? "npm.cmd" : "npm", ["ci", "--no-audit", "--no-fund"], { cwd: root, stdio: "inherit", shell });
  if (npm.status !== 0) {
    console.error(`packages: npm ci failed (${npm.error?.message ?? `exit ${npm.status}`})`);
    process.exit(1);
  }
}
writeFileSync(stampPath, stamp);

function stamped() {
  return existsSync(stampPath) && readFileSync(stampPath, "utf8") === stamp;
}

/** Whether npm's own record of node_modules holds every package of the lock at its version (after an `npm install` by hand). */
function installedByHand() {
  const record = join(root, "node_modules", ".package-lock.json");
  if (!existsSync(record)) return false;
  const installed = JSON.parse(readFileSync(record, "utf8")).packages;
  return Object.entries(JSON.parse(lockText).packages).every(
    ([path, wanted]) => path === "" || wanted.optional || wanted.peer || installed[path]?.version === wanted.version,
  );
}
