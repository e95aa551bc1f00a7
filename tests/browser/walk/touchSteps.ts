import type { Hand, Step } from "./steps";
import { oneOf, somewhere, type Target } from "./targets";

// What fingers do in a walk: taps, drags of one finger, two fingers at once, and touches that the device breaks off.

/** What a finger may be put on. */
const pressed = "button:not(:disabled), summary, .station-table td, input.number";
const dragged = ['.handle:not([data-state="away"]) .grip', "input.number", "input[type=range]"].join(", ");
const places = [".board-paper", ".board-paper", ".rod-scale", ".pictorial", ".station-table"] as const;

/** Where two fingers are the program's own. */
const forTwo = [".board-paper", ".board-paper", ".rod-scale", ".pictorial"] as const;

export const touchSteps: readonly (readonly [weight: number, step: Step])[] = [
  [10, atOwnSize(tap)], [5, atOwnSize(tapSomewhere)], [10, atOwnSize(fingerDrag)], [6, atOwnSize(fingerSweep)], [6, atOwnSize(twoFingers)],
];

/** Beside the board fingers may make the whole page larger, as in any browser; then no place would be where it was. */
function atOwnSize(step: Step): Step {
  return async (hand) => {
    const told = await step(hand);
    await hand.fingers?.send("Emulation.setPageScaleFactor", { pageScaleFactor: 1 });
    return told;
  };
}

async function tap({ page, source }: Hand): Promise<string | null> {
  const target = await oneOf(page, source, pressed);
  return target && tapAt(page, target);
}

async function tapSomewhere({ page, source }: Hand): Promise<string | null> {
  const target = await somewhere(page, source, source.pick(places));
  return target && tapAt(page, target);
}

async function tapAt(page: Hand["page"], { x, y, name }: Target): Promise<string> {
  await page.touchscreen.tap(x, y);
  return `tap “${name}” at ${Math.round(x)},${Math.round(y)}`;
}

async function fingerDrag(hand: Hand): Promise<string | null> {
  const target = await oneOf(hand.page, hand.source, dragged);
  return target && oneFinger(hand, target);
}

async function fingerSweep(hand: Hand): Promise<string | null> {
  const target = await somewhere(hand.page, hand.source, hand.source.pick(places));
  return target && oneFinger(hand, target);
}

async function oneFinger({ source, fingers }: Hand, { x, y, name }: Target): Promise<string> {
  const ways = Array.from({ length: source.whole(1, 4) }, () => ({ x: Math.round(source.between(-150, 150)), y: Math.round(source.between(-150, 150)) }));
  const broken = source.chance(0.2);
  await fingers?.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: [{ x, y }] });
  for (const way of ways.flatMap(({ x, y }) => [{ x: x / 2, y: y / 2 }, { x, y }])) {
    await fingers?.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [within({ x: x + way.x, y: y + way.y })] });
  }
  await fingers?.send("Input.dispatchTouchEvent", { type: broken ? "touchCancel" : "touchEnd", touchPoints: [] });
  return `finger on “${name}” by ${ways.map((way) => `${way.x},${way.y}`).join(" ")}${broken ? ", broken off" : ""}`;
}

async function twoFingers({ page, source, fingers }: Hand): Promise<string | null> {
  const target = await somewhere(page, source, source.pick(forTwo));
  if (!target) return null;
  const from = source.between(20, 120), to = source.between(20, 300);
  const pair = (apart: number) => [-1, 1].map((side, id) => ({ ...within({ x: target.x + (side * apart) / 2, y: target.y }), id }));
  await fingers?.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: pair(from) });
  for (let i = 1; i <= 4; i++) await fingers?.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: pair(from + ((to - from) * i) / 4) });
  // Often one finger goes first and the other moves on.
  const [left] = pair(to);
  if (left && source.chance(0.5)) {
    await fingers?.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [left] });
    await fingers?.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: [within({ ...left, y: left.y + 30 })] });
  }
  await fingers?.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  return `two fingers on “${target.name}” at ${target.x},${target.y} from ${Math.round(from)} to ${Math.round(to)}`;
}

/** No finger is put left of the screen or above it. */
function within<Point extends { x: number; y: number }>(point: Point): Point {
  return { ...point, x: Math.max(0, point.x), y: Math.max(0, point.y) };
}
