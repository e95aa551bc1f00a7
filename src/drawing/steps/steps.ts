// The construction of a pattern in the order of the drawing board. Every item of the board appears at one step; the thin lines by
// which it was found are left standing. So the last step shows the board, over its construction.

import type { Development, Piece } from "../../core/index";
import type { Board } from "../board/board";
import type { Item } from "../display";
import { type Figures, METRIC } from "../figures";
import { stationsApart } from "../station/stationProjections";
import { axisUnderSeam } from "./axisUnderSeam";
import { circleRadii, chordTicks, raisedElements } from "./handwork";
import { type StepName, itemStep, thinned } from "./itemStep";
import { mitreLine } from "./mitreLine";
import { needsMitre, partTexts, stepTexts } from "./stepTexts";
import { type StationRays, stationRays } from "./stationRays";
import { ENGLISH_STEPS, type StepWords } from "./stepWords";
import { uncutPipe } from "./uncutPipe";
import type { Way } from "./way";

/** What one station adds. */
export interface StepPart {
  /** Index into the stations of the piece. */
  readonly station: number;
  readonly text: string;
  readonly items: readonly Item[];
  readonly construction: readonly Item[];
}

export interface Step {
  /** Names the step for good: for addresses. */
  readonly name: StepName;
  readonly title: string;
  /** What is new on the drawing, in a few words. */
  readonly fresh: string;
  /** What is done and why, with the figures of this job. */
  readonly text: string;
  /** Items of the board that appear, but for those of the parts. */
  readonly items: readonly Item[];
  /** Thin lines that appear under them and stay. */
  readonly construction: readonly Item[];
  /** Where the step goes from station to station, what each adds; else empty. */
  readonly parts: readonly StepPart[];
}

export interface StepOptions {
  readonly way: Way;
  readonly figures?: Figures;
  readonly words?: StepWords;
  /** Which piece of the development; the first unless given. */
  readonly piece?: number;
}

/** The steps of the construction on a board of this development. Steps that add nothing to this job are left out. */
export function steps(board: Board, development: Development, { way, figures = METRIC, words = ENGLISH_STEPS, piece: index = 0 }: StepOptions): Step[] {
  const piece = development.pieces[index];
  if (!piece) throw new RangeError(`no piece ${index} among ${development.pieces.length}`);
  const items = itemsByStep(board, development, index);
  const texts = stepTexts(board, development, piece, { way, figures, words });
  const said = partTexts(development, piece, { figures, words });
  const open = piece.stations.slice(0, -1);
  const rays = open.map((station) => stationRays(board, development, piece, station));
  const part = (step: "project" | "complete" | "carry", of: (rays: StationRays) => readonly Item[]): StepPart[] => open.map((station, i) => ({
    station: i, text: said[step](station), items: items.at(step, i), construction: rays.slice(i, i + 1).flatMap(of),
  }));
  const closing = closingRays(board, development, piece);
  const step = (name: StepName, construction: readonly Item[] = [], parts: readonly StepPart[] = []): Step =>
    ({ name, ...texts(name), items: items.of(name, parts.length > 0), construction, parts });
  const openings = development.job.part.cuts.flatMap((cut) => (cut.kind === "opening" ? [cut.id] : []));

  const all: Step[] = [
    step("data", axisUnderSeam(board)),
    step("views", uncutPipe(board, piece)),
    step("circle", way === "hand" ? circleRadii(board, piece) : []),
    step("project", needsMitre(board, development) ? [mitreLine(board, development.job.drawing.projection, piece.form.cutRadius).line] : [], part("project", ({ toCut }) => toCut)),
    step("complete", [], part("complete", ({ toViews }) => toViews)),
    step("stretch-out", way === "hand" ? chordTicks(board, piece) : []),
    step("elements", raisedElements(board, piece, stationsApart(board, piece))),
    step("carry", [], part("carry", ({ toPattern }) => toPattern).map((one) => (one.station === 0 ? { ...one, construction: [...one.construction, ...closing.toPattern] } : one))),
    step("curve", items.of("line-in", false).flatMap((item) => (item.kind === "path" && (item.pen === "outline" || item.pen === "opening") ? [thinned(item)] : []))),
    ...openings.map((id) => step(`opening-${id}`, rays.concat(closing).flatMap(({ toOpening }) => toOpening(id)))),
    step("line-in"),
    step("dimensions"),
  ];
  return all.filter((one) => one.items.length > 0 || one.construction.length > 0 || one.parts.some((part) => part.items.length > 0 || (part.construction.length > 0 && one.name !== "complete")));
}

function closingRays(board: Board, development: Development, piece: Piece): StationRays {
  const closing = piece.stations.at(-1);
  if (!closing) throw new RangeError("a piece without stations");
  return stationRays(board, development, piece, closing);
}

/** The items of the board by step, and by station within a step. */
function itemsByStep(board: Board, development: Development, index: number): { of(step: StepName, shared: boolean): Item[]; at(step: StepName, station: number): Item[] } {
  const sorted = Object.values(board.blocks).flatMap((block) => block.items.map((item) => ({ item, ...itemStep(development, board, block.name, item, index) })));
  return {
    of: (step, shared) => sorted.filter((one) => one.step === step && (!shared || one.station === undefined)).map(({ item }) => item),
    at: (step, station) => sorted.filter((one) => one.step === step && one.station === station).map(({ item }) => item),
  };
}
