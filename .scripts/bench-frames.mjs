// `npm run bench:frames`, and the last part of `npm run bench`: hands on the board in a real browser. For each example, with 24 and with 120
// stations, a handle is dragged and the rod swept; and beside it, in the same run, a page that does nothing but move as many plain SVG nodes.
import { pathToFileURL } from "node:url";
import { withApp } from "./with-app.mjs";

/** Pointer moves of a drag or sweep, one every 1/60 s. */
const moves = 90;
const pause = 1000 / 60;
/** Each is done so often on a page loaded anew, so that every drag is a first one; the middle of what was measured is told. */
const times = 3;
/** CSS pixels a handle is dragged to and fro. */
const sway = 24;

/**
 * Prints frames a second, how many of them show the drawing anew, the longest task, and the main thread's work per pointer move that
 * reaches the page, each with its ratio to the plain page's.
 */
export async function benchFrames(examples = /./) {
  await withApp(async (page, address) => {
    console.log(`\nHands on the board: ${moves} pointer moves at 60 a second, the middle of ${times} first drags; in brackets the ratio to a page that moves as many plain SVG nodes`);
    console.log(`  ${"".padEnd(48)}${["nodes", "frames/s", "drawn/s", "longest task ms", "work/move ms"].map((head) => head.padStart(20)).join("")}`);
    const plain = await page.context().newPage();
    for (const title of await titles(page)) {
      if (!examples.test(title)) continue;
      for (const stations of [24, 120]) {
        const all = [];
        for (let i = 0; i < times; i++) {
          await open(page, address, title, stations);
          const nodes = await page.locator(".drawing *").count();
          all.push({ nodes, plain: await movedPlain(plain, nodes), drag: await measured(page, await handlePath(page)), sweep: await measured(page, await rodPath(page)) });
        }
        const reference = middleOf(all.map((one) => one.plain));
        for (const hand of ["drag", "sweep"]) print(`${title}, ${stations}: ${hand}`, all[0].nodes, middleOf(all.map((one) => one[hand])), reference);
      }
    }
  });
}

/** Of each thing measured, the middle one of all times. */
function middleOf(all) {
  const middle = (name) => all.map((one) => one[name]).sort((a, b) => a - b)[Math.floor(all.length / 2)];
  return { frames: middle("frames"), drawn: middle("drawn"), longest: middle("longest"), work: middle("work") };
}

async function titles(page) {
  await page.getByRole("button", { name: "Examples" }).click();
  await page.locator(".examples button").first().waitFor();
  return page.locator(".examples button strong").allInnerTexts();
}

async function open(page, address, title, stations) {
  await page.evaluate(() => sessionStorage.clear());
  await page.goto(address);
  await page.getByRole("button", { name: "Examples" }).click();
  await page.locator(".examples button", { hasText: title }).click();
  const field = page.getByRole("textbox", { name: "Number of stations" });
  await field.fill(String(stations));
  await field.press("Enter");
  await page.locator("[data-clause^='cut:'].clause input.number").first().focus();
  await page.locator('.handle[data-state="in hand"] .grip').first().waitFor();
  // The text of each status line and the gauge follow in their own time.
  await page.waitForTimeout(600);
}

/** From the first handle of the cut in hand, a little to and fro. */
async function handlePath(page) {
  const { x, y } = middle(await page.locator('.handle[data-state="in hand"] .grip').first().boundingBox());
  return path((part) => ({ x: x + sway * Math.sin(4 * Math.PI * part), y: y + sway * Math.sin(6 * Math.PI * part) }));
}

/** Along the rod and back. */
async function rodPath(page) {
  const box = await page.locator(".rod-scale").boundingBox();
  return path((part) => ({ x: box.x + box.width * (0.5 - 0.45 * Math.cos(2 * Math.PI * part)), y: box.y + box.height / 2 }));
}

function path(at) {
  return Array.from({ length: moves + 1 }, (_, i) => at(i / moves));
}

function middle({ x, y, width, height }) {
  return { x: x + width / 2, y: y + height / 2 };
}

