import { expect, test as plain } from "@playwright/test";

/**
 * The test function of the browser tests. Its page fails the test that uses it when the app throws, writes an error or
 * a warning to the console, or asks any address but its own.
 */
export const test = plain.extend({
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
    await use(page);
    expect(faults).toEqual([]);
  },
});

export { expect };
