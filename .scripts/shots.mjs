// `npm run shots`: builds the app and makes the picture in README.md anew.
import { withApp } from "./with-app.mjs";

await withApp(async (page) => {
  await page.screenshot({ path: "docs/screenshot.png" });
});
console.log("docs/screenshot.png");
