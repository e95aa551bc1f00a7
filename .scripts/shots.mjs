// `npm run shots`: builds the app and makes the picture in README.md anew.
import { withApp } from "./with-app.mjs";

await withApp(async (page) => {
  // A station in hand shows how everything is linked; what comes with the first touch is waited for.
  await page.locator(".rod-scale").focus();
  for (let i = 0; i < 6; i++) await page.keyboard.press("ArrowRight");
  await page.evaluate(() => document.activeElement.blur());
  for (const part of [".board-verbs", ".adequacy select", ".proof", ".pictorial .line", ".station-layer"]) await page.locator(part).first().waitFor({ state: "attached" });
  await page.screenshot({ path: "docs/screenshot.png" });
});
console.log("docs/screenshot.png");
