import type { CDPSession, Page } from "@playwright/test";
import type { RandomSource } from "../../support/randomSource";
import { oneOf, somewhere, type Target } from "./targets";
import { touchSteps } from "./touchSteps";
import { typed } from "./typed";

// The steps of a walk: what a hand may do next, each as often as its weight.

export interface Hand {
  readonly page: Page;
  readonly source: RandomSource;
  /** Where the device is touched, if it can be. */
  readonly fingers: CDPSession | null;
}

/** One step; says what it did, or null when nothing was there to do it with. */
export type Step = (hand: Hand) => Promise<string | null>;

const numbers = "input.number";
const texts = "input:not([type=range], [type=file], [type=checkbox], [type=radio]), textarea";
const grips = '.handle:not([data-state="away"]) .grip';
const sizes = [[1440, 900], [390, 844], [1920, 1080], [320, 640], [1024, 768], [844, 390]] as const;
const fieldKeys = ["ArrowUp", "ArrowDown", "Shift+ArrowUp", "Shift+ArrowDown", "Alt+ArrowUp", "Enter", "Escape", "Tab"] as const;
const anyKeys = [
  "ArrowRight", "ArrowLeft", "ArrowUp", "ArrowDown", "Alt+ArrowRight", "Shift+ArrowLeft", "Shift+ArrowDown", "PageUp", "PageDown", "Home", "End", "Tab", "Tab", "Shift+Tab", "+", "-", "0", "k", "i",
  "Escape", "Enter", "Space", "Control+z", "Control+y", "Control+Shift+z",
] as const;

const steps: readonly (readonly [weight: number, step: Step])[] = [
  [14, press], [5, choose], [12, type], [6, stepNumber], [10, dragHandle], [4, dragPaper], [4, turnWheel], [5, sweepRod], [6, dragNumber], [4, slide],
  [8, pressKeys], [6, goBack], [5, pointAndClick], [5, addCut], [8, useCutVerb], [2, takeExample], [2, resize], [1, switchLight], [3, typeFigure],
];

/** The step the source takes next, of those of the fingers too when the device can be touched. */
export function nextStep(source: RandomSource, touched: boolean): Step {
  const all = touched ? [...steps, ...touchSteps] : steps;
  let left = source.between(0, all.reduce((sum, [weight]) => sum + weight, 0));
  for (const [weight, step] of all) {
    left -= weight;
    if (left < 0) return step;
  }
  return press;
}

async function press({ page, source }: Hand): Promise<string | null> {
  const target = await oneOf(page, source, "button:not(:disabled, .grip, .figure), summary, input[type=checkbox], input[type=radio]");
  return target && click(page, target, "press");
}

async function click(page: Page, target: Target, what: string): Promise<string> {
  await page.mouse.click(target.x, target.y);
  return `${what} “${target.name}”`;
}

async function choose({ page, source }: Hand): Promise<string | null> {
  const target = await oneOf(page, source, "select:not(:disabled)");
  if (!target) return null;
  const at = await page.evaluateHandle(({ x, y }) => document.elementFromPoint(x, y)?.closest("select") ?? null, target);
  const select = at.asElement();
  if (!select) return null;
  const count = await select.evaluate((one) => one.options.length);
  const index = source.whole(0, count - 1);
  await select.selectOption({ index });
  return `choose ${index} in “${target.name}”`;
}

async function type({ page, source }: Hand): Promise<string | null> {
  const target = await oneOf(page, source, texts);
  if (!target) return null;
  const text = typed(source), end = source.pick(["Enter", "Enter", "Tab", "Escape", ""]);
  await page.mouse.click(target.x, target.y);
  await page.keyboard.press("Control+a");
  if (text === "") await page.keyboard.press("Delete");
  else await page.keyboard.insertText(text);
  if (end !== "") await page.keyboard.press(end);
  return `type “${text.slice(0, 30)}” ${end} into “${target.name}”`;
}

async function stepNumber({ page, source }: Hand): Promise<string | null> {
  const target = await oneOf(page, source, numbers);
  if (!target) return null;
  await page.mouse.click(target.x, target.y);
  return `in “${target.name}” ${await pressSome(page, source, fieldKeys)}`;
}

async function pressKeys({ page, source }: Hand): Promise<string> {
  return `keys ${await pressSome(page, source, anyKeys)}`;
}

async function pressSome(page: Page, source: RandomSource, keys: readonly string[]): Promise<string> {
  const pressed = Array.from({ length: source.whole(1, 4) }, () => source.pick(keys));
  for (const key of pressed) await page.keyboard.press(key);
  return pressed.join(" ");
}

async function dragHandle(hand: Hand): Promise<string | null> {
  const { page, source } = hand;
  const target = (await oneOf(page, source, grips)) ?? (await taken(hand));
  return target && drag(hand, target, "handle");
}

/** The handles of a part stand on the board once a field of it is in hand. */
async function taken({ page, source }: Hand): Promise<Target | null> {
  const field = await oneOf(page, source, numbers);
  if (!field) return null;
  await page.mouse.click(field.x, field.y);
  return oneOf(page, source, grips);
}

