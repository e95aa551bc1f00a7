import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import type { Page } from "@playwright/test";
import type { AxeResults } from "axe-core";
import type { Vec2 } from "../../src/core/index";
import { overA3, photographed, type Pinhole } from "../support/pinholeCamera";
import { expect, test } from "./page";
import { photograph, straight } from "./photograph";

// A photographed drawing read on the board. The piece is the first example: 90 mm, cut at 35°, 16 stations; it was drawn true but for
// station 5, which is 3 mm too long.

const girth = 90 * Math.PI;
const high = 220;
const slip = 3;
const ordinate = (k: number): number => high - 45 * Math.tan((35 * Math.PI) / 180) * (1 + Math.cos((Math.PI * k) / 8)) + (Math.abs(k - 5) < 0.3 ? slip : 0);
const at = (k: number, height: number): Vec2 => ({ x: (k * girth) / 16, y: height });
const sheet = { left: -60, bottom: -40, width: 420, height: 297 };
const corners: Vec2[] = [at(0, 0), at(16, 0), at(16, high), at(0, high)];
const drawn = {
  sheet,
  lines: [
    ...corners.map((corner, i) => ({ points: straight(corner, corners[(i + 1) % 4]!), width: 0.4 })),
    ...Array.from({ length: 15 }, (_, k) => ({ points: straight(at(k + 1, 0), at(k + 1, high)), width: 0.2 })),
    { points: Array.from({ length: 641 }, (_, i) => at(i / 40, ordinate(i / 40))), width: 0.5 },
  ],
};
const camera: Pinhole = { ...overA3, middle: { x: 140, y: 100 }, tilt: 30, azimuth: 25, roll: 6, distance: 560, k1: -0.02 };

/** The rules of WCAG 2.2 AA that a program can check. */
async function accessFaults(page: Page): Promise<string[]> {
  await page.evaluate(await readFile(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8"));
  return page.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: { run: (options: object) => Promise<AxeResults> } }).axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] });
    return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
  });
}

const part = (page: Page) => page.locator(".photo-part");
const field = (page: Page, name: string) => page.getByRole("textbox", { name, exact: true });
const panel = (page: Page) => page.getByRole("dialog", { name: "Known points of the photograph" });

async function choose(page: Page, name: string, mimeType: string, buffer: Buffer): Promise<void> {
  const chooser = page.waitForEvent("filechooser");
  await part(page).getByRole("button", { name: /^Open/ }).click();
  await (await chooser).setFiles({ name, mimeType, buffer });
}

/** A place of the window over a point in the user space of an SVG. */
async function over(page: Page, svg: string, { x, y }: Vec2): Promise<Vec2> {
  return page.locator(svg).first().evaluate((element, point) => {
    const { a, d, e, f } = (element as unknown as SVGGraphicsElement).getScreenCTM()!;
    return { x: a * point.x + e, y: d * point.y + f };
  }, { x, y });
}

/** Where on the screen points of the drawing lie, by how its picture is laid there. */
async function allOnBoard(page: Page, points: readonly Vec2[]): Promise<Vec2[]> {
  return page.locator(".photo-layer > g").evaluate((part, points) => {
    const matrix = (part as unknown as SVGGraphicsElement).getScreenCTM()!;
    return points.map(({ x, y }) => new DOMPoint(x, y).matrixTransform(matrix)).map(({ x, y }) => ({ x, y }));
  }, points);
}

async function onBoard(page: Page, point: Vec2): Promise<Vec2> {
  return (await allOnBoard(page, [point]))[0]!;
}

async function press(page: Page, { x, y }: Vec2): Promise<void> {
  await page.mouse.click(x, y);
}

async function markCorners(page: Page): Promise<void> {
  for (const corner of corners) await press(page, await over(page, ".photo-svg", photographed(camera, corner)));
}

async function lay(page: Page): Promise<void> {
  await panel(page).getByRole("button", { name: "Lay it under the drawing" }).click();
  await expect(page.locator(".photo-layer image")).toBeVisible();
}

