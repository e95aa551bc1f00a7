import { expect, test as plain } from "@playwright/test";

/**
 * The test function of the browser tests. Its page fails the test that uses it when the app throws, writes an error or
 * a warning to the console, or asks any address but its own. An address counts as opened once the letters of the app are
 * there, for until then words are wider or narrower and stand elsewhere. Its browser refuses to keep files for use without
 * a network, which costs each visit as much again as the page, unless the test uses `keepsFiles: true`.
 */
export const test = plain.extend<{ keepsFiles: boolean }>({
  keepsFiles: [false, { option: true }],
  context: async ({ context, keepsFiles }, use) => {
    if (!keepsFiles) await context.addInitScript(refuseToKeepFiles);
    await use(context);
  },
  page: async ({ page, baseURL }, use) => {
    const faults: string[] = [];
    page.on("pageerror", (error) => faults.push(`thrown: ${error.message}`));
    page.on("console", (message) => {
      if (message.type() === "error" || message.type() === "warning") faults.push(`console: ${message.text()}`);
    });
    page.on("request", (request) => {
      const local = request.url().startsWith(`${baseURL ?? ""}/`) || /^(?:blob|data):/.test(request.url());
      if (!local) faults.push(`asked elsewhere: ${request.url()}`);
    });
    const open = page.goto.bind(page);
    page.goto = async (...to) => {
      const answer = await open(...to);
      await page.evaluate(() => document.fonts.load('1em "B612"').then(() => undefined));
      return answer;
    };
    await use(page);
    expect(faults).toEqual([]);
  },
});

/** Runs in the page, before anything of it: what a browser says that allows no service worker. */
function refuseToKeepFiles(): void {
  if (!("ServiceWorkerContainer" in self)) return;
  ServiceWorkerContainer.prototype.register = () => Promise.reject(new DOMException("refused", "SecurityError"));
}

export { expect };
