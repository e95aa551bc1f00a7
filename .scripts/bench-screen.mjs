// The part of `npm run bench` that needs a browser: from a key in a field to the new picture, for every example.
import { withApp } from "./with-app.mjs";

const steps = 60;
const frame = 1000 / 60;

/** Prints, for each example, the time of a whole redraw: development, board, React, and the browser's own layout. */
export async function benchScreen() {
  await withApp(async (page) => {
    console.log("\nRedrawing on the screen: one step of the first measure by key, of", steps, "steps");
    await page.getByRole("button", { name: "Examples" }).click();
    await page.locator(".examples button").first().waitFor();
    const count = await page.locator(".examples button").count();
    await page.keyboard.press("Escape");
    for (let i = 0; i < count; i += 1) {
      await page.getByRole("button", { name: "Examples" }).click();
      const example = page.locator(".examples button").nth(i);
      const title = await example.locator("strong").innerText();
      await example.click();
      await page.locator("input.number").first().focus();
      const times = await page.evaluate(stepAndTime, steps);
      const [fastest, median] = [times[0], times[Math.floor(steps / 2)]];
      const share = (time) => `${((100 * time) / frame).toFixed(0).padStart(4)} %`;
      console.log(`  ${title.padEnd(32)} fastest ${fastest.toFixed(1).padStart(5)} ms,${share(fastest)} of a 60 Hz frame; median ${median.toFixed(1).padStart(5)} ms,${share(median)}`);
    }
  });
}

/** Runs in the page: steps the field in hand up and down, and times each step (ms) to the end of React's work and of layout; sorted. */
async function stepAndTime(steps) {
  const field = document.activeElement;
  const queued = () => new Promise((resolve) => {
    const channel = new MessageChannel();
    channel.port1.onmessage = resolve;
    channel.port2.postMessage(null);
  });
  const times = [];
  for (let i = 0; i < steps; i += 1) {
    await new Promise((resolve) => requestAnimationFrame(resolve));
    const before = document.querySelector(".board svg")?.innerHTML;
    const start = performance.now();
    field.dispatchEvent(new KeyboardEvent("keydown", { key: i % 2 ? "ArrowDown" : "ArrowUp", bubbles: true, cancelable: true }));
    await queued();
    document.body.getBoundingClientRect();
    times.push(performance.now() - start);
    if (document.querySelector(".board svg")?.innerHTML === before) throw new Error("the step changed nothing on the board");
  }
  return times.sort((a, b) => a - b);
}
