import type { Development } from "../../core/index";
import { fileName } from "../files/fileName";
import { saveText } from "../files/saveText";
import type { Format } from "../quantity/format";
import { fabricationOf } from "../shop/fabricationOf";
import { useSettings } from "../store/settings";
import { words } from "../words/interface";
import { outputWords } from "../words/output";
import type { files, OutputChoices } from "./choices";
import { cutFiles, type CutFile } from "./cutFiles";

export type FileWanted = (typeof files)[number];

interface Of {
  readonly development: Development;
  readonly format: Format;
  readonly choices: OutputChoices;
}

/** Makes the files of the job that are wanted and hands them to the reader; their names. What makes them is fetched now. */
export async function saveFile(what: FileWanted, of: Of): Promise<string[]> {
  const files = await filesOf(what, of);
  for (const { name, type, text } of files) saveText(name, type, text);
  return files.map(({ name }) => name);
}

async function filesOf(what: FileWanted, of: Of): Promise<CutFile[]> {
  const { development } = of;
  const title = development.job.title || words.untitled;
  switch (what) {
    case "dxf":
    case "svg":
      return cutFiles(what, of);
    case "table": {
      const [{ stationCsv }, { csvWords }] = await Promise.all([import("../../output/csv/stationCsv"), import("../../output/csv/csvWords")]);
      const [piece] = development.pieces;
      if (!piece) throw new RangeError("no piece");
      return [{ name: fileName(title, "csv"), type: "text/csv", text: stationCsv(piece, { ...csvFormat(), words: csvWords(of.format.trade) }) }];
    }
    case "list": {
      const { partListCsv } = await import("../../output/csv/partListCsv");
      return [{ name: fileName(`${title}, ${outputWords.parts.title.toLowerCase()}`, "csv"), type: "text/csv", text: partListCsv(fabricationOf(development).parts, csvFormat()) }];
    }
  }
}

function csvFormat() {
  const { comma, places } = useSettings.getState();
  return { separator: comma ? ";" : ",", decimal: comma ? "," : ".", places } as const;
}
