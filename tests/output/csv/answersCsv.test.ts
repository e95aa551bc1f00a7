import Papa from "papaparse";
import { describe, expect, test } from "vitest";
import { answersCsv, type AnswerRow, type AnswerWords } from "../../../src/output/csv/answersCsv";
import { developedPipe } from "../../support/developed";
import { openingCut, pipeJob, planeCut } from "../../support/pipeJob";

const words: AnswerWords = {
  number: "number", name: "name", group: "class", code: "code", girth: "girth", spacing: "space", top: (label) => label, end: (label, end) => `${label} ${end}`,
  opening: (label, nth, end) => `${label} opening ${nth} ${end}`,
};
const format = { separator: ",", decimal: ".", places: 2, words } as const;

const row = (name: string, piece: AnswerRow["piece"]): AnswerRow => ({ name, group: "3b", code: "5KQ2M-3F", differs: [{ heading: "diameter", figure: "60" }], piece });
const piece = (diameter: number, angle: number) => developedPipe(pipeJob({ diameter, length: 120, cuts: [planeCut({ angle, direction: 180, height: 80 })] }));

const read = (text: string) => Papa.parse<Record<string, string>>(text.replace(/^\ufeff/, ""), { header: true, skipEmptyLines: true });

describe("answersCsv", () => {
  test("has a row a student: ordinates by the closed form h + r tan α cos θ, the seam in front, the cut highest behind", () => {
    const { data, errors } = read(answersCsv([row("Ada", piece(60, 30)), row("Bo", piece(50, 45))], format));
    expect(errors).toEqual([]);
    for (const [i, [radius, angle]] of [[30, 30], [25, 45]].entries()) {
      for (let k = 0; k < 12; k++) {
        const height = 80 - (radius ?? 0) * Math.tan(((angle ?? 0) * Math.PI) / 180) * Math.cos((k * Math.PI) / 6);
        expect(Math.abs(Number(data[i]?.[String(k)]) - height)).toBeLessThanOrEqual(0.005 + 1e-9);
      }
      expect(data[i]).toMatchObject({ number: String(i + 1), girth: (2 * Math.PI * (radius ?? 0)).toFixed(2), space: ((2 * Math.PI * (radius ?? 0)) / 12).toFixed(2) });
    }
  });

  test("gives names back as they were, and no formula to a spreadsheet", () => {
    const names = ['Winter, "Addi" Ada', "=HYPERLINK(1)", "+44", "@home", "-x", "Zoë\nŻółć", "<b>"];
    const text = answersCsv(names.map((name) => row(name, piece(60, 30))), format);
    expect(read(text).data.map(({ name }) => name)).toEqual(['Winter, "Addi" Ada', "'=HYPERLINK(1)", "'+44", "'@home", "'-x", "Zoë\nŻółć", "<b>"]);
  });

  test("has both ends where a foot is not level, and the limits of openings", () => {
    const cut = developedPipe(pipeJob({ diameter: 60, length: 120, cuts: [planeCut({ end: "bottom", angle: 20, height: 20 }), openingCut({ shape: "round", diameter: 20 }, { height: 70 })] }));
    const [one] = read(answersCsv([row("Ada", cut)], format)).data;
    expect(one).toMatchObject({ "0 top": "120.00", "0 bottom": (20 + 30 * Math.tan(Math.PI / 9)).toFixed(2), "0 opening 1 from": "60.00", "0 opening 1 to": "80.00" });
  });

  test("leaves empty what a piece does not have", () => {
    const holed = developedPipe(pipeJob({ diameter: 60, length: 120, cuts: [openingCut({ shape: "round", diameter: 20 }, { height: 70 })] }));
    const { data } = read(answersCsv([row("Ada", holed), row("Bo", piece(60, 30))], format));
    expect(data.map((one) => one["0 opening 1 from"])).toEqual(["60.00", ""]);
  });

  test("begins with a byte order mark and takes a decimal comma", () => {
    const text = answersCsv([row("Ada", piece(60, 30))], { ...format, separator: ";", decimal: "," });
    expect(text.charCodeAt(0)).toBe(0xfeff);
    expect(text).toContain("188,50;15,71");
  });
});
