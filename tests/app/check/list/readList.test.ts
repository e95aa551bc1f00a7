import { expect, test } from "vitest";
import { headOf, keyOf, markHead, markOf } from "../../../../src/app/check/list/columns";
import { TRADE } from "../../../../src/drawing/tradeWords";
import { readList } from "../../../../src/app/check/list/readList";

test("every head of a column comes back to its place", () => {
  for (const key of ["stretchOut", "spacing", "angle roof-slope", "top 0", "top 3.25", "bottom 12", "lower 4", "upper 4"]) {
    for (const trade of Object.values(TRADE)) expect(keyOf(headOf(key, trade).toUpperCase())).toBe(key);
  }
  expect(markOf(markHead("item-3"))).toBe("item-3");
  for (const other of ["Class", "Top", "Top of the class", "Marks given", "Marks of"]) expect([keyOf(other), markOf(other)]).toEqual([null, null]);
});

test("a list separated by semicolons keeps its decimal commas, in whatever order its columns stand", async () => {
  const read = await readList("Top 0;Name;Code;Drawn at;Numbered;Marks views\r\n157,5;Ada Beck;;1:2;the other way;3\r\n");
  expect(read).toEqual({
    ok: true, unknown: [], odd: [],
    students: [{ name: "Ada Beck", code: "", sheet: { scale: "1:2", along: "against", readings: { "top 0": "157,5" }, marks: { views: "3" } } }],
  });
});

test("a scale is read also as a spreadsheet writes it that took it for a time; one that is none is named and left", async () => {
  const scales = ["1:2", "1 : 2", "1/2", "01:02", "01:02:00", "1:3", "half", ""];
  const read = await readList(["Name,Drawn at", ...scales.map((scale, i) => `S${i},${scale}`)].join("\n"));
  expect(read.ok && read.students.map(({ sheet }) => sheet.scale)).toEqual(["1:2", "1:2", "1:2", "1:2", "1:2", undefined, undefined, undefined]);
  expect(read).toMatchObject({ odd: ["S5: 1:3", "S6: half"] });
});

test("columns that nobody knows are named, what was worked out is left to be worked out anew", async () => {
  expect(await readList("Name,Class,Readings,Likely mistake\nAda,3a,12,\"Probably: none, at all\"")).toMatchObject({ ok: true, unknown: ["Class"], students: [{ name: "Ada", sheet: { readings: {} } }] });
});

test("a name that looks like a formula comes back without its apostrophe; texts that are no numbers stay as they are", async () => {
  expect(await readList("Name,Top 0\n'=SUM(A1),about 150")).toMatchObject({ ok: true, students: [{ name: "=SUM(A1)", sheet: { readings: { "top 0": "about 150" } } }] });
});

test.each([
  ["nothing", "", "empty"],
  ["a list without heads", "Ada Beck,157\nCem,158", "headless"],
  ["a quotation mark never closed", "Name,Code\n\"Ada,1\nCem,2", "quote"],
  ["too many lines", `Name\n${"Ada\n".repeat(2001)}`, "too-many"],
])("%s is refused", async (_, text, fault) => {
  expect(await readList(text)).toEqual({ ok: false, fault });
});