async function drag({ page, source }: Hand, { x, y, name }: Target, what: string): Promise<string> {
  const key = source.chance(0.2) ? source.pick(["Alt", "Shift"] as const) : null;
  const far = source.chance(0.15) ? 900 : 120;
  const ways = Array.from({ length: source.whole(1, 5) }, () => ({ x: Math.round(source.between(-far, far)), y: Math.round(source.between(-far, far)) }));
  const escape = source.chance(0.15);
  if (key) await page.keyboard.down(key);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (const way of ways) await page.mouse.move(x + way.x, y + way.y, { steps: 3 });
  if (escape) await page.keyboard.press("Escape");
  await page.mouse.up();
  if (key) await page.keyboard.up(key);
  return `drag ${what} “${name}”${key ? ` with ${key}` : ""} by ${ways.map((way) => `${way.x},${way.y}`).join(" ")}${escape ? ", given up" : ""}`;
}

async function dragPaper(hand: Hand): Promise<string | null> {
  const target = await somewhere(hand.page, hand.source, ".board-paper");
  return target && drag(hand, target, "paper");
}

async function dragNumber(hand: Hand): Promise<string | null> {
  const target = await oneOf(hand.page, hand.source, numbers);
  return target && drag(hand, target, "number");
}

async function sweepRod(hand: Hand): Promise<string | null> {
  const target = await somewhere(hand.page, hand.source, ".rod-scale");
  return target && drag(hand, target, "rod");
}

async function slide(hand: Hand): Promise<string | null> {
  const target = await oneOf(hand.page, hand.source, "input[type=range], .pictorial");
  return target && drag(hand, target, "slider");
}

async function turnWheel(hand: Hand): Promise<string | null> {
  const { page, source } = hand;
  const target = await somewhere(hand.page, hand.source, ".board-paper");
  if (!target) return null;
  const turns = Array.from({ length: source.whole(1, 4) }, () => Math.round(source.between(-400, 300)));
  const near = source.chance(0.7);
  await page.mouse.move(target.x, target.y);
  if (near) await page.keyboard.down("Control");
  for (const turn of turns) await page.mouse.wheel(0, turn);
  if (near) await page.keyboard.up("Control");
  return `wheel ${turns.join(" ")}${near ? " with Control" : ""} at ${target.x},${target.y}`;
}

async function pointAndClick(hand: Hand): Promise<string | null> {
  const { page, source } = hand;
  const target = await somewhere(hand.page, hand.source, ".board-paper");
  if (!target) return null;
  const key = source.pick([null, null, "Alt", "Shift"] as const);
  if (key) await page.keyboard.down(key);
  await page.mouse.move(target.x, target.y, { steps: 4 });
  if (source.chance(0.6)) await page.mouse.click(target.x, target.y);
  if (key) await page.keyboard.up(key);
  return `point at ${target.x},${target.y}${key ? ` with ${key}` : ""}`;
}

async function addCut(hand: Hand): Promise<string | null> {
  return fromMenu(hand, ".add-cut > .verb", ".add-cut ul .verb:not(:disabled)");
}

async function useCutVerb(hand: Hand): Promise<string | null> {
  return fromMenu(hand, ".clause-verbs > .verb", ".clause-verbs ul:not([hidden]) .verb:not(:disabled)");
}

async function fromMenu({ page, source }: Hand, opener: string, verb: string): Promise<string | null> {
  const menu = await oneOf(page, source, opener);
  if (!menu) return null;
  await page.mouse.click(menu.x, menu.y);
  const chosen = await oneOf(page, source, verb);
  return chosen && click(page, chosen, `of “${menu.name}”`);
}

async function takeExample({ page, source }: Hand): Promise<string | null> {
  const opener = page.getByRole("button", { name: "Examples", exact: true });
  if ((await opener.count()) === 0 || (await page.locator("dialog[open], .board[data-full]").count()) > 0) return null;
  await opener.click();
  await page.locator(".examples button").first().waitFor();
  const example = await oneOf(page, source, ".examples button");
  return example && click(page, example, "example");
}

async function typeFigure({ page, source }: Hand): Promise<string | null> {
  const figure = await oneOf(page, source, ".figure");
  if (!figure) return null;
  await page.mouse.click(figure.x, figure.y);
  const text = typed(source), end = source.pick(["Enter", "Escape", "Tab"]);
  if ((await page.locator(".figure-typing input").count()) > 0) await page.keyboard.insertText(text);
  await page.keyboard.press(end);
  return `figure “${figure.name}”: “${text.slice(0, 30)}” ${end}`;
}

async function goBack({ page, source }: Hand): Promise<string> {
  const keys = Array.from({ length: source.whole(1, 5) }, () => source.pick(["Control+z", "Control+z", "Control+y"]));
  for (const key of keys) await page.keyboard.press(key);
  return keys.join(" ");
}

async function resize({ page, source }: Hand): Promise<string> {
  const [width, height] = source.pick(sizes);
  await page.setViewportSize({ width, height });
  return `window ${width} × ${height}`;
}

async function switchLight({ page, source }: Hand): Promise<string> {
  const colorScheme = source.pick(["light", "dark"] as const);
  const reducedMotion = source.pick(["reduce", "no-preference"] as const);
  await page.emulateMedia({ colorScheme, reducedMotion });
  return `${colorScheme}, motion ${reducedMotion}`;
}
