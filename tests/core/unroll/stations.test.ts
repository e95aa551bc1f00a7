import { describe, expect, it } from "vitest";
import type { Station } from "../../../src/core/index";
import { wrapTurn } from "../../../src/core/numeric/angle";
import { stationsOf } from "../../../src/core/unroll/stations";
import { expectAllClose, expectClose } from "../../support/approximate";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut, type PipeDescription } from "../../support/pipeJob";

const mitre = planeCut({ angle: 45, height: 120 });
const stations = (pipe: Partial<PipeDescription> = {}): readonly Station[] =>
  developedPipe(pipeJob({ diameter: 100, length: 250, stations: 4, face: "outside", cuts: [mitre], ...pipe })).stations;
const labels = (list: readonly Station[]): string[] => list.map(({ label }) => label);
const degreesOf = (list: readonly Station[]): number[] => list.map(({ theta }) => (theta * 180) / Math.PI);

describe("stationsOf", () => {
  it("numbers the even stations from the seam and closes with 0", () => expect(labels(stations())).toEqual(["0", "1", "2", "3", "0"]));
  it("marks the last station closing", () => expect(stations().map(({ mark }) => mark)).toEqual(["even", "even", "even", "even", "closing"]));
  it("outside up runs anticlockwise seen from above", () => expectAllClose(degreesOf(stations()), [0, 90, 180, 270, 0], 1e-12));
  it("inside up runs clockwise", () => expectAllClose(degreesOf(stations({ face: "inside" })), [0, 270, 180, 90, 0], 1e-12));
  it("begins at the seam", () => expectAllClose(degreesOf(stations({ seam: { at: "left" } })), [270, 0, 90, 180, 270], 1e-12));
  it("stands a quarter of the girth apart with 4 stations", () => {
    const { girth } = developedPipe(pipeJob({ diameter: 100, length: 250 })).form;
    expectAllClose(stations().map((station) => station.girth), [0, girth / 4, girth / 2, (3 * girth) / 4, girth], 1e-12);
  });
  it("labels an added station after the one before it", () => expect(labels(stations({ extra: [100] }))).toEqual(["0", "1", "1a", "2", "3", "0"]));
  it("labels several added stations between two in order", () => {
    expect(labels(stations({ extra: [130, 100, 110] }))).toEqual(["0", "1", "1a", "1b", "1c", "2", "3", "0"]);
  });
  it("inside up labels added stations in the order of the girth", () => {
    expectAllClose(degreesOf(stations({ face: "inside", extra: [100, 110] })), [0, 270, 180, 110, 100, 90, 0], 1e-12);
  });
  it("goes on after z with aa", () => {
    const { form, cutters, trimmed } = developedPipe(pipeJob({ diameter: 100, length: 250 }));
    const added = Array.from({ length: 28 }, (_, i) => 0.01 * (i + 1));
    const list = stationsOf(form, cutters, trimmed.spans, { seam: 0, count: 4, towards: 1, critical: [], added });
    expect(labels(list).slice(25, 29)).toEqual(["0y", "0z", "0aa", "0ab"]);
  });
  it("does not add a station where an even one stands", () => expect(stations({ extra: [90] })).toHaveLength(5));
  it("does not add a station at the seam, a turn away either", () => expect(stations({ extra: [0, 360, -360] })).toHaveLength(5));
  it("adds one station for a direction given twice", () => expect(stations({ extra: [100, 100, -260] })).toHaveLength(6));
  it("with critical stations adds the corners of an opening, marked so", () => {
    const list = stations({ critical: true, cuts: [openingCut({ shape: "rectangle", width: 50, length: 40, turn: 0 }, { height: 100, direction: 180 })] });
    expectAllClose(degreesOf(list.filter(({ mark }) => mark === "critical")), [150, 210], 1e-6);
  });
  it("marks a station critical that is asked for as well", () => {
    const list = stations({ critical: true, extra: [150], cuts: [openingCut({ shape: "rectangle", width: 50, length: 40, turn: 0 }, { height: 100, direction: 180 })] });
    expect(list.filter(({ label }) => label === "1a").map(({ mark }) => mark)).toEqual(["critical"]);
  });
  it("has its girth position in proportion to its direction from the seam", () => {
    const piece = developedPipe(pipeJob({ diameter: 100, length: 250, seam: { at: "angle", angle: 77 }, stations: 7, extra: [1, 76.999, 200] }));
    for (const { theta, girth } of piece.stations.slice(0, -1)) expectClose(girth, 50 * wrapTurn(theta - piece.pattern.seam), 1e-9);
  });
});

describe("a station", () => {
  // CYL-01: Apostol & Mnatsakanian, Amer. Math. Monthly 114 (2007), section 2: the developed edge is a cosine.
  it("of a mitre is as high as the cosine", () => {
    for (const { theta, top } of stations({ stations: 12 })) expectClose(top!, 120 + 50 * Math.cos(theta), 1e-12);
  });
  it("of a mitre is as long as it is high", () => {
    for (const { length, top } of stations()) expect(length).toBe(top);
  });
  it("through an opening states the gap", () => {
    const [first] = stations({ cuts: [openingCut({ shape: "round", diameter: 60 }, { height: 100 })] });
    expectAllClose(first!.openings.flatMap(({ from, to }) => [from, to]), [70, 130], 1e-12);
  });
  it("through an opening is shorter by the gap", () => {
    const [first] = stations({ cuts: [openingCut({ shape: "round", diameter: 60 }, { height: 100 })] });
    expectClose(first!.length, 190, 1e-12);
  });
  it("on the upright of a step has both heights, before and after in the order of the girth", () => {
    const step = shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 0 });
    for (const [face, expected] of [["outside", [100, 150]], ["inside", [150, 100]]] as const) {
      const [first] = stations({ cuts: [step], face });
      expectAllClose([first!.before[0]!.to, first!.after[0]!.to], expected, 1e-12);
    }
  });
  it("on the upright of a step states the higher top", () => {
    expect(stations({ cuts: [shapedCut({ shape: "step", low: 100, high: 150, rising: "right", position: 0 })] })[0]!.top).toBe(150);
  });
  it("where nothing is kept has no ends and no length", () => {
    const [first] = stations({ seam: { at: "front" }, cuts: [openingCut({ shape: "rectangle", width: 40, length: 600, turn: 0 }, { height: 100 })] });
    expect([first!.bottom, first!.top, first!.length]).toEqual([null, null, 0]);
  });
});