test("four corners are marked, the picture lies under the pattern, and pressed crossings become readings with their verdict", async ({ page, context }) => {
  const file = await photograph(context, camera, drawn);
  await page.goto("/#check");
  await choose(page, "drawing.jpg", "image/jpeg", file);
  await expect(panel(page)).toContainText("Press in the picture: Stretch-out start.");
  await markCorners(page);
  await expect(panel(page)).toContainText("Four points always agree");
  expect(await accessFaults(page)).toEqual([]);
  await lay(page);
  expect(await accessFaults(page)).toEqual([]);
  await expect(part(page)).toContainText("Station 0 is next");
  for (const k of [0, 1, 2, 3, 4, 5]) await press(page, await onBoard(page, at(k, ordinate(k))));
  await expect(part(page)).toContainText("Station 6 is next");
  for (const k of [0, 1, 2, 3, 4, 5]) {
    const read = Number(await field(page, `Station ${k}`).inputValue());
    expect(Math.abs(read - ordinate(k)), `station ${k}: ${read}`).toBeLessThan(0.5);
  }
  await expect(page.locator(".verdict")).toContainText("1 of 6 readings is off by more than 1 mm");

  // A station passed over is met all the same, by its place; and a step can be taken back.
  await press(page, await onBoard(page, at(8, ordinate(8))));
  await expect(field(page, "Station 8")).not.toHaveValue("");
  await part(page).getByRole("button", { name: "Take back" }).click();
  await expect(field(page, "Station 8")).toHaveValue("");
  await expect(part(page)).toContainText("Taken back: Station 8.");
});

test("the picture shows the drawing where it is: its bend, tilt and turn are taken out with seven points", async ({ page, context }) => {
  const file = await photograph(context, { ...camera, k1: -0.06 }, drawn, "image/png");
  await page.goto("/#check");
  await choose(page, "drawing.png", "image/png", file);
  const names = ["Stretch-out start", "Stretch-out end", "Above its end", "Above its start"];
  const type = async (name: string, point: Vec2) => {
    const { x, y } = photographed({ ...camera, k1: -0.06 }, point);
    await field(page, `${name}, pixels from the left`).fill(x.toFixed(1));
    await field(page, `${name}, pixels from the top`).fill(y.toFixed(1));
  };
  for (const [i, name] of names.entries()) await type(name, corners[i]!);
  const add = panel(page).getByRole("button", { name: "Add a point" });
  await add.click();
  await type("Half way along", at(8, 0));
  await add.click();
  await type("Above half way", at(8, high));
  await add.click();
  await type("Point 7", at(4, 0));
  await field(page, "Point 7, across on the paper").fill(at(4, 0).x.toFixed(3));
  await field(page, "Point 7, up on the paper").fill("0");
  await expect(panel(page)).toContainText("The bend of the lens is taken out.");
  await expect(panel(page)).toContainText(/The points agree within 0(\.1)? mm/);
  await lay(page);
  // The darkest pixel along an element of the straight picture is the drawn curve.
  const heights = await page.locator(".photo-layer image").evaluate(async (image, { ks, girth, high }) => {
    const picture = new Image();
    picture.src = image.getAttribute("href")!;
    await picture.decode();
    const canvas = new OffscreenCanvas(picture.naturalWidth, picture.naturalHeight);
    const context = canvas.getContext("2d", { willReadFrequently: true })!;
    context.drawImage(picture, 0, 0);
    const beside = 0.04 * girth;
    const [perX, perY] = [canvas.width / (girth + 2 * beside), canvas.height / (high + 2 * beside)];
    return ks.map((k) => {
      const column = Math.round(((k * girth) / 16 + beside) * perX);
      // Half way between two elements only the curve is dark, but for the rectangle's own lines.
      const { data } = context.getImageData(column, 0, 1, canvas.height);
      const dark = Array.from({ length: canvas.height }, (_, row) => ({ row, light: data[4 * row]!, height: high + beside - (row + 0.5) / perY })).filter(({ height }) => height > 10 && height < high - 1.5);
      const least = Math.min(...dark.map(({ light }) => light));
      const inked = dark.filter(({ light }) => light < least + 40);
      return inked.reduce((sum, { height }) => sum + height, 0) / inked.length;
    });
  }, { ks: [0.5, 2.5, 3.5, 6.5, 10.5, 13.5, 15.5], girth, high });
  [0.5, 2.5, 3.5, 6.5, 10.5, 13.5, 15.5].forEach((k, i) => expect(Math.abs(heights[i]! - ordinate(k)), `at ${k}: ${heights[i]}`).toBeLessThan(0.3));
});

