// `npm run bench`: bundles tests/bench/bench.ts for Node and runs it.
import { build } from "vite";

const outDir = ".cache/bench";
await build({ logLevel: "warn", publicDir: false, build: { ssr: "tests/bench/bench.ts", outDir, emptyOutDir: true, minify: false } });
await import(`../${outDir}/bench.js`);
