import { describe, expect, it } from "vitest";
import { stationCsv } from "../../../src/output/csv/stationCsv";
import { CSV_ENGLISH } from "../../../src/output/csv/csvWords";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut, shapedCut } from "../../support/pipeJob";

const rows = (csv: string, separator = ",") => csv.trimEnd().split("\r\n").map((line) => line.split(separator));
const DOT = { separator: ",", decimal: ".", places: 2 } as const;

describe("stationCsv", () => {
  it("has one row a station, the seam's number first and last", () => {
    const [headings, ...stations] = rows(stationCsv(developedPipe(pipeJob({ diameter: 100, length: 80, stations: 4 })), DOT));
    expect(headings).toEqual(["station", "direction °", "stretch-out mm", "bottom mm", "top mm", "length mm"]);
    expect(stations).toEqual([
      ["0", "0.00", "0.00", "0.00", "80.00", "80.00"], ["1", "90.00", "78.54", "0.00", "80.00", "80.00"], ["2", "180.00", "157.08", "0.00", "80.00", "80.00"],
      ["3", "270.00", "235.62", "0.00", "80.00", "80.00"], ["0", "0.00", "314.16", "0.00", "80.00", "80.00"],
    ]);
  });

  it("rounds every value by itself from the datum, not step by step", () => {
    const table = rows(stationCsv(developedPipe(pipeJob({ diameter: 90, length: 80, stations: 16 })), { ...DOT, places: 0 }));
    expect(table.slice(1).map(([, , girth]) => girth)).toEqual(Array.from({ length: 17 }, (_, k) => String(Math.round((Math.PI * 90 * k) / 16))));
  });

  it("gives the limits of openings", () => {
    const piece = developedPipe(pipeJob({ diameter: 100, length: 80, stations: 4, cuts: [openingCut({ shape: "round", diameter: 20 }, { height: 40 })] }));
    const [headings, first, second] = rows(stationCsv(piece, DOT));
    expect(headings?.slice(6)).toEqual(["opening from 1", "opening to 1"]);
    expect(first?.slice(5)).toEqual(["60.00", "30.00", "50.00"]);
    expect(second?.slice(5)).toEqual(["80.00", "", ""]);
  });

  it("shows both values where an edge runs along the element", () => {
    const step = shapedCut({ shape: "step", low: 40, high: 70, rising: "right", position: 0 });
    const [, first] = rows(stationCsv(developedPipe(pipeJob({ diameter: 100, length: 80, stations: 4, cuts: [step] })), DOT));
    expect(first?.[4]).toBe("40.00 / 70.00");
  });

  it("leaves cells empty where nothing is kept", () => {
    const piece = developedPipe(pipeJob({ diameter: 100, length: 80, stations: 4, cuts: [planeCut({ angle: 60, direction: 180, height: -20 })] }));
    expect(rows(stationCsv(piece, DOT))[1]).toEqual(["0", "0.00", "0.00", "", "", "0.00"]);
  });

  it("writes decimal commas between semicolons, and refuses commas between commas", () => {
    const piece = developedPipe(pipeJob({ diameter: 100, length: 80.5, stations: 4 }));
    expect(rows(stationCsv(piece, { separator: ";", decimal: ",", places: 1 }), ";")[2]).toEqual(["1", "90,0", "78,5", "0,0", "80,5", "80,5"]);
    expect(() => stationCsv(piece, { separator: ",", decimal: ",", places: 1 })).toThrow(RangeError);
  });

  it("quotes what needs it and lets no heading act as a formula", () => {
    const words = { ...CSV_ENGLISH, station: "=HYPERLINK(1)", girth: "girth, \"mm\"" };
    const [line] = stationCsv(developedPipe(pipeJob({ diameter: 100, length: 80, stations: 4 })), { ...DOT, words }).split("\r\n");
    expect(line).toBe("'=HYPERLINK(1),direction °,\"girth, \"\"mm\"\"\",bottom mm,top mm,length mm");
  });

  it("keeps negative numbers numbers", () => {
    const piece = developedPipe(pipeJob({ diameter: 100, length: 80, stations: 4 }));
    expect(stationCsv(piece, DOT)).not.toContain("'");
  });
});