test("the sheet of paper measures the stretch-out too, and the curve can be traced", async ({ page, context }) => {
  const small: Pinhole = { ...camera, width: 2000, height: 1500, focal: 1450 };
  const file = await photograph(context, small, drawn, "image/webp");
  await page.goto("/#check");
  await field(page, "Station 2").fill("150");
  await choose(page, "drawing.webp", "image/webp", file);
  await panel(page).getByLabel("Measured by").selectOption({ label: "the sheet of paper" });
  const { left, bottom, width, height } = sheet;
  const marks = [{ x: left, y: bottom }, { x: left + width, y: bottom }, { x: left + width, y: bottom + height }, { x: left, y: bottom + height }, at(0, 0), at(16, 0)];
  for (const mark of marks) await press(page, await over(page, ".photo-svg", photographed(small, mark)));
  await panel(page).getByRole("button", { name: "Take it as the stretch-out" }).click();
  await lay(page);
  const measured = Number(await field(page, "Stretch-out").inputValue());
  expect(Math.abs(measured - girth)).toBeLessThan(1.2);

  await part(page).getByLabel("Read by").selectOption({ label: "tracing the curve" });
  const path = await allOnBoard(page, Array.from({ length: 65 }, (_, i) => at(i / 4, ordinate(i / 4))));
  await page.mouse.move(path[0]!.x - 2, path[0]!.y);
  await page.mouse.down();
  for (const { x, y } of path) await page.mouse.move(x, y);
  await page.mouse.move(path.at(-1)!.x + 2, path.at(-1)!.y);
  await page.mouse.up();
  await expect(part(page)).toContainText("16 readings taken; 1 typed before is kept.");
  await expect(field(page, "Station 2")).toHaveValue("150");
  for (const k of [1, 6, 12]) expect(Math.abs(Number(await field(page, `Station ${k}`).inputValue()) - ordinate(k))).toBeLessThan(1);
  await part(page).getByRole("button", { name: "Take back" }).click();
  await expect(field(page, "Station 1")).toHaveValue("");
  await expect(field(page, "Station 2")).toHaveValue("150");
});

test("with the keys alone: points nudged, readings taken, what was typed replaced only when asked", async ({ page, context }) => {
  const file = await photograph(context, camera, drawn);
  await page.goto("/#check");
  await field(page, "Station 1").fill("140");
  await choose(page, "drawing.jpg", "image/jpeg", file);
  for (const [i, name] of ["Stretch-out start", "Stretch-out end", "Above its end", "Above its start"].entries()) {
    const { x, y } = photographed(camera, corners[i]!);
    await field(page, `${name}, pixels from the left`).fill(String(Math.round(x) - 11));
    await field(page, `${name}, pixels from the top`).fill(String(Math.round(y)));
    await page.getByRole("button", { name: new RegExp(`^\\d ${name}, \\d+ from the left`) }).focus();
    await page.keyboard.press("Shift+ArrowRight");
    await page.keyboard.press("ArrowRight");
    await expect(field(page, `${name}, pixels from the left`)).toHaveValue(String(Math.round(x)));
  }
  await panel(page).getByRole("button", { name: "Lay it under the drawing" }).press("Enter");
  const level = page.getByRole("slider", { name: "Station 0: height on the picture" });
  await expect(level).toBeFocused();
  await expect(level).toHaveAttribute("aria-valuetext", "110 mm");
  for (let n = 0; n < 23; n++) await page.keyboard.press("PageUp");
  await page.keyboard.press("ArrowUp");
  await page.keyboard.press("Enter");
  await expect(field(page, "Station 0")).toHaveValue("156.2");
  const next = page.getByRole("slider", { name: "Station 1: height on the picture" });
  await expect(next).toBeFocused();
  await page.keyboard.press("PageUp");
  await page.keyboard.press("Enter");
  await expect(part(page)).toContainText("Station 1 was typed as 140; the picture gives 158.2.");
  await expect(field(page, "Station 1")).toHaveValue("140");
  await part(page).getByRole("button", { name: "Take the picture's" }).press("Enter");
  await expect(field(page, "Station 1")).toHaveValue("158.2");
});

