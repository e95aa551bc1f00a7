// `npm run golden`: writes the golden drawings anew, to be reviewed in the diff before they are committed.
import { spawnSync } from "node:child_process";
import { join } from "node:path";

if (process.env.CI) {
  console.error("golden drawings are never written in CI");
  process.exit(1);
}
const env = { ...process.env, FLATWRIGHT_GOLDEN: "write" };
const { status } = spawnSync(process.execPath, [join("node_modules", "vitest", "vitest.mjs"), "run", "--update=all", "tests/golden"], { stdio: "inherit", env });
process.exit(status ?? 1);
