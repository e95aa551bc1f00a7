// What is said of each step of the construction: its name, what is new on the drawing, what is done and why. The caller may pass its own.

import type { Outline, PipePart } from "../../core/index";
import { TRADE, type TradeWords } from "../tradeWords";
import type { ViewName } from "../view/views";

type Attitude = PipePart["attitude"];

/** A pipe standing has a top and a bottom; lying it has a right and a left end. */
const ENDS = { upright: { top: "top", bottom: "bottom" }, lying: { top: "right end", bottom: "left end" } } as const;

/** Lines from view to view and into the pattern, along the height of an upright pipe and the length of a lying one. */
const ACROSS = { upright: "Level lines", lying: "Lines square to the axis" } as const;
const OPENINGS: Readonly<Record<Outline["shape"], string>> = { round: "round opening", rectangle: "rectangular opening", slot: "slot" };

/** One end and the view that gives its cut, null when its heights must be worked out. */
export interface GivenEnd {
  readonly end: "top" | "bottom";
  readonly view: ViewName | null;
}

/** The words of the steps in the words of the trade. */
export function stepWords({ girth, views, element }: Pick<TradeWords, "girth" | "views" | "element">) {
  const named = (some: readonly ViewName[]) => some.map((view) => views[view]).join(" and the ");
  return {
    data: {
      title: "Read the data, choose the projection",
      fresh: "the axes of the views",
      text: (pipe: { diameter: string; sheet: boolean; length: string; stations: number }, projection: "first" | "third") =>
        `A pipe of ⌀${pipe.diameter}${pipe.sheet ? ", measured where its sheet is developed" : ""}, ${pipe.length} long, with ${pipe.stations} stations. In ${projection} angle the ${views.top} stands ${projection === "first" ? "below" : "above"} the ${views.front}; the axes are set out first, so that everything stays in projection.`,
    },

    views: {
      title: "Draw the views",
      fresh: "the circle, the uncut pipe, the cut as it is given",
      text: (diameter: string, ends: readonly GivenEnd[], attitude: Attitude) =>
        [`Seen along its axis the pipe is a circle of ⌀${diameter}, on which every ${element} is a point. Thin lines show the pipe before it is cut.`,
          ...ends.map(({ end, view }) => (view === null
            ? `No view shows the cut of the ${ENDS[attitude][end]} as it is given, so its heights are worked out.`
            : `The cut of the ${ENDS[attitude][end]} is given in the ${views[view]}.`))].join(" "),
    },

    circle: {
      title: "Divide the circle and number",
      fresh: (last: string) => `the stations, 0 at the seam to ${last}`,
      /** How the circle is divided by hand. */
      sets: {
        thirty: (step: string) => `The 30/60 set-square divides it: ${step} from station to station.`,
        fifteen: (step: string) => `The 30/60 and 45 set-squares together divide it: ${step} from station to station.`,
        halved: (step: string) => `The set-squares divide it, and each part is halved: ${step} from station to station.`,
        trial: (step: string) => `No set-square gives this: the dividers are stepped round until they close, ${step} from station to station.`,
      },
      screen: (count: number, step: string) => `The screen divides it into ${count} equal parts of ${step}, whatever the number.`,
      order: (towards: 1 | -1, view: ViewName) =>
        `Numbered from the seam ${towards > 0 ? "anticlockwise" : "clockwise"} seen from ${view === "top" ? "above" : "the right end"}, so that the pattern comes out with the ${towards > 0 ? "outside" : "inside"} up.`,
      extra: (count: number) => (count === 1 ? "One further station, with a letter, stands between the even ones." : `${count} further stations, with letters, stand between the even ones.`),
    },

    project: {
      title: "Project to the cut, mark the points",
      fresh: "a projection line and a point for each station",
      text: (over: boolean, low: string, lowAt: string, high: string, highAt: string) =>
        `From each number a line runs ${over ? "over the 45° line " : ""}to the cut, and the point where it meets it is marked. The lowest point lies ${low} from the base line, at ${lowAt}, the highest ${high}, at ${highAt}.`,
      square: `Both ends are square, so every ${element} has the length of the pipe and no point need be found.`,
      part: (label: string, heights: readonly string[]) => `Station ${label}: ${heights.length === 0 ? "no point to find" : `the cut is met ${heights.join(" and ")} from the base line`}.`,
    },

    complete: {
      title: (found: readonly ViewName[]) => `Complete the ${named(found)}`,
      fresh: "the cut where it is not given",
      text: (found: readonly ViewName[], attitude: Attitude) =>
        `${ACROSS[attitude]} from the marked points meet each ${element} of the same number in the ${named(found)}; the curve through them is the cut seen there, dashed where the wall in front hides it.`,
      part: (label: string, points: number) => `Station ${label}: ${points === 0 ? "no point to find" : `its point is carried across to the ${element} of the same number`}.`,
    },

    stretchOut: {
      title: `Draw the ${girth} line`,
      fresh: "the way round the pipe, laid out straight",
      screen: (diameter: string, length: string, count: number, short: string) =>
        `The whole ${girth}, π × ${diameter} = ${length}, is laid off in line with the base. Stepped with the dividers as ${count} chords it would come out ${short} short.`,
      hand: (count: number, chord: string, total: string, short: string, percent: string, diameter: string, length: string) =>
        `The dividers, set to one chord of the circle, step off ${count} × ${chord} = ${total}: the ticks. That is ${short} or ${percent} % short of the true ${girth}, π × ${diameter} = ${length}, on which the pattern is drawn.`,
    },

    elements: {
      title: `Step off, number and raise each ${element}`,
      fresh: `each ${element} at full height, with its number`,
      text: (count: number, space: string) =>
        `${count} spaces of ${space}, numbered as on the circle; the seam, 0, stands at both ends because the sheet closes there. A thin ${element} is raised square at each.`,
      extra: "The lettered stations stand at their own distances from the seam.",
    },

    carry: {
      title: "Carry each ordinate",
      fresh: `a point on each ${element}, at its true length`,
      across: (attitude: Attitude) =>
        `${ACROSS[attitude]} from the marked points run to each ${element} of the same number: they are all parallel to the axis, so the views show them at their true lengths.`,
      divided: `The pattern stands apart, so the dividers take each length from the view to the ${element} of the same number.`,
      part: (label: string, from: string | null, to: string, length: string, kept: string | null) =>
        `Station ${label}: ${from === null ? `ordinate ${to}` : `from ${from} to ${to}, true length ${length}`}${kept === null ? "" : `, ${kept} of it kept beside the opening`}.`,
      none: (label: string) => `Station ${label}: nothing of the ${element} is kept.`,
    },

    curve: {
      title: "Draw the curve through the points",
      fresh: "the edge, thin",
      text: (corners: number, stations: number) =>
        `The points of the ${stations} stations are joined by a fair curve, never by straight chords.${corners === 0 ? "" : ` It is broken at the ${corners === 1 ? "corner" : `${corners} corners`}, where the edge turns sharply.`}`,
      square: "Both ends are square: their edges are straight lines.",
    },

    opening: {
      title: (shape: Outline["shape"]) => `Develop the ${OPENINGS[shape]}`,
      fresh: (shape: Outline["shape"]) => `the ${OPENINGS[shape]} in the views and in the pattern`,
      crossed: (labels: string, label: string, from: string, to: string) =>
        `It is crossed at ${labels}; the points there are carried across, at ${label} those ${from} and ${to} from the base line. The more of them, the truer its curve.`,
      between: (height: string) => `It lies between two stations, with its middle ${height} from the base line: stations of its own are needed to find its curve by hand.`,
    },

    lineIn: {
      title: "Line in",
      fresh: "the outline, bold",
      text: (length: string, height: string) =>
        `The outline is drawn wide, ${length} by ${height}; the construction is left standing, thin, since it shows how each point was found.`,
    },

    dimensions: {
      title: "Dimension and title",
      fresh: `each measure once, the ${girth}, the face that is up`,
      text: (diameter: string, face: "inside" | "outside") =>
        `Each measure stands once, where it is seen true: ⌀${diameter}, heights from the base line, the ${girth} under the pattern. The pattern says which face looks up: the ${face}.`,
    },
  } as const;
}

export type StepWords = ReturnType<typeof stepWords>;

export const ENGLISH_STEPS: StepWords = stepWords(TRADE["stretch-out"]);
