// `npm run bench`: bundles tests/bench/bench.ts for Node and runs it, then times the app in a browser, by key and by hand.
import { build } from "vite";
import { benchFrames } from "./bench-frames.mjs";
import { benchScreen } from "./bench-screen.mjs";

const outDir = ".cache/bench";
await build({ logLevel: "warn", publicDir: false, build: { ssr: "tests/bench/bench.ts", outDir, emptyOutDir: true, minify: false } });
await import(`../${outDir}/bench.js`);
await benchScreen();
await benchFrames();
