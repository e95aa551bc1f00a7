import react from "@vitejs/plugin-react";
import { defineConfig } from "vitest/config";

// The production build, the preview server and the test runner.
export default defineConfig({
  base: "./",
  plugins: [react()],
  build: {
    target: "es2023",
    sourcemap: false,
    modulePreload: { polyfill: false },
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