test("with fingers on a phone: one carries a point under the magnifier, two look closer", async ({ browser, baseURL }) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  const file = await photograph(context, camera, drawn);
  const page = await context.newPage();
  await page.goto(`${baseURL}/#check`);
  await choose(page, "drawing.jpg", "image/jpeg", file);
  const session = await context.newCDPSession(page);
  const touch = (type: "touchStart" | "touchMove" | "touchEnd", ...touchPoints: Vec2[]) => session.send("Input.dispatchTouchEvent", { type, touchPoints });
  const to = await over(page, ".photo-svg", photographed(camera, corners[0]!));
  await touch("touchStart", { x: to.x + 30, y: to.y - 20 });
  await touch("touchMove", { x: to.x + 10, y: to.y - 5 });
  await expect(page.locator(".photo-magnifier")).toBeVisible();
  await touch("touchMove", to);
  await touch("touchEnd");
  await expect(page.locator(".photo-mark")).toHaveCount(1);
  await expect(page.locator(".photo-magnifier")).toHaveCount(0);
  const placed = photographed(camera, corners[0]!);
  expect(Math.abs(Number(await field(page, "Stretch-out start, pixels from the left").inputValue()) - placed.x)).toBeLessThan(15);
  const whole = await page.locator(".photo-svg").getAttribute("viewBox");
  const middle = await over(page, ".photo-svg", { x: 2000, y: 1500 });
  await touch("touchStart", { x: middle.x - 30, y: middle.y }, { x: middle.x + 30, y: middle.y });
  await touch("touchMove", { x: middle.x - 60, y: middle.y }, { x: middle.x + 60, y: middle.y });
  await touch("touchMove", { x: middle.x - 90, y: middle.y }, { x: middle.x + 90, y: middle.y });
  await touch("touchEnd");
  const width = (box: string | null) => Number(box?.split(" ")[2]);
  expect(width(whole) / width(await page.locator(".photo-svg").getAttribute("viewBox"))).toBeGreaterThan(2);
  await expect(page.locator(".photo-mark")).toHaveCount(1);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  await context.close();
});

test("points that fix nothing are refused in words", async ({ page, context }) => {
  const file = await photograph(context, camera, drawn);
  await page.goto("/#check");
  await choose(page, "drawing.jpg", "image/jpeg", file);
  const put = async (places: readonly Vec2[]) => {
    for (const [i, name] of ["Stretch-out start", "Stretch-out end", "Above its end", "Above its start"].entries()) {
      await field(page, `${name}, pixels from the left`).fill(String(places[i]!.x));
      await field(page, `${name}, pixels from the top`).fill(String(places[i]!.y));
    }
  };
  const lies = panel(page).getByRole("button", { name: "Lay it under the drawing" });
  await put([{ x: 100, y: 2000 }, { x: 2000, y: 2000 }, { x: 3000, y: 2000 }, { x: 100, y: 500 }]);
  await expect(panel(page).getByRole("alert")).toContainText("in one line");
  await put([{ x: 100, y: 2000 }, { x: 2000, y: 2000 }, { x: 100, y: 500 }, { x: 2000, y: 500 }]);
  await expect(panel(page).getByRole("alert")).toContainText("in this order");
  await put([{ x: 100, y: 2000 }, { x: 2000, y: 2000 }, { x: 100, y: 2000 }, { x: 2000, y: 500 }]);
  await expect(panel(page).getByRole("alert")).toContainText("Points 1 and 3 stand in the same place.");
  await expect(lies).toBeDisabled();
  await put([{ x: 100, y: 2000 }, { x: 2000, y: 2000 }, { x: 2100, y: 500 }, { x: 100, y: 400 }]);
  await expect(lies).toBeEnabled();
});

