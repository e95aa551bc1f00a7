import type { Development } from "../../core/index";
import { cutFileName } from "../files/cutFileName";
import { fileName } from "../files/fileName";
import { saveText } from "../files/saveText";
import type { Format } from "../quantity/format";
import { fabricationOf } from "../shop/fabricationOf";
import { useSettings } from "../store/settings";
import { words } from "../words/interface";
import { outputWords } from "../words/output";
import type { files } from "./choices";
import { cutItems } from "./cutItems";

export type FileWanted = (typeof files)[number];

interface Of {
  readonly development: Development;
  readonly format: Format;
  /** How far a curve of a DXF may stray, mm. */
  readonly tolerance: number;
}

/** Makes a file of the job and hands it to the reader; its name. What makes it is fetched now. */
export async function saveFile(what: FileWanted, of: Of): Promise<string> {
  const { name, type, text } = await fileOf(what, of);
  saveText(name, type, text);
  return name;
}

interface File {
  readonly name: string;
  readonly type: string;
  readonly text: string;
}

async function fileOf(what: FileWanted, of: Of): Promise<File> {
  const title = of.development.job.title || words.untitled;
  switch (what) {
    case "dxf": {
      const { dxfFile } = await import("../../output/dxf/dxfFile");
      return { name: cutName(of, "dxf"), type: "image/vnd.dxf", text: dxfFile(cutItems(fabricationOf(of.development), of.format), { units: of.format.units, tolerance: of.tolerance }) };
    }
    case "svg": {
      const { patternSvg } = await import("../../output/svg/patternSvg");
      return { name: cutName(of, "svg"), type: "image/svg+xml", text: patternSvg(cutItems(fabricationOf(of.development), of.format), title) };
    }
    case "table": {
      const [{ stationCsv }, { csvWords }] = await Promise.all([import("../../output/csv/stationCsv"), import("../../output/csv/csvWords")]);
      const [piece] = of.development.pieces;
      if (!piece) throw new RangeError("no piece");
      return { name: fileName(title, "csv"), type: "text/csv", text: stationCsv(piece, { ...csvFormat(), words: csvWords(of.format.trade) }) };
    }
    case "list": {
      const { partListCsv } = await import("../../output/csv/partListCsv");
      return { name: fileName(`${title}, ${outputWords.parts.title.toLowerCase()}`, "csv"), type: "text/csv", text: partListCsv(fabricationOf(of.development).parts, csvFormat()) };
    }
  }
}

/** The name of a file of cut lines: the size is that of its part where it holds only one. */
function cutName({ development }: Of, extension: string): string {
  const [first, ...more] = fabricationOf(development).parts;
  const alone = first && more.length === 0;
  return cutFileName({ title: development.job.title || words.untitled, piece: alone ? first.name : outputWords.allParts, size: alone ? first : null, extension });
}

function csvFormat() {
  const { comma, places } = useSettings.getState();
  return { separator: comma ? ";" : ",", decimal: comma ? "," : ".", places } as const;
}
