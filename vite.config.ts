import react from "@vitejs/plugin-react";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";

// The production build, the preview server and the test runner.
export default defineConfig({
  base: "./",
  plugins: [react(), worksOffline(), withoutPolicyWhileEdited()],
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
    // A guard against hanging only; no test asserts a time.
    testTimeout: 120_000,
    hookTimeout: 120_000,
    projects: [
      // Pure functions keep nothing between calls: their files share one worker a core, and each module is read once a worker.
      { extends: true, test: { name: "figures", isolate: false, include: ["tests/**/*.test.{ts,tsx}"], exclude: ["tests/app/**", "tests/browser/**"] } },
      // The store and the page are the same for all who import them: each file has a worker of its own.
      { extends: true, test: { name: "app", include: ["tests/app/**/*.test.{ts,tsx}"] } },
    ],
  },
});

/**
 * Whether a module is imported, at first or second hand, by the entry itself and not only on request. The door of the core
 * is no hand: what it offers goes where it is used.
 */
function loadsFirst(id: string, infoOf: (id: string) => { isEntry: boolean; importers: readonly string[] } | null): boolean {
  const seen = new Set([id]);
  for (const module of seen) {
    if (module.endsWith("/src/core/index.ts")) continue;
    const info = infoOf(module);
    if (info?.isEntry) return true;
    for (const importer of info?.importers ?? []) seen.add(importer);
  }
  return false;
}

/**
 * The web app manifest and the service worker that keeps every built file, so that the page installs and works offline.
 * A newer version waits until the reader asks for it (src/app/offline); the page itself registers the worker.
 */
function worksOffline() {
  return VitePWA({
    registerType: "prompt",
    injectRegister: false,
    manifest: {
      id: "./",
      name: "Flatwright",
      short_name: "Flatwright",
      description: "From the description of a cut pipe to its views, its exact flat pattern and its station table.",
      lang: "en",
      start_url: "./",
      scope: "./",
      display: "standalone",
      background_color: "#fbf9f4",
      theme_color: "#fbf9f4",
      icons: [
        { src: "favicon.svg", sizes: "any", type: "image/svg+xml" },
        { src: "icon-192.png", sizes: "192x192", type: "image/png" },
        { src: "icon-512.png", sizes: "512x512", type: "image/png" },
        { src: "icon-maskable-512.png", sizes: "512x512", type: "image/png", purpose: "maskable" },
      ],
    },
    workbox: { globPatterns: ["**/*"], globIgnores: ["sw.js"], inlineWorkboxRuntime: true, cleanupOutdatedCaches: true },
  });
}

/** The development server puts style elements into the page, which the content security policy rightly forbids. */
function withoutPolicyWhileEdited() {
  return {
    name: "without-policy-while-edited",
    apply: "serve" as const,
    transformIndexHtml: (html: string) => html.replace(/ *<meta http-equiv="Content-Security-Policy".*\n/, ""),
  };
}