test("a picture dropped on the page is opened to be checked; a damaged one leaves the job as it is", async ({ page, context }) => {
  const file = await photograph(context, { ...camera, width: 1000, height: 750, focal: 725 }, drawn);
  await page.goto("/");
  const drop = (base64: string, name: string) => page.evaluate(({ base64, name }) => {
    const dataTransfer = new DataTransfer();
    dataTransfer.items.add(new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], name, { type: "image/jpeg" }));
    document.body.dispatchEvent(new DragEvent("drop", { dataTransfer, bubbles: true, cancelable: true }));
  }, { base64, name });
  await drop(file.toString("base64"), "drawing.jpg");
  await expect(panel(page).locator(".photo-svg image")).toBeVisible();
  await panel(page).getByRole("button", { name: "Close", exact: true }).click();
  await drop(file.subarray(0, 300).toString("base64"), "broken.jpg");
  await expect(part(page).getByRole("alert")).toContainText("“broken.jpg” was not opened.");
  await expect(part(page)).toContainText("drawing.jpg");
  await expect(page.getByRole("textbox", { name: "Title of the job" })).toHaveValue("Vent through the lean-to roof");
});

test("files that are no pictures, damaged, empty or over 40 megapixels are refused, and what was typed stays", async ({ page }) => {
  await page.goto("/#check");
  await field(page, "Station 3").fill("176.4");
  const png = (width: number, height: number) => {
    const bytes = Buffer.alloc(60);
    Buffer.from("\x89PNG\r\n\x1a\n\0\0\0\rIHDR", "latin1").copy(bytes);
    bytes.writeUInt32BE(width, 16);
    bytes.writeUInt32BE(height, 20);
    return bytes;
  };
  const said = part(page).getByRole("alert");
  for (const [name, type, bytes, words] of [
    ["notes.png", "image/png", Buffer.from("not a picture"), "“notes.png” was not opened. It is no JPEG, PNG or WebP picture."],
    ["empty.jpg", "image/jpeg", Buffer.alloc(0), "The file is empty."],
    ["cut.png", "image/png", png(800, 600), "The picture is damaged"],
    ["poster.png", "image/png", png(60000, 60000), "The picture has 3600 megapixels: at most 40"],
    ["dot.png", "image/png", png(20, 20), "The picture is too small"],
  ] as const) {
    await choose(page, name, type, bytes);
    await expect(said).toContainText(words);
  }
  await expect(field(page, "Station 3")).toHaveValue("176.4");
});

test("40 megapixels are opened beside the page, upright and smaller, and the page draws on meanwhile", async ({ page, context }) => {
  const large: Pinhole = { ...camera, width: 7296, height: 5472, focal: 5300 };
  const plain = await photograph(context, large, drawn);
  // As a camera held on its side writes it: the pixels lie, and a note says how to turn them (Exif 2.3, orientation 6, from memory).
  const exif = Buffer.from([0xff, 0xe1, 0, 34, ...Buffer.from("Exif\0\0MM"), 0, 42, 0, 0, 0, 8, 0, 1, 1, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0]);
  const file = Buffer.concat([plain.subarray(0, 2), exif, plain.subarray(2)]);
  await page.goto("/#check");
  await page.evaluate(() => {
    const calls: string[] = [];
    Object.assign(window, { calls, frames: 0 });
    window.createImageBitmap = () => {
      calls.push("createImageBitmap");
      return Promise.reject(new Error("decoded on the page"));
    };
    const count = () => {
      (window as unknown as { frames: number }).frames += 1;
      requestAnimationFrame(count);
    };
    count();
  });
  const frames = () => page.evaluate(() => (window as unknown as { frames: number }).frames);
  const before = await frames();
  await choose(page, "large.jpg", "image/jpeg", file);
  const image = panel(page).locator(".photo-svg image");
  await expect(image).toBeVisible();
  expect(await frames()).toBeGreaterThan(before + 3);
  expect(await page.evaluate(() => (window as unknown as { calls: string[] }).calls)).toEqual([]);
  const [width, height] = [Number(await image.getAttribute("width")), Number(await image.getAttribute("height"))];
  expect(height).toBeGreaterThan(width);
  expect(width * height).toBeLessThan(12.1e6);
  expect(Math.abs(height / width - 7296 / 5472)).toBeLessThan(0.001);
});
