import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

// The production build, the preview server and the test runner.
export default defineConfig({
  base: "./",
  plugins: [react()],
  build: {
    target: "es2023",
    sourcemap: false,
    modulePreload: false,
    // The first load is one file; what is asked for later (print, settings, examples, CSV) comes in files of its own.
    rolldownOptions: { output: { codeSplitting: { groups: [{ name: (id, graph) => (loadsFirst(id, (of) => graph.getModuleInfo(of)) ? "first" : null) }] } } },
    // Nothing is inlined as data: so the page's content security policy can stay at 'self'.
    assetsInlineLimit: 0,
  },
  server: { host: "127.0.0.1" },
  preview: { host: "127.0.0.1", port: 4173, strictPort: false },
  test: {
    environment: "node",
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/browser/**", "node_modules/**"],
    // A guard against hanging only; no test asserts a time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});

/** Whether a module is imported, at first or second hand, by the entry itself and not only on request. */
function loadsFirst(id: string, infoOf: (id: string) => { isEntry: boolean; importers: readonly string[] } | null): boolean {
  const seen = new Set([id]);
  for (const module of seen) {
    const info = infoOf(module);
    if (info?.isEntry) return true;
    for (const importer of info?.importers ?? []) seen.add(importer);
  }
  return false;
}
