import { pdfObjects, type PdfObject } from "./pdfObjects";

/** One page of a printed PDF. Lengths in mm, from the lower left corner of the sheet, y up. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly paths: readonly PdfPath[];
}

/** A painted path; curves are given by their end points. */
export interface PdfPath {
  readonly paint: "stroke" | "fill" | "both";
  readonly points: readonly { readonly x: number; readonly y: number }[];
}

type Matrix = readonly [number, number, number, number, number, number];

const mmPerPoint = 25.4 / 72;

/**
 * The paths a printed PDF paints, page by page, read from the page's own drawing operators (PDF 32000-1:2008, 8.5):
 * exact to the decimals in the file, and independent of any program that draws PDF.
 */
export function pdfPages(bytes: Uint8Array): PdfPage[] {
  const objects = pdfObjects(bytes);
  const pages = [...objects.values()].filter(({ head }) => /\/Type\s*\/Page\b(?!s)/.test(head));
  return pages.map((page) => {
    const box = /\/MediaBox\s*\[([^\]]*)\]/.exec(page.head)?.[1]?.trim().split(/\s+/).map(Number) ?? [];
    const [left = NaN, bottom = NaN, right = NaN, top = NaN] = box;
    const paths: PdfPath[] = [];
    const start: Matrix = [mmPerPoint, 0, 0, mmPerPoint, -left * mmPerPoint, -bottom * mmPerPoint];
    const contents = [...(/\/Contents\s*(\[[^\]]*\]|\d+ 0 R)/.exec(page.head)?.[1] ?? "").matchAll(/(\d+) 0 R/g)];
    paint(contents.map(([, number]) => objects.get(Number(number))?.stream ?? "").join("\n"), page, objects, start, paths);
    return { width: (right - left) * mmPerPoint, height: (top - bottom) * mmPerPoint, paths };
  });
}

/** Adds what the content paints to `paths`; forms drawn by name are followed. */
function paint(content: string, owner: PdfObject, objects: ReadonlyMap<number, PdfObject>, start: Matrix, paths: PdfPath[]): void {
  let matrix = start;
  const kept: Matrix[] = [];
  let subpaths: { x: number; y: number }[][] = [];
  const operands: string[] = [];
  const numbers = () => operands.map(Number);
  const add = (x = NaN, y = NaN, fresh = false) => {
    if (fresh) subpaths.push([]);
    subpaths.at(-1)?.push({ x: matrix[0] * x + matrix[2] * y + matrix[4], y: matrix[1] * x + matrix[3] * y + matrix[5] });
  };
  const close = () => {
    const first = subpaths.at(-1)?.[0];
    if (first) subpaths.at(-1)?.push(first);
  };
  const flush = (kind: PdfPath["paint"] | null) => {
    if (kind) paths.push(...subpaths.map((points) => ({ paint: kind, points })));
    subpaths = [];
  };
  const operators: Readonly<Record<string, () => void>> = {
    q: () => kept.push(matrix),
    Q: () => (matrix = kept.pop() ?? start),
    cm: () => (matrix = product(numbers(), matrix)),
    m: () => add(numbers()[0], numbers()[1], true),
    l: () => add(numbers()[0], numbers()[1]),
    c: () => add(numbers()[4], numbers()[5]),
    v: () => add(numbers()[2], numbers()[3]),
    y: () => add(numbers()[2], numbers()[3]),
    h: close,
    re: () => {
      const [x = NaN, y = NaN, w = NaN, h = NaN] = numbers();
      add(x, y, true);
      add(x + w, y);
      add(x + w, y + h);
      add(x, y + h);
      close();
    },
    S: () => flush("stroke"),
    s: () => (close(), flush("stroke")),
    f: () => flush("fill"),
    F: () => flush("fill"),
    "f*": () => flush("fill"),
    B: () => flush("both"),
    "B*": () => flush("both"),
    b: () => (close(), flush("both")),
    "b*": () => (close(), flush("both")),
    n: () => flush(null),
    Do: () => {
      const form = formNamed(operands[0] ?? "", owner, objects);
      if (form) paint(form.stream, form, objects, product(matrixOf(form), matrix), paths);
    },
  };
  for (const [token] of content.matchAll(tokens)) {
    if (/^[-+.\d/<([]/.test(token)) {
      operands.push(token);
      continue;
    }
    operators[token]?.();
    operands.length = 0;
  }
}

/** Strings, dictionaries and arrays as one token each; names, numbers and operators. */
const tokens = /\((?:\\.|[^\\()])*\)|<<(?:[^<>]|<[^<>]*>)*>>|<[^<>]*>|\[[^\]]*\]|\/[^\s/<>[\]()]*|[^\s/<>[\]()]+/g;

function formNamed(name: string, owner: PdfObject, objects: ReadonlyMap<number, PdfObject>): PdfObject | null {
  const named = [owner.head, ...[...owner.head.matchAll(/\/(?:Resources|XObject) (\d+) 0 R/g)].map(([, number]) => objects.get(Number(number))?.head ?? "")];
  const escaped = name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  const number = named.map((head) => new RegExp(`${escaped} (\\d+) 0 R`).exec(head)?.[1]).find((found) => found !== undefined);
  const form = number === undefined ? undefined : objects.get(Number(number));
  return form && /\/Subtype\s*\/Form\b/.test(form.head) ? form : null;
}

function matrixOf(form: PdfObject): number[] {
  return /\/Matrix\s*\[([^\]]*)\]/.exec(form.head)?.[1]?.trim().split(/\s+/).map(Number) ?? [1, 0, 0, 1, 0, 0];
}

function product([a = NaN, b = NaN, c = NaN, d = NaN, e = NaN, f = NaN]: readonly number[], m: Matrix): Matrix {
  return [
    a * m[0] + b * m[2], a * m[1] + b * m[3], c * m[0] + d * m[2], c * m[1] + d * m[3],
    e * m[0] + f * m[2] + m[4], e * m[1] + f * m[3] + m[5],
  ];
}
