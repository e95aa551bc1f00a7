import { CHORD_TOLERANCE, developJob, fabricate, type Development, type Fabrication } from "../../core/index";
import { cutParts, inOneRow, type CutPart } from "../../drawing/blank/cutParts";
import { cutFileName } from "../files/cutFileName";
import type { Format } from "../quantity/format";
import { words } from "../words/interface";
import { outputWords } from "../words/output";
import type { OutputChoices } from "./choices";

export interface CutFile {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

interface Of {
  readonly development: Development;
  readonly format: Format;
  readonly choices: Pick<OutputChoices, "curves" | "parts" | "tolerance">;
}

/** The files of cut lines that are asked for: all parts side by side, or one file a part. What writes them is fetched now. */
export async function cutFiles(kind: "dxf" | "svg", { development, format, choices }: Of): Promise<CutFile[]> {
  const { curves, tolerance, parts: how } = choices;
  const title = development.job.title || words.untitled;
  // Half of the tolerance at most is the core's, the rest is left for the arcs.
  const own = Math.min(CHORD_TOLERANCE, tolerance / 2);
  const parts = cutParts(kind === "dxf" ? fabricatedWithin(development, own) : fabricate(development), { figures: format });
  const write = kind === "dxf" ? await dxfWriter(format, { curves, tolerance: tolerance - own }) : await svgWriter(title);
  const file = (some: readonly CutPart[]): CutFile => ({ name: nameOf(some, { title, variant: kind === "dxf" ? outputWords.fileVariants[curves] : "", extension: kind }), type: kind === "dxf" ? "image/vnd.dxf" : "image/svg+xml", text: write(some) });
  return how === "apart" ? parts.map((part) => file([part])) : [file(parts)];
}

/** The shop's work with edges within `tolerance` mm of the true ones. */
function fabricatedWithin(development: Development, tolerance: number): Fabrication {
  const finer = developJob(development.job, { chordTolerance: tolerance });
  return fabricate(finer.ok ? finer.development : development, { chordTolerance: tolerance });
}

async function dxfWriter({ units }: Format, curves: Pick<OutputChoices, "curves" | "tolerance">): Promise<(parts: readonly CutPart[]) => string> {
  const { dxfFile } = await import("../../output/dxf/dxfFile");
  return (parts) => dxfFile(inOneRow(parts), { units, ...curves });
}

async function svgWriter(title: string): Promise<(parts: readonly CutPart[]) => string> {
  const { patternSvg } = await import("../../output/svg/patternSvg");
  return (parts) => patternSvg(inOneRow(parts), title);
}

/** The size is that of the part where the file holds only one. */
function nameOf(parts: readonly CutPart[], named: { readonly title: string; readonly variant: string; readonly extension: string }): string {
  const [first, ...more] = parts;
  const alone = first && more.length === 0;
  return cutFileName({ ...named, piece: alone ? first.name : outputWords.allParts, size: alone ? first : null });
}
