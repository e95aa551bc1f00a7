import { describe, expect, it } from "vitest";
import type { Mark } from "../../../src/core/index";
import { expectClose } from "../../support/approximate";
import { openingCut } from "../../support/pipeJob";
import { shopPiece, slope } from "./pieces";

const of = <K extends Mark["kind"]>(marks: readonly Mark[], kind: K) => marks.filter((mark) => mark.kind === kind) as Extract<Mark, { kind: K }>[];

describe("quarterMarks", () => {
  it("quarterMarks stand a quarter of the girth apart, the seam's on both edges", () => {
    const lines = of(shopPiece({}, [slope]).marks, "quarter");
    expect(lines.map(({ direction }) => direction)).toEqual(["front", "front", "right", "back", "left"]);
    lines.forEach(({ line }, i) => expectClose(line.from.x, [0, 4, 1, 2, 3][i]! * 25 * Math.PI, 1e-9));
    expectClose(lines[3]!.line.to.y, 170, 1e-9);
  });
  it("quarterMarks stop at an opening", () => {
    const hole = openingCut({ shape: "round", diameter: 30 }, { height: 60, direction: 90 });
    const right = of(shopPiece({}, [hole]).marks, "quarter").filter(({ direction }) => direction === "right");
    expect(right.map(({ line }) => [line.from.y, line.to.y])).toEqual([[0, 45], [75, 200]]);
  });
  it("quarterMarks have a prick point at each end", () => {
    const { marks } = shopPiece();
    expect(of(marks, "prick").filter(({ on }) => on === "quarter")).toHaveLength(10);
  });
});

describe("stationMarks", () => {
  it("stationMarks tick both ends of every station", () => {
    const ticks = of(shopPiece({}, [slope]).marks, "tick");
    expect(ticks).toHaveLength(26);
    expect(ticks.filter(({ label }) => label === "0")).toHaveLength(4);
    expect(ticks[0]).toMatchObject({ end: "bottom", into: { x: 0, y: 1 } });
  });
  it("stationMarks of a blank are pricked for rolling, of a template not", () => {
    const rolled = (purpose: "blank" | "wrap") => of(shopPiece({ purpose }).marks, "prick").filter(({ on }) => on === "roll").length;
    expect([rolled("blank"), rolled("wrap")]).toEqual([26, 0]);
  });
  it("stationMarks of the opposite hand run the other way", () => {
    const xs = (hand: "described" | "opposite") => of(shopPiece({ hand }, [slope]).marks, "tick").map(({ at }) => at.x);
    xs("opposite").forEach((x, i) => expectClose(x, 100 * Math.PI - xs("described")[i]!, 1e-9));
  });
});

describe("endMatchMarks", () => {
  it("endMatchMarks pair the ends with those of their mates by quarter", () =>
    expect(new Set(of(shopPiece().marks, "match").map(({ id }) => id))).toEqual(new Set(["seam", ...["front", "right", "back", "left"].flatMap((at) => [`top-${at}`, `bottom-${at}`])])));
});
