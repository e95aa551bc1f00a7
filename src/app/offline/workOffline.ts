import { create } from "zustand";

// The page keeps its own files in the browser and works without a network; a newer version waits until it is asked for.

/** Puts the newer version in the place of this one and loads the page again; null while there is none. */
export const useNewer = create<{ readonly reload: (() => void) | null }>()(() => ({ reload: null }));

/** Has the service worker keep the files, and tells `useNewer` of a newer version. Without one the page works as before. */
export async function workOffline(): Promise<void> {
  const { serviceWorker } = navigator as { serviceWorker?: ServiceWorkerContainer };
  if (!serviceWorker || import.meta.env.DEV) return;
  try {
    watch(await serviceWorker.register("./sw.js"), serviceWorker);
  } catch {
    // A browser that keeps no files for this page still shows it.
  }
}

function watch(registration: ServiceWorkerRegistration, container: ServiceWorkerContainer): void {
  const offer = (worker: ServiceWorker | null) => {
    // Without a controller this is the first version, not a newer one.
    if (worker?.state === "installed" && container.controller) useNewer.setState({ reload: () => replace(worker, container) });
  };
  offer(registration.waiting);
  registration.addEventListener("updatefound", () => {
    const coming = registration.installing;
    coming?.addEventListener("statechange", () => offer(coming));
  });
  // Another page has brought the newer version in.
  container.addEventListener("controllerchange", () => useNewer.setState({ reload: () => location.reload() }));
  document.addEventListener("visibilitychange", () => {
    // Without a network there is nothing newer to be had.
    if (document.visibilityState === "visible") registration.update().catch(() => undefined);
  });
}

function replace(worker: ServiceWorker, container: ServiceWorkerContainer): void {
  container.addEventListener("controllerchange", () => location.reload(), { once: true });
  worker.postMessage({ type: "SKIP_WAITING" });
}
