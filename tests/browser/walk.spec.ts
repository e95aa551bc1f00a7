import { expect, test } from "@playwright/test";
import { walkLap } from "./walk/lap";

// A hand that knows nothing of the program: clicks, drags, types and presses keys at random, but always the same way for one seed.
// Short here; `npm run walk -- SEED MINUTES` walks longer, `npm run walk -- SEED MINUTES LAP` begins at a lap that failed.

const seed = Number(process.env.FLATWRIGHT_WALK_SEED ?? 1);
const minutes = Number(process.env.FLATWRIGHT_WALK_MINUTES ?? 1 / 3);
const firstLap = Number(process.env.FLATWRIGHT_WALK_LAP ?? 1);

test(`a random walk of seed ${seed} breaks nothing, and undo leads back to its start`, async ({ browser, baseURL }) => {
  test.setTimeout(minutes * 60_000 + 600_000);
  const end = Date.now() + minutes * 60_000;
  let taken = 0;
  for (let lap = firstLap; lap === firstLap || Date.now() < end; lap++) {
    taken += await walkLap(browser, `${baseURL ?? ""}/`, seed, lap);
    if (minutes > 1) console.log(`seed ${seed}, lap ${lap}: ${taken} steps so far`);
  }
  expect(taken).toBeGreaterThan(0);
});