async function movedPlain(page, nodes) {
  await page.setContent(`<svg width="900" height="600" style="position:absolute;inset:0">${"<path fill='none' stroke='black'/>".repeat(nodes)}</svg>`);
  await page.evaluate(() => {
    const all = [...document.querySelectorAll("path")];
    let at = null;
    const draw = () => {
      all.forEach((one, i) => one.setAttribute("d", `M${at.x + (i % 90) * 4} ${at.y + i / 9}L${at.x + (i % 90) * 4 + 9} ${at.y + i / 9 + 9}`));
      at = null;
    };
    addEventListener("pointermove", ({ clientX: x, clientY: y }) => {
      if (!at) requestAnimationFrame(draw);
      at = { x, y };
    });
  });
  return measured(page, path((part) => ({ x: 300 + sway * Math.sin(4 * Math.PI * part), y: 200 + sway * Math.sin(6 * Math.PI * part) })));
}

/** Presses, follows the path at 60 points a second and lets go, while the browser is traced. */
async function measured(page, [start, ...rest]) {
  const mouse = await page.context().newCDPSession(page);
  const send = (type, { x, y }, more = {}) => mouse.send("Input.dispatchMouseEvent", { type, x, y, button: "left", buttons: 1, ...more });
  await page.bringToFront();
  await send("mouseMoved", start, { button: "none", buttons: 0 });
  await page.waitForTimeout(100);
  await page.context().browser().startTracing(page, { categories: ["toplevel", "devtools.timeline", "disabled-by-default-devtools.timeline"] });
  await page.evaluate(() => {
    const frames = (window.frames60 = { times: [], drawn: 0 });
    let changed = false;
    const watch = new MutationObserver(() => (changed = true));
    watch.observe(document.querySelector(".drawing") ?? document.body, { subtree: true, attributes: true, childList: true, characterData: true });
    const count = (now) => {
      if (window.frames60 !== frames) return watch.disconnect();
      frames.times.push(now);
      if (changed) frames.drawn += 1;
      changed = false;
      requestAnimationFrame(count);
    };
    requestAnimationFrame(count);
  });
  await send("mousePressed", start, { clickCount: 1 });
  const begin = performance.now();
  const sent = [];
  for (const [i, point] of rest.entries()) {
    await new Promise((resolve) => setTimeout(resolve, Math.max(0, begin + i * pause - performance.now())));
    sent.push(send("mouseMoved", point));
  }
  await Promise.all(sent);
  const { frames, drawn } = await page.evaluate(() => {
    const { times, drawn } = window.frames60;
    window.frames60 = undefined;
    const seconds = (times.at(-1) - times[0]) / 1000;
    return { frames: (times.length - 1) / seconds, drawn: drawn / seconds };
  });
  await send("mouseReleased", rest.at(-1), { clickCount: 1 });
  const { traceEvents } = JSON.parse(await page.context().browser().stopTracing());
  const handled = traceEvents.filter(({ name, args }) => name === "EventDispatch" && args?.data?.type === "pointermove");
  const [moved] = handled;
  const tasks = traceEvents.filter(({ name, pid, tid, dur }) => name === "RunTask" && pid === moved?.pid && tid === moved.tid && dur > 0);
  if (tasks.length === 0) throw new Error("the trace holds no task of the page");
  await mouse.detach();
  // Time of the thread itself: what other work on the machine disturbs least.
  const own = tasks.map(({ dur, tdur }) => (tdur ?? dur) / 1000);
  return { frames, drawn, longest: Math.max(...own), work: own.reduce((sum, one) => sum + one, 0) / handled.length };
}

function print(name, nodes, own, plain) {
  const cell = (what, digits) => `${own[what].toFixed(digits)} (${(own[what] / plain[what]).toFixed(1)})`.padStart(20);
  console.log(`  ${name.padEnd(48)}${String(nodes).padStart(20)}${cell("frames", 0)}${cell("drawn", 0)}${cell("longest", 1)}${cell("work", 2)}`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href) await benchFrames(new RegExp(process.argv[2] ?? "."));
