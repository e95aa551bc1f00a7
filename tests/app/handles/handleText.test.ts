import { describe, expect, it } from "vitest";
import { board } from "../../../src/drawing/board/board";
import { handles } from "../../../src/drawing/handles/handles";
import { fieldTokens, keysOf } from "../../../src/app/handles/fieldTokens";
import { fitText, handleLabel, handleValue } from "../../../src/app/handles/handleText";
import { formatOf } from "../../../src/app/quantity/format";
import { developed } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";

const development = developed(pipeJob({
  diameter: 100, length: 200,
  cuts: [
    planeCut({ angle: 30, direction: 90, height: 180 }), openingCut({ shape: "round", diameter: 30 }, { height: 60 }),
    shapedCut({ shape: "ogee", low: 20, high: 40, rising: "left", radius: null }, { end: "bottom" }),
  ],
}));
const { job } = development;
const tokens = fieldTokens(job, new Set());
const all = handles(board(development, { width: 320, height: 200 }), development);
const handle = (id: string) => {
  const found = all.find((one) => one.id === id);
  if (!found) throw new Error(`no handle ${id}`);
  return found;
};
const millimetres = formatOf("mm", { places: 2, denominator: 0, comma: false });

describe("handleLabel", () => {
  it("says clause and fields as the description labels them", () => {
    expect(handleLabel(handle("plane.angle"), tokens, job)).toBe("Slanted end: Angle from square");
    expect(handleLabel(handle("opening.centre"), tokens, job)).toBe("Round opening: Sideways, right positive; Height of its centre");
  });

  it("takes the label of the choice that stands for a number", () => {
    expect(handleLabel(handle("plane.direction"), tokens, job)).toBe("Slanted end: Side where it is highest");
    expect(handleLabel(handle("shaped.radius"), tokens, job)).toBe("Ogee end: How the arcs end");
  });
});

describe("handleValue", () => {
  it("gives the values in the units of the job", () => {
    expect(handleValue(handle("opening.centre"), millimetres)).toBe("sideways 0 mm, height 60 mm");
    expect(handleValue(handle("plane.angle"), millimetres)).toBe("angle 30°");
    expect(handleValue(handle("part.length"), formatOf("inch", { places: 2, denominator: 0, comma: true }))).toBe("length 7,874 in");
  });
});

describe("fitText", () => {
  it("names the clause of what is fitted", () => {
    expect(fitText({ value: 60, why: "level", clause: "cut:opening" }, job)).toBe("level: Round opening");
    expect(fitText({ value: 0, why: "axis" }, job)).toBe("on the axis");
  });
});

describe("keysOf", () => {
  it("are the keys of the fields in the description", () => {
    for (const { fields, clause, grip } of all) {
      for (const key of keysOf({ clause, fields })) {
        expect([key, `${key}.side`, `${key}.kind`].some((name) => tokens.has(name)), `${grip.name}: ${key}`).toBe(true);
      }
    }
  });
});
