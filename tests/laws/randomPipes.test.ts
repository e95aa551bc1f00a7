import { describe, expect, it } from "vitest";
import { develop } from "../../src/core/index";
import { CASES, onEach, randomCases } from "../support/lawCase";
import { randomPipe } from "../support/randomPipe";
import { slowPieceCount } from "./checkPieces";
import { isClear } from "./checkStations";
import { checkSeamElement } from "./checkSeamElement";
import { checkLengthInSpace, directionAt } from "./checkSurface";
import { CLAIMS } from "./claims";

const cases = randomCases(CASES);
const few = cases.slice(0, 150);

describe("a random cut pipe", () => {
  it.each(CLAIMS)("%s", (_, check) => onEach(cases, check));

  it("begins its stations at the shortest or longest element when asked", () => onEach(cases, checkSeamElement));

  it("has edges as long in space as many chords", () => onEach(few, checkLengthInSpace));

  it("leaves the job as it was", () => onEach(few, ({ job }) => {
    const before = JSON.stringify(job);
    develop(job);
    if (JSON.stringify(job) !== before) throw new Error("the job was changed");
  }));

  it("gives the same pattern when developed again", () => onEach(few, ({ job, piece }) => {
    const again = develop(job);
    if (!again.ok || JSON.stringify(again.development.pieces[0]!.pattern) !== JSON.stringify(piece.pattern)) throw new Error("another pattern");
  }));
});

describe("the random pipes", () => {
  it("are the same for the same number", () => expect(randomPipe(17)).toEqual(randomPipe(17)));
  it("can be made nine times in ten", () => expect(cases.length).toBeGreaterThan(0.9 * CASES));
  it("have even stations clear of edges 98 times in 100", () => {
    const clear = cases.flatMap((one) => one.piece.stations.filter((station) => station.mark === "even").map((station) => isClear(one, directionAt(one, station.girth))));
    expect(clear.filter(Boolean).length).toBeGreaterThan(0.98 * clear.length);
  });
  it("fall in several pieces now and then", () => expect(cases.filter((one) => one.piece.trimmed.components > 1).length).toBeGreaterThan(CASES / 50));
  it("can be counted by flooding four times in five", () => expect(few.filter((one) => slowPieceCount(one) !== null).length).toBeGreaterThan(0.8 * few.length));
});
