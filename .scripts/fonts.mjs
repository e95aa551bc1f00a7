// Makes the font files of src/app/theme. b612.woff2: B612 as packaged, cut down to the signs this program writes, without
// hints; b612-accents.woff2: the other letters of Western European languages and rare signs, fetched when a text has one.
// signs.otf: the diameter sign and pi, which the package lacks, drawn in the weight and proportions of B612.
// src/app/print/lettering.otf: all of these in one, for PDF files, with the Latin, Greek and Cyrillic letters that B612 lacks from
// Noto Sans, so that names and titles of most of Europe can be printed.
import { copyFileSync, readFileSync, writeFileSync } from "node:fs";
import opentype from "opentype.js";
import subsetFont from "subset-font";

// B612: 2000 units an em, capitals 1500 high, small letters 1120, stems about 170 wide.
const CAPITAL = 1500;
const SMALL = 1120;
const STEM = 165;
/** Control length of a quarter circle of radius 1 in one cubic. */
const QUARTER = 0.5523;

const theme = "src/app/theme";
const source = "node_modules/@fontsource/b612";
const further = "node_modules/@fontsource/noto-sans";
/** Height of a capital of Noto Sans, in thousandths of its em. */
const FURTHER_CAPITAL = 714;
const glyphs = [glyph(".notdef", 0, 1000, () => {}), glyph("diameter", 0x2300, 1700, diameter), glyph("pi", 0x3c0, 1270, pi)];
const font = new opentype.Font({ familyName: "Flatwright Signs", styleName: "Regular", unitsPerEm: 2000, ascender: 1930, descender: -500, glyphs });
writeFileSync(`${theme}/signs.otf`, Buffer.from(font.toArrayBuffer()));

const packaged = readFileSync(`${source}/files/b612-latin-400-normal.woff2`);
/** Signs of programming, which neither this program nor the names of jobs have much use for. */
const rare = "#$&<>@[\\]^_`{|}~";
const basic = [...range(0x20, 0x7e)].filter((sign) => !rare.includes(sign)).join("") + "\u00a0°±²×·½¼¾′″−–—…“”‘’";
await cutDown("b612", basic);
await cutDown("b612-accents", rare + [...range(0xa1, 0xff)].filter((sign) => !basic.includes(sign)).join(""));
await forPrint("src/app/print/lettering.otf");
copyFileSync(`${source}/LICENSE`, `${theme}/b612-licence.txt`);
copyFileSync(`${further}/LICENSE`, "src/app/print/noto-sans-licence.txt");

async function cutDown(name, signs) {
  writeFileSync(`${theme}/${name}.woff2`, await subsetFont(packaged, signs, { targetFormat: "woff2", noHinting: true }));
}

/** One font of every sign of the package, those drawn here and the letters of other alphabets. */
async function forPrint(file) {
  const b612 = await parsed(packaged, String.fromCodePoint(...Array.from({ length: 0x2400 - 0x20 }, (_, i) => i + 0x20)));
  const { unitsPerEm, ascender, descender } = b612;
  const own = [...glyphsOf(b612), ...glyphs.slice(1)];
  const all = [...own, ...(await furtherLetters(new Set(own.flatMap(({ unicodes }) => unicodes))))];
  // Each sign keeps its advance; pairs are not kerned, so that a text is as wide as the drawing takes it to be.
  const signs = all.map((one, i) => new opentype.Glyph({ name: i === 0 ? ".notdef" : `sign${i}`, unicode: one.unicode, unicodes: one.unicodes, advanceWidth: one.advanceWidth, path: one.path }));
  const whole = new opentype.Font({ familyName: "Flatwright Lettering", styleName: "Regular", unitsPerEm, ascender, descender, glyphs: signs });
  writeFileSync(file, Buffer.from(whole.toArrayBuffer()));
}

/** Letters of the Latin, Greek and Cyrillic alphabets that are not among `there`, with capitals as high as those of B612. */
async function furtherLetters(there) {
  const signs = [...range(0x100, 0x17f), ...range(0x218, 0x21b), ...range(0x386, 0x3ce), ...range(0x400, 0x45f), ...range(0x490, 0x493)].join("");
  const sets = await Promise.all(["latin-ext", "greek", "cyrillic", "cyrillic-ext"].map(async (set) =>
    parsed(readFileSync(`${further}/files/noto-sans-${set}-400-normal.woff2`), signs)));
  const taken = new Set(there);
  return sets.flatMap((set) => glyphsOf(set).map((one) => scaled(one, CAPITAL / ((FURTHER_CAPITAL * set.unitsPerEm) / 1000)))).filter(({ unicode }) => {
    if (unicode === undefined || taken.has(unicode) || !signs.includes(String.fromCodePoint(unicode))) return false;
    taken.add(unicode);
    return true;
  });
}

function scaled({ name, unicode, unicodes, advanceWidth, path }, factor) {
  const larger = new opentype.Path();
  larger.commands = path.commands.map((command) => Object.fromEntries(Object.entries(command).map(([key, value]) => [key, typeof value === "number" ? value * factor : value])));
  return { name, unicode, unicodes, advanceWidth: Math.round(advanceWidth * factor), path: larger };
}

async function parsed(packaged, signs) {
  const plain = await subsetFont(packaged, signs, { targetFormat: "truetype", noHinting: true });
  return opentype.parse(plain.buffer.slice(plain.byteOffset, plain.byteOffset + plain.byteLength));
}

function glyphsOf(font) {
  return Array.from({ length: font.glyphs.length }, (_, i) => font.glyphs.get(i));
}

function range(from, to) {
  return Array.from({ length: to - from + 1 }, (_, i) => String.fromCharCode(from + i)).join("");
}

function glyph(name, unicode, advanceWidth, draw) {
  const path = new opentype.Path();
  draw(path);
  return new opentype.Glyph({ name, ...(unicode ? { unicode } : {}), advanceWidth, path });
}

/** A true circle with a slash at 45 degrees that overshoots it. */
function diameter(path) {
  const x = 850, y = CAPITAL / 2, radius = 620;
  circle(path, x, y, radius, 1);
  circle(path, x, y, radius - STEM, -1);
  const reach = (radius + 235) * Math.SQRT1_2, half = (STEM / 2) * Math.SQRT1_2;
  polygon(path, [[x - reach + half, y - reach - half], [x + reach + half, y + reach - half], [x + reach - half, y + reach + half], [x - reach - half, y - reach + half]]);
}

function pi(path) {
  polygon(path, [[70, SMALL - STEM], [1200, SMALL - STEM], [1200, SMALL], [70, SMALL]]);
  polygon(path, [[285, 0], [285 + STEM, 0], [285 + STEM, SMALL - STEM], [285, SMALL - STEM]]);
  polygon(path, [[820, 0], [820 + STEM, 0], [820 + STEM, SMALL - STEM], [820, SMALL - STEM]]);
}

function circle(path, x, y, r, way) {
  const k = r * QUARTER * way;
  path.moveTo(x + r, y);
  path.curveTo(x + r, y + k, x + Math.abs(k), y + r * way, x, y + r * way);
  path.curveTo(x - Math.abs(k), y + r * way, x - r, y + k, x - r, y);
  path.curveTo(x - r, y - k, x - Math.abs(k), y - r * way, x, y - r * way);
  path.curveTo(x + Math.abs(k), y - r * way, x + r, y - k, x + r, y);
  path.close();
}

function polygon(path, [first, ...rest]) {
  path.moveTo(...first);
  for (const point of rest) path.lineTo(...point);
  path.close();
}
