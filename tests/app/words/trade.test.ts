import { expect, test } from "vitest";
import { describe as clausesOf } from "../../../src/app/describe/describe";
import { formatOf } from "../../../src/app/quantity/format";
import { readoutText } from "../../../src/app/rod/Readout";
import { rodRows } from "../../../src/app/rod/rows";
import { words } from "../../../src/app/words/interface";
import { measuredWords } from "../../../src/app/words/measured";
import { problemSentence } from "../../../src/app/words/problems";
import { board } from "../../../src/drawing/board/board";
import { documentPages } from "../../../src/drawing/sheets/documentPages";
import { DEFAULT_SETUP } from "../../../src/drawing/sheets/setup";
import { sheetWords } from "../../../src/drawing/sheets/sheetWords";
import { TRADE, type Trade } from "../../../src/drawing/tradeWords";
import { drawingWords } from "../../../src/drawing/words";
import { csvWords } from "../../../src/output/csv/csvWords";
import { stationCsv } from "../../../src/output/csv/stationCsv";
import { developed, hole, pipeWith, slant } from "../pipe";

// One pipe spoken of in both manners, on the screen, on the drawing, on paper and in a file.

const development = developed(pipeWith([slant, hole]));
const piece = development.pieces[0];
if (!piece) throw new Error("no piece");

function everythingSaid(trade: Trade): string {
  const of = TRADE[trade];
  const format = formatOf("mm", { places: 2, denominator: 0, comma: false, words: trade });
  const drawn = board(development, { width: 300, height: 200, words: drawingWords(of), figures: format });
  const printed = documentPages(development, "all", DEFAULT_SETUP, { words: sheetWords(of), figures: format });
  return [
    words.boardTitle("Vent", of), words.boardDescription("first", of), words.rod(of), measuredWords.proof.title(of), measuredWords.proof.girth(of),
    ...rodRows(piece!, format).map((row) => row.name), readoutText(piece!, 3, format),
    problemSentence({ code: "open-round", field: "part" }, { field: String, length: String }, of),
    ...clausesOf(development.job, undefined, of).flatMap(({ tokens }) => tokens.flatMap((token) => (token.kind === "choice" ? token.options.map(({ label }) => label) : []))),
    ...[...drawn.items, ...(printed.ok ? printed.pages : []).flatMap((page) => page.items)].flatMap((item) => (item.kind === "text" ? [item.text] : [])),
    stationCsv(piece!, { separator: ",", decimal: ".", places: 2, words: csvWords(of) }),
  ].join("\n").toLowerCase();
}

test("in the words stretch-out, top view nothing is called girth, plan, elevation, development or generator", () => {
  const said = everythingSaid("stretch-out");
  expect(said).not.toMatch(/\b(girth|plan|elevation|development|generator)\b/);
  for (const word of ["stretch-out 282.74", "stretch-out mm", "stretch-out rod", "top", "shortest element", "flat pattern"]) expect(said).toContain(word);
});

test("in the words girth, plan nothing is called stretch-out, top view, side view or element", () => {
  const said = everythingSaid("girth");
  expect(said).not.toMatch(/\b(stretch-out|top view|side view|element)\b/);
  for (const word of ["girth 282.74", "girth mm", "girth rod", "front elevation, plan and end elevation", "shortest generator", "development"]) expect(said).toContain(word);
});

test("the variant changes words alone, no figure", () => {
  const figures = (trade: Trade) => everythingSaid(trade).match(/\d+(\.\d+)?/g);
  expect(figures("girth")).toEqual(figures("stretch-out"));
});
