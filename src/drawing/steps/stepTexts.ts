// The figures of a job put into the words of its steps.

import type { Cut, Development, OpeningCut, Piece, Station } from "../../core/index";
import type { Board } from "../board/board";
import type { Figures } from "../figures";
import { chordSteps } from "./chordSteps";
import { broadsideNames, circleName, endPoints, givingView, isGivenIn } from "./cutSight";
import type { StepName } from "./itemStep";
import type { GivenEnd, StepWords } from "./stepWords";
import type { Way } from "./way";

interface Saying {
  readonly figures: Figures;
  readonly words: StepWords;
}

export interface StepText {
  readonly title: string;
  readonly fresh: string;
  readonly text: string;
}

/** Whether a point must be carried over the 45° line to the view that gives a cut, or from there to the other. */
export function needsMitre({ views }: Pick<Board, "views">, { job }: Development): boolean {
  const [, other] = broadsideNames(views);
  return endCuts(job.part.cuts).some((cut) => givingView(cut, views) === other || !isGivenIn(cut, views[other]));
}

/** The words of each step of this job. */
export function stepTexts(board: Board, development: Development, piece: Piece, { way, figures, words }: Saying & { way: Way }): (name: StepName) => StepText {
  const { job } = development;
  const length = (mm: number) => figures.length(mm);
  const angle = (degrees: number) => figures.angle(degrees);
  const { girth, height, towards } = piece.pattern;
  const even = piece.stations.filter(({ mark }) => mark === "even");
  const extra = piece.stations.length - 1 - even.length;
  const steps = chordSteps(piece.form.radius, Math.max(2, even.length));
  const diameter = length(piece.form.developed);
  const { drawing: { projection }, part: { attitude } } = job;
  const found = broadsideNames(board.views).filter((name) => endCuts(job.part.cuts).some((cut) => !isGivenIn(cut, board.views[name])));
  const circle = circleName(board.views);

  const makers: Record<Exclude<StepName, `opening-${string}`>, () => StepText> = {
    data: () => ({ ...words.data, text: words.data.text({ diameter, sheet: piece.form.thickness > 0, length: length(piece.form.length), stations: even.length }, projection) }),
    views: () => ({ ...words.views, text: words.views.text(diameter, givenEnds(board, job.part.cuts), attitude) }),
    circle: () => ({
      title: words.circle.title, fresh: words.circle.fresh(even.at(-1)?.label ?? "0"),
      text: [
        way === "screen" ? words.circle.screen(even.length, angle(360 / even.length)) : setSquares(even.length, angle, words),
        words.circle.order(towards, circle), ...(extra > 0 ? [words.circle.extra(extra)] : []),
      ].join(" "),
    }),
    project: () => ({ ...words.project, text: projectText(board, development, piece, { figures, words }) }),
    complete: () => ({ title: words.complete.title(found), fresh: words.complete.fresh, text: words.complete.text(found, attitude) }),
    "stretch-out": () => ({
      title: words.stretchOut.title, fresh: words.stretchOut.fresh,
      text: way === "screen"
        ? words.stretchOut.screen(diameter, length(girth), even.length, length(steps.short))
        : words.stretchOut.hand(even.length, length(steps.chord), length(steps.total), length(steps.short), percent(steps.part), diameter, length(girth)),
    }),
    elements: () => ({ ...words.elements, text: [words.elements.text(even.length, length(steps.arc)), ...(extra > 0 ? [words.elements.extra] : [])].join(" ") }),
    carry: () => ({ title: words.carry.title, fresh: words.carry.fresh, text: board.arrangement === "projection" ? words.carry.across(attitude) : words.carry.divided }),
    curve: () => ({ title: words.curve.title, fresh: words.curve.fresh, text: isSquare(job.part.cuts) ? words.curve.square : words.curve.text(cornersOf(piece), piece.stations.length) }),
    "line-in": () => ({ ...words.lineIn, text: words.lineIn.text(length(girth), length(height[1] - height[0])) }),
    dimensions: () => ({ ...words.dimensions, text: words.dimensions.text(length(piece.form.mean), towards > 0 ? "outside" : "inside") }),
  };
  return (name) => {
    const cut = job.part.cuts.find((one): one is OpeningCut => one.kind === "opening" && name === `opening-${one.id}`);
    if (cut) return { title: words.opening.title(cut.outline.shape), fresh: words.opening.fresh(cut.outline.shape), text: openingText(development, piece, cut, { figures, words }) };
    return makers[name as keyof typeof makers]();
  };
}

