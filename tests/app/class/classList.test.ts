// @vitest-environment jsdom
import { beforeEach, describe, expect, test, vi } from "vitest";
import { chooseColumns, chooseCount, forgetList, takeListFile, takeListText, useClassList } from "../../../src/app/class/classList";
import { decodedText } from "../../../src/app/class/decodedText";
import { sharedNames, unprintableNames } from "../../../src/app/class/studentsOf";

beforeEach(() => {
  localStorage.clear();
  chooseCount(30);
});

const students = () => useClassList.getState().students;
const names = () => students().map(({ name }) => name);

describe("a list", () => {
  test("of one name a line is that", async () => {
    await takeListText("Ada Winter\nBo Sommer\r\n\n  Cy   Herbst \n");
    expect(names()).toEqual(["Ada Winter", "Bo Sommer", "Cy Herbst"]);
  });

  test("of one name a line stays that when a few names hold a comma", async () => {
    const lines = ["Ada Winter", "Müller, Zoë", "Bo Sommer", "Cy Herbst", "Di Lenz", "Ed Mai", "Fi Juni"];
    await takeListText(lines.join("\n"));
    expect(names()).toEqual(lines);
  });

  test("with headings is read by them, whatever separates its columns", async () => {
    for (const sign of [",", ";", "\t"]) {
      await takeListText(["No,Surname,First name,Class", "1,Winter,Ada,3b", "2,Sommer,Bo,3c"].join("\n").replaceAll(",", sign));
      expect(students()).toEqual([{ name: "Winter Ada", group: "3b" }, { name: "Sommer Bo", group: "3c" }]);
    }
  });

  test("without headings has its class where the same few texts come again", async () => {
    await takeListText("Ada Winter,3b\nBo Sommer,3b\nCy Herbst,3b\nDi Lenz,3c\nEd Mai,3c\nFi Juni,3c");
    expect(students().at(3)).toEqual({ name: "Di Lenz", group: "3c" });
  });

  test("is read by other columns when they are chosen", async () => {
    await takeListText("Name,Nick name\nAda Winter,Addi\nBo Sommer,Bob");
    chooseColumns({ name: 1, second: null });
    expect(names()).toEqual(["Addi", "Bob"]);
    chooseColumns({ heads: false });
    expect(names()).toEqual(["Nick name", "Addi", "Bob"]);
  });

  test("keeps quoted commas and quotes, odd letters, and texts that look like formulas or markup as the texts they are", async () => {
    await takeListText('name\n"Winter, Ada ""Addi"""\n=1+1\n+44\n@home\n-5\n<b>Bo</b>\nŁukasz Żółć\nΑλέξανδρος\nO\'Neil');
    expect(names()).toEqual(['Winter, Ada "Addi"', "=1+1", "+44", "@home", "-5", "<b>Bo</b>", "Łukasz Żółć", "Αλέξανδρος", "O'Neil"]);
  });

  test("loses signs that are not seen or turn the writing round", async () => {
    await takeListText("\ufeffAda\u202e Win\u200bter\nBo\u0007 Sommer");
    expect(names()).toEqual(["Ada Winter", "Bo Sommer"]);
  });

  test("of a thousand names is taken whole", async () => {
    await takeListText(Array.from({ length: 1000 }, (_, k) => `Student ${k}`).join("\n"));
    expect(students()).toHaveLength(1000);
  });
});

describe("a list that cannot be taken", () => {
  const refused = async (text: string) => {
    await takeListText("Ada Winter\nBo Sommer");
    await takeListText(text);
    expect(names()).toEqual(["Ada Winter", "Bo Sommer"]);
    return useClassList.getState().fault;
  };

  test("is refused with its reason, and the one before stays", async () => {
    expect(await refused(" \n\t\n")).toEqual({ kind: "empty" });
    expect(await refused("Ada\u0000Winter")).toEqual({ kind: "not-text" });
    expect(await refused('name\nAda\n"Bo\nCy')).toEqual({ kind: "quote", line: 3 });
    expect(await refused(`Ada\n${"x".repeat(121)}`)).toEqual({ kind: "too-long", line: 2, most: 120 });
    expect(await refused(Array.from({ length: 2001 }, (_, k) => `S${k}`).join("\n"))).toEqual({ kind: "too-many", found: 2001, most: 2000 });
    expect(await refused("x".repeat(1_000_001))).toEqual({ kind: "too-large", most: 1_000_000 });
  });

  test("that is no text file is refused", async () => {
    await takeListFile(new File([new Uint8Array([0x50, 0x4b, 3, 4, 0, 0])], "list.xlsx"));
    expect(useClassList.getState().fault).toEqual({ kind: "not-text" });
  });
});

describe("a file", () => {
  test("is decoded from UTF-8, UTF-16 and older spreadsheets' letters", () => {
    expect(decodedText(new TextEncoder().encode("Müller"))).toBe("Müller");
    expect(decodedText(Uint8Array.from([0xff, 0xfe, 0x4d, 0, 0xfc, 0]))).toBe("Mü");
    expect(decodedText(Uint8Array.from([0xfe, 0xff, 0, 0x4d, 0, 0xfc]))).toBe("Mü");
    expect(decodedText(Uint8Array.from([0x4d, 0xfc, 0x6c]))).toBe("Mül");
  });
});

describe("what is told of a list", () => {
  test("names that come twice in a class, not those of two classes", () => {
    expect(sharedNames([{ name: "Ada", group: "3b" }, { name: "ada", group: "3b" }, { name: "Bo", group: "3b" }, { name: "Bo", group: "3c" }])).toEqual(["Ada", "ada"]);
  });

  test("names the printed lettering has no letters for", () => {
    expect(unprintableNames(["Łukasz", "Ελένη", "Иван", "O'Neil 2", "王芳", "Ada 🙂", "נועה"].map((name) => ({ name, group: "" })))).toEqual(["王芳", "Ada 🙂", "נועה"]);
  });
});

test("the list is there again on another visit, and not once forgotten", async () => {
  await takeListText("Ada Winter\nBo Sommer");
  vi.resetModules();
  const again = await import("../../../src/app/class/classList");
  expect(again.useClassList.getState().students.map(({ name }) => name)).toEqual(["Ada Winter", "Bo Sommer"]);
  forgetList();
  expect(students()).toHaveLength(30);
  expect(localStorage.getItem("flatwright.class")).not.toContain("Ada");
});

test("what the browser kept and is no list is no list", async () => {
  for (const text of ["{", "[]", '{"rows":[[1]],"columns":{"heads":false,"name":0,"second":null,"group":null},"count":30}', '{"rows":[],"columns":null,"count":3}']) {
    localStorage.setItem("flatwright.class", text);
    vi.resetModules();
    expect((await import("../../../src/app/class/classList")).useClassList.getState().students).toHaveLength(30);
  }
});
