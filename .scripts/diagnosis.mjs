// `npm run diagnosis`: how surely mistakes are told from readings, over many seeded exercises; writes the table into docs/accuracy.md.
import { build } from "vite";

const outDir = ".cache/diagnosis";
await build({ logLevel: "warn", publicDir: false, build: { ssr: "tests/bench/diagnosis.ts", outDir, emptyOutDir: true, minify: false } });
await import(`../${outDir}/diagnosis.js`);
