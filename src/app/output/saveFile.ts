import type { Development } from "../../core/index";
import { csvWords } from "../../output/csv/csvWords";
import { fileName } from "../files/fileName";
import { saveText } from "../files/saveText";
import type { Format } from "../quantity/format";
import { useSettings } from "../store/settings";
import type { files } from "./choices";

export type FileWanted = (typeof files)[number];

/** Makes a file of the job and hands it to the reader; its name. What makes it is fetched now. */
export async function saveFile(what: FileWanted, { development, format }: { development: Development; format: Format }): Promise<string> {
  const { comma, places } = useSettings.getState();
  const { job: { title }, pieces: [piece] } = development;
  if (!piece) throw new RangeError("no piece");
  const { stationCsv } = await import("../../output/csv/stationCsv");
  const name = fileName(`${title} ${what}`, "csv");
  saveText(name, "text/csv", stationCsv(piece, { separator: comma ? ";" : ",", decimal: comma ? "," : ".", places, words: csvWords(format.trade) }));
  return name;
}
