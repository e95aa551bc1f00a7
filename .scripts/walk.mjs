// `npm run walk -- SEED MINUTES LAP`: the random walk of the browser tests, for ten minutes or as long as asked, from a lap on.
import { runBrowserTests } from "./browser-tests.mjs";

const [seed = String(Date.now() % 100000), minutes = "10", lap = "1"] = process.argv.slice(2);
for (const [name, value] of Object.entries({ seed, minutes, lap })) {
  if (!(Number(value) > 0)) throw new Error(`${name}: ${value} is no number above 0`);
}
Object.assign(process.env, { FLATWRIGHT_WALK_SEED: seed, FLATWRIGHT_WALK_MINUTES: minutes, FLATWRIGHT_WALK_LAP: lap });
console.log(`seed ${seed}, ${minutes} minutes, from lap ${lap}`);
process.exit((await runBrowserTests(["walk.spec.ts"])) ? 0 : 1);
