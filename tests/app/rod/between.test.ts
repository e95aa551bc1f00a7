import { describe, expect, it } from "vitest";
import { formatOf } from "../../../src/app/quantity/format";
import { girthAtTick } from "../../../src/app/rod/layout";
import { betweenText, readoutText } from "../../../src/app/rod/Readout";
import { developed, hole, pipeWith, slant } from "../pipe";

const [piece] = developed(pipeWith([slant, hole])).pieces;
if (!piece) throw new Error("no piece");
const format = formatOf("mm", { places: 2, denominator: 0, comma: false });

describe("betweenText", () => {
  it("names the stations on either side and gives the figures of that very element", () => {
    const station = piece.stations[3];
    if (!station) throw new Error("no station");
    const text = betweenText(piece, station.girth + 5, format);
    expect(text).toMatch(/^Between 3 and 4 · /);
    expect(text).toContain(`stretch-out ${format.length(station.girth + 5)}`);
    expect(text).not.toContain(format.length(station.top ?? 0));
  });

  it("is the station's own line on a station", () => {
    expect(betweenText(piece, piece.stations[3]?.girth ?? 0, format)).toBe(readoutText(piece, 3, format));
  });
});

describe("girthAtTick", () => {
  const ticks = [10, 110, 210];
  const of = { form: { ...piece.form, girth: 400 } };

  it("is the place under the pointer, rounded to a step no coarser than a pixel", () => {
    expect(girthAtTick({ ticks }, of, 60)).toBe(100);
    expect(girthAtTick({ ticks }, of, 60.4)).toBe(100);
    expect(girthAtTick({ ticks }, of, 61)).toBe(102);
  });

  it("stays on the girth", () => {
    expect(girthAtTick({ ticks }, of, 0)).toBe(0);
    expect(girthAtTick({ ticks }, of, 500)).toBe(400);
  });
});
