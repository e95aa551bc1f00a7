import type { Diagnosis, Explanation, Job, Mistake, Reading, Readings } from "../../core/index";
import type { TradeWords } from "../../drawing/tradeWords";

// What was probably done, in sentences.

export interface MistakeFrame {
  readonly job: Job;
  readonly readings: Readings;
  /** A length with its unit, an angle with its sign, a reading by name. */
  readonly length: (mm: number) => string;
  readonly angle: (degrees: number) => string;
  readonly name: (reading: Reading) => string;
  readonly trade: TradeWords;
}

/** The sentences of a diagnosis; none when everything is right. */
export function diagnosisSentences(diagnosis: Diagnosis, frame: MistakeFrame): string[] {
  switch (diagnosis.kind) {
    case "right":
      return [];
    case "too-few":
      return ["Too few readings to say why: four or more are needed."];
    case "unexplained":
      return ["Not explained: no known mistake, alone or with another, gives these readings. Is it another exercise, another scale, another start?"];
    case "alike":
      return [`Not explained: these fit alike. ${diagnosis.explanations.map((one, i) => `(${i + 1}) ${named(one, frame)}`).join(" ")}`];
    case "explained":
      return [`Probably: ${named(diagnosis.explanation, frame)}`, fitSentence(diagnosis.explanation, frame)];
  }
}

function named({ mistakes, strays }: Explanation, frame: MistakeFrame): string {
  const stray = strays.length === 0 ? [] : [`${mistakes.length > 0 ? "besides, " : ""}${strays.length === 1 ? "a single reading is off" : "single readings are off"}: ${strays.map(frame.name).join(", ")}`];
  return `${[...mistakes.map((mistake) => mistakeWords(mistake, frame)), ...stray].join("; and ")}.`;
}

function fitSentence({ mistakes, rms, rmsBefore, strays }: Explanation, { length, readings }: MistakeFrame): string {
  const kept = readings.values.length - strays.length;
  if (mistakes.length === 0) return `The other ${kept} readings lie within ${length(rms)} of the true ones, on average.`;
  return `That allowed for, ${strays.length > 0 ? `the other ${kept}` : `all ${kept}`} readings fit within ${length(rms)} on average; without it they are off by ${length(rmsBefore)}.`;
}

/** One mistake, as a clause. */
export function mistakeWords(mistake: Mistake, { job, length, angle, trade: { girth, element } }: MistakeFrame): string {
  const cutName = (id: string) => {
    const cuts = job.part.cuts.filter(({ on }) => on);
    const cut = job.part.cuts.find((one) => one.id === id);
    if (cut?.kind === "opening") return "the opening";
    if (cuts.filter(({ kind }) => kind !== "opening").length < 2) return "the cut";
    return cut?.end === "bottom" ? "the cut at the foot" : "the cut at the top";
  };
  switch (mistake.kind) {
    case "chords":
      return mistake.done ? `the ${girth} was stepped off with chords instead of π × diameter` : `the ${girth} was taken as π × diameter where chords were to be stepped`;
    case "basis":
      return `the ${mistake.used} diameter was used${mistake.throughout ? " throughout" : ` for the ${girth}`}`;
    case "radius":
      return `${mistake.times < 1 ? "the radius was taken for the diameter" : "the diameter was taken for the radius"}${mistake.throughout ? ", in the views too" : ` in the ${girth}`}`;
    case "seam":
      return mistake.turn === 180 ? "the seam stands half a turn off, or the piece was drawn facing the other way" : mistake.turn % 180 === 90 ? "the seam stands a quarter turn off" : `the seam stands ${angle(mistake.turn)} further along`;
    case "reversed":
      return "the order of the stations is reversed: the pattern is the mirror image";
    case "datum":
      return `every ordinate is about ${length(Math.round(Math.abs(mistake.offset) * 10) / 10)} too ${mistake.offset > 0 ? "long" : "short"}: another base line was used`;
    case "otherEnd":
      return "the ordinates were measured from the other end";
    case "spaces":
      return `there is one space too ${mistake.by > 0 ? "many" : "few"}`;
    case "skipped":
      return `the ordinate of station ${mistake.at} was left out, and those after it stand one station too early`;
    case "repeated":
      return `an ordinate was taken twice at station ${mistake.at}, and those after it stand one station too late`;
    case "angle":
      return `${cutName(mistake.cut)} was drawn at ${angle(Math.round(mistake.angle * 2) / 2)}`;
    case "direction":
      return `${cutName(mistake.cut)} faces ${mistake.turn === 180 ? "the other way" : "a quarter turn off"}`;
    case "scale":
      return `${mistake.ordinatesOnly ? "the ordinates are" : "everything is"} ${Number(mistake.factor.toFixed(3))} times as long as the scale asks`;
    case "critical":
      return `one ${element} between the stations, where the edge turns, was not drawn`;
  }
}
