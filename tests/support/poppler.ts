import { execFileSync, spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

/** A picture of a part of a page: 0 is black, 255 white. Its first pixel is the top left one. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly grey: Uint8Array;
  /** Pixels a mm. */
  readonly density: number;
  /** Of the left and top edge of the picture on the page, mm from the page's top left corner. */
  readonly left: number;
  readonly top: number;
}

/** A PDF file that poppler reads; `remove` takes it away. */
export interface PdfFile {
  /** Page `number` from 1, or only the part that begins (left, top) mm from its top left corner; `dpi` pixels an inch. */
  raster(number: number, dpi: number, part?: { readonly left: number; readonly top: number; readonly width: number; readonly height: number }): Raster;
  /** What one of poppler's programs prints about the file. */
  ask(program: "pdfinfo" | "pdffonts" | "pdftotext", ...options: readonly string[]): string;
  remove(): void;
}

/** Where poppler is; found, or installed, by the same script that `npm test` runs. */
function popplerFolder(): string {
  const script = fileURLToPath(new URL("../../.scripts/poppler.mjs", import.meta.url));
  const { status, stdout, stderr } = spawnSync(process.execPath, [script], { encoding: "utf8" });
  if (status !== 0) throw new Error(stderr.trim());
  return stdout.trim();
}

export function pdfFile(bytes: Uint8Array): PdfFile {
  const poppler = popplerFolder();
  const folder = mkdtempSync(join(tmpdir(), "flatwright-pdf-"));
  const path = join(folder, "file.pdf");
  writeFileSync(path, bytes);
  return {
    raster(number, dpi, part) {
      const density = dpi / 25.4;
      const first = part && { x: Math.floor(part.left * density), y: Math.floor(part.top * density) };
      const crop = part && first ? ["-x", first.x, "-y", first.y, "-W", Math.ceil(part.width * density), "-H", Math.ceil(part.height * density)] : [];
      const picture = execFileSync(join(poppler, "pdftoppm"), ["-r", dpi, "-gray", "-f", number, "-l", number, ...crop, path].map(String), { maxBuffer: 1 << 28 });
      return { ...greyMap(picture), density, left: (first?.x ?? 0) / density, top: (first?.y ?? 0) / density };
    },
    ask: (program, ...options) => execFileSync(join(poppler, program), [...options, path, ...(program === "pdftotext" ? ["-"] : [])], { encoding: "utf8" }),
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}

/** A binary grey map (PGM, "P5"). */
function greyMap(bytes: Buffer): Pick<Raster, "width" | "height" | "grey"> {
  const head = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString("latin1"));
  if (!head) throw new Error("pdftoppm gave no grey map");
  const [width, height] = [Number(head[1]), Number(head[2])];
  const grey = bytes.subarray(head[0].length);
  if (grey.length !== width * height) throw new Error(`a grey map of ${width} × ${height} with ${grey.length} pixels`);
  return { width, height, grey };
}

/** The ink of a picture summed over its columns (or rows), 0 to 1 a pixel. */
export function inkAlong({ width, height, grey }: Raster, axis: "x" | "y"): number[] {
  const ink = new Array<number>(axis === "x" ? width : height).fill(0);
  for (let y = 0; y < height; y++) for (let x = 0; x < width; x++) ink[axis === "x" ? x : y]! += 1 - (grey[y * width + x] ?? 255) / 255;
  return ink;
}

/** The middles of the runs of ink, weighed by it, in pixels from the first edge. */
export function inkMiddles(ink: readonly number[], least: number): number[] {
  const middles: number[] = [];
  let weight = 0, moment = 0, most = 0;
  for (const [i, one] of [...ink, 0].entries()) {
    if (one > 0) {
      weight += one;
      moment += one * (i + 0.5);
      most = Math.max(most, one);
    } else {
      if (most >= least) middles.push(moment / weight);
      weight = moment = most = 0;
    }
  }
  return middles;
}