/** What is said of one station at the steps that go from station to station. */
export function partTexts({ job }: Development, piece: Piece, { figures, words }: Saying): Record<"project" | "complete" | "carry", (station: Station) => string> {
  const length = (mm: number) => figures.length(mm);
  return {
    project: (station) => words.project.part(station.label, onEndCuts(job, piece, station).map(({ z }) => length(z))),
    complete: (station) => words.complete.part(station.label, onEndCuts(job, piece, station).length),
    carry: ({ label, bottom, top, openings, length: kept }) => (bottom === null || top === null ? words.carry.none(label)
      : words.carry.part(label, bottom === 0 ? null : length(bottom), length(top), length(top - bottom), openings.length > 0 ? length(kept) : null)),
  };
}

function projectText(board: Board, { job }: Development, piece: Piece, { figures, words }: Saying): string {
  const found = piece.stations.slice(0, -1).flatMap((station) => onEndCuts(job, piece, station).map(({ z }) => ({ z, label: station.label })));
  const sorted = [...found].sort((a, b) => a.z - b.z);
  const low = sorted[0], high = sorted.at(-1);
  if (!low || !high) return words.project.square;
  return words.project.text(endCuts(job.part.cuts).some((cut) => givingView(cut, board.views) === broadsideNames(board.views)[1]), figures.length(low.z), low.label, figures.length(high.z), high.label);
}

function onEndCuts(job: Development["job"], piece: Piece, station: Station) {
  return endPoints(job, piece, station).filter(({ cut }) => cut !== null && cut.kind !== "opening");
}

function setSquares(count: number, angle: (degrees: number) => string, { circle: { sets } }: StepWords): string {
  const step = angle(360 / count);
  if (12 % count === 0) return sets.thirty(step);
  if (24 % count === 0) return sets.fifteen(step);
  return count === 16 || count === 48 || count === 32 ? sets.halved(step) : sets.trial(step);
}

function givenEnds({ views }: Board, cuts: readonly Cut[]): GivenEnd[] {
  const ends = endCuts(cuts).map((cut) => ({ end: cut.end, view: givingView(cut, views) }));
  return ends.filter(({ end, view }, i) => ends.findIndex((other) => other.end === end && other.view === view) === i);
}

function endCuts(cuts: readonly Cut[]): Exclude<Cut, OpeningCut>[] {
  return cuts.filter((cut): cut is Exclude<Cut, OpeningCut> => cut.on && cut.kind !== "opening");
}

function isSquare(cuts: readonly Cut[]): boolean {
  return endCuts(cuts).every((cut) => cut.kind === "plane" && cut.angle === 0);
}

/** Least change of direction, radians, that is a corner of the edge: half a degree. */
const CORNER = Math.PI / 360;

/** Corners of the outline off the seam, where both edges come from the ends of the pipe. */
function cornersOf({ pattern: { loops, girth } }: Piece): number {
  const outlines = loops.filter(({ kind }) => kind === "outline");
  return outlines.flatMap(({ segments }) => segments.filter((segment, i) => {
    const next = segments[(i + 1) % segments.length];
    const isSeam = (x: number) => x < 1e-6 || x > girth - 1e-6;
    return next !== undefined && !isSeam(segment.to.x) && Math.abs(wrapHalf(leaving(next) - arriving(segment))) > CORNER;
  })).length;
}

type PatternSegment = Piece["pattern"]["loops"][number]["segments"][number];

function leaving(segment: PatternSegment): number {
  const to = segment.kind === "cubic" ? segment.c1 : segment.to;
  return Math.atan2(to.y - segment.from.y, to.x - segment.from.x);
}

function arriving(segment: PatternSegment): number {
  const from = segment.kind === "cubic" ? segment.c2 : segment.from;
  return Math.atan2(segment.to.y - from.y, segment.to.x - from.x);
}

function wrapHalf(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
}

function openingText({ job }: Development, piece: Piece, cut: OpeningCut, { figures, words }: Saying): string {
  const length = (mm: number) => figures.length(mm);
  const crossed = piece.stations.slice(0, -1).flatMap((station) => {
    const on = endPoints(job, piece, station).filter((point) => point.cut?.id === cut.id).map(({ z }) => z);
    return on.length > 0 ? [{ label: station.label, from: Math.min(...on), to: Math.max(...on) }] : [];
  });
  const widest = [...crossed].sort((a, b) => b.to - b.from - (a.to - a.from))[0];
  if (!widest) return words.opening.between(length(cut.height));
  return words.opening.crossed(crossed.map(({ label }) => label).join(", "), widest.label, length(widest.from), length(widest.to));
}

function percent(part: number): string {
  return (part * 100).toFixed(2);
}
