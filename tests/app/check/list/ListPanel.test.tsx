// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { CheckMargin } from "../../../../src/app/check/CheckMargin";
import { ListPanel } from "../../../../src/app/check/list/ListPanel";
import { endList, useMarkingList } from "../../../../src/app/check/list/markingList";
import { openList } from "../../../../src/app/check/list/openList";
import { takeStudent } from "../../../../src/app/check/list/takeStudent";
import { useSheets } from "../../../../src/app/check/sheets";
import { variantJob } from "../../../../src/app/class/variantJob";
import { saveText } from "../../../../src/app/files/saveText";
import { change, replaceJob } from "../../../../src/app/store/changes";
import { useSettings } from "../../../../src/app/store/settings";
import { rememberScale } from "../../../../src/app/teach/sheets/rememberScale";
import { onSheets } from "../../../../src/app/teach/sheets/sheetScale";
import { useApp } from "../../../../src/app/store/store";
import { listWords } from "../../../../src/app/words/markingList";
import { exerciseOf, variants, type Job } from "../../../../src/core/index";
import { developed, pipeWith, slant } from "../../pipe";

vi.mock("../../../../src/app/files/saveText", () => ({ saveText: vi.fn() }));

const job = pipeWith([slant]);
const exercise = { ...job, exercise: { ...job.exercise, ranges: [{ field: "part.cuts.slope.angle", from: 20, to: 50, step: 5 }] } };
const row = (name: string) => useMarkingList.getState().rows.find((one) => one.name === name)!;
const pieceTops = (of: Job) => developed(of).pieces[0]!.stations.map(({ top }) => top!);
const table = () => screen.getByRole("table");
const file = (text: string) => new File([text], "class.csv", { type: "text/csv" });

beforeEach(() => {
  HTMLDialogElement.prototype.showModal = function () {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function () {
    this.open = false;
  };
  localStorage.clear();
  sessionStorage.clear();
  useSettings.setState({ comma: false, denominator: 0 });
  useSheets.setState({ all: {}, last: null, keeps: true, student: null });
  endList();
  replaceJob(exercise);
});
afterEach(cleanup);

test("a file of students and readings gives each a line: readings, marks, likely mistake", async () => {
  change((of) => ({ ...of, marking: { ...of.marking, items: [{ id: "ordinates", text: "Ordinates", marks: 4, by: "ordinates" }] } }), "scheme");
  const tops = useApp.getState().development.pieces[0]!.stations.slice(0, 8).map(({ top }) => top!);
  const line = (name: string, off: number) => [name, ...tops.map((top) => (top + off).toFixed(1))].join(",");
  const outcome = await openList(file([["Name", ...tops.map((_, k) => `Top ${k}`)].join(","), line("Ada", 0), line("Ben", 4)].join("\n")));
  expect(outcome).toEqual({ ok: true, said: "2 students read from the file." });
  render(<ListPanel />);
  await waitFor(() => expect(table().textContent).toContain("every ordinate is about 4"), { timeout: 30_000 });
  expect(table().textContent).toMatch(/Ada.*all right.*4 of 4/);
  expect(table().textContent).toMatch(/Ben.*8 of 8 off.*0 of 4/);

  await userEvent.click(screen.getByRole("button", { name: "Save as CSV" }));
  const [, , text] = vi.mocked(saveText).mock.calls.at(-1)!;
  endList();
  useSheets.setState({ all: {} });
  replaceJob(exercise);
  expect(await openList(file(text))).toEqual({ ok: true, said: "2 students read from the file." });
  expect(Object.values(useSheets.getState().all).map(({ readings }) => readings["top 0"])).toEqual([tops[0]!.toFixed(1), (tops[0]! + 4).toFixed(1)]);
});

test("a student of a class set has the piece of their code on the board, and a sheet of their own; a scheme changed there is that of the class", async () => {
  const found = variants(exerciseOf(exercise), 2);
  const codes = found.ok ? found.variants.map(({ code }) => code) : [];
  await openList(file(`Name,Code,Stretch-out\nAda,${codes[0]},280\nBen,${codes[1]},281\nCem,${codes[0]},`));
  expect(await takeStudent(row("Ben"))).toBe(true);
  render(<CheckMargin />);
  expect(useApp.getState().development.job.title).toContain(codes[1]);
  expect(screen.getByText("Ben, 2 of 3")).toBeTruthy();
  expect(screen.getByRole<HTMLInputElement>("textbox", { name: "Stretch-out" }).value).toBe("281");
  change((of) => ({ ...of, marking: { ...of.marking, tolerance: 2 } }), "rule");
  await userEvent.click(screen.getByRole("button", { name: "Next student" }));
  await waitFor(() => expect(screen.getByText("Cem, 3 of 3")).toBeTruthy());
  expect(screen.getByRole<HTMLInputElement>("textbox", { name: "Stretch-out" }).value).toBe("");
  expect(useApp.getState().development.job.marking.tolerance).toBe(2);
  await userEvent.click(screen.getByRole("button", { name: "Back to the exercise" }));
  await waitFor(() => expect(useApp.getState().development.job.exercise.ranges).toHaveLength(1));
  expect(useApp.getState().development.job.marking.tolerance).toBe(2);
});

test("a piece opened by its code is that of a student of the list, whose sheet is offered", async () => {
  const found = variants(exerciseOf(exercise), 2);
  const variant = found.ok ? found.variants[1]! : null;
  await openList(file(`Name,Code,Stretch-out\nBen,${variant!.code},281`));
  replaceJob(variantJob(variant!));
  render(<CheckMargin />);
  expect(screen.getByRole<HTMLInputElement>("textbox", { name: "Stretch-out" }).value).toBe("");
  await userEvent.click(screen.getByRole("button", { name: "Type into the sheet of Ben" }));
  await waitFor(() => expect(screen.getByRole<HTMLInputElement>("textbox", { name: "Stretch-out" }).value).toBe("281"));
});

test("the scale at which the sheets of a class were made is that of its drawings, also for a list begun before; the student's own choice stays", async () => {
  const found = variants(exerciseOf(exercise), 2);
  const [ada, ben] = found.ok ? found.variants : [];
  const half = (variant: typeof ada) => pieceTops(variant!.job).map((top) => (top / 2).toFixed(2));
  await openList(file(`Name,Code,${half(ada).map((_, k) => `Top ${k}`).join(",")}\nAda,${ada!.code},${half(ada).join(",")}\nBen,${ben!.code},${half(ben).join(",")}`));
  rememberScale(useApp.getState().development.job, 0.5);
  render(<ListPanel />);
  await waitFor(() => expect(table().textContent).toMatch(/Ada.*all right.*Ben.*all right/), { timeout: 30_000 });
  cleanup();
  await takeStudent(row("Ben"));
  render(<CheckMargin />);
  const scale = () => screen.getByRole<HTMLSelectElement>("combobox", { name: "Drawn at" });
  expect(scale().value).toBe("1:2");
  expect(screen.getByText("Its sheets were made at 1:2.")).toBeTruthy();
  await userEvent.selectOptions(scale(), "1:1");
  await userEvent.click(screen.getByRole("button", { name: "Previous student" }));
  await waitFor(() => expect(scale().value).toBe("1:2"));
  await userEvent.click(screen.getByRole("button", { name: "Next student" }));
  await waitFor(() => expect(scale().value).toBe("1:1"));
});

test("a student's piece opened from its sheet brings the scale of that sheet to a list that does not know it, but no other scheme", async () => {
  const found = variants(exerciseOf(exercise), 1);
  const variant = found.ok ? found.variants[0]! : null;
  change((of) => ({ ...of, marking: { ...of.marking, tolerance: 2 } }), "rule");
  await openList(file(`Name,Code\nAda,${variant!.code}`));
  replaceJob(onSheets(variantJob(variant!), "1:5"));
  render(<CheckMargin />);
  await userEvent.click(screen.getByRole("button", { name: "Type into the sheet of Ada" }));
  await waitFor(() => expect(screen.getByText("Ada, 1 of 1")).toBeTruthy());
  expect(useMarkingList.getState().exercise).toMatchObject({ drawing: { sheetScale: "1:5" }, marking: { tolerance: 2 } });
  expect(useApp.getState().development.job).toMatchObject({ drawing: { sheetScale: "1:5" }, marking: { tolerance: 2 } });
  replaceJob(onSheets(variantJob(variant!), "1:2"));
  expect(useMarkingList.getState().exercise).toMatchObject({ drawing: { sheetScale: "1:2" }, marking: { tolerance: 2 } });
});

test("what cannot be read and marks that cannot be given are counted in the student's line and in the file", async () => {
  change((of) => ({ ...of, marking: { ...of.marking, items: [{ id: "views", text: "Views", marks: 1, by: "eye" }] } }), "scheme");
  await openList(file("Name,Stretch-out,Top 0,Marks views\nAda,282.7,about 150,7"));
  render(<ListPanel />);
  await waitFor(() => expect(table().textContent).toContain("all right; 2 not understood"), { timeout: 30_000 });
  await userEvent.click(screen.getByRole("button", { name: "Save as CSV" }));
  const [heads = "", line = ""] = vi.mocked(saveText).mock.calls.at(-1)![2].split(/\r?\n/);
  expect(line.split(",")[heads.split(",").indexOf("Not understood")]).toBe("2");
});

test("a code of another exercise is said in its line, and nobody's piece is taken for it", async () => {
  await openList(file("Name,Code\nAda,ZZZZZ-11\n"));
  expect(await takeStudent(row("Ada"))).toBe(false);
  render(<ListPanel />);
  await waitFor(() => expect(table().textContent).toMatch(/mistyped code|code of another exercise/));
});

test("students are added by name and taken out again; the list is kept", async () => {
  render(<ListPanel />);
  await userEvent.type(screen.getByRole("textbox", { name: "Name" }), "Ada{Enter}");
  await userEvent.type(screen.getByRole("textbox", { name: "Name" }), "Ben{Enter}");
  expect(JSON.parse(localStorage.getItem("flatwright.marking") ?? "")).toMatchObject({ rows: [{ name: "Ada" }, { name: "Ben" }] });
  await userEvent.click(screen.getByRole("button", { name: "Remove Ada" }));
  expect(useMarkingList.getState().rows.map(({ name }) => name)).toEqual(["Ben"]);
  expect(useApp.getState().development.job).toEqual(exercise);
});

test("ending the list with a student's piece on the board returns to the exercise first", async () => {
  const found = variants(exerciseOf(exercise), 1);
  await openList(file(`Name,Code\nAda,${found.ok ? found.variants[0]!.code : ""}`));
  await takeStudent(row("Ada"));
  expect(useApp.getState().development.job.exercise.ranges).toHaveLength(0);
  render(<ListPanel />);
  await userEvent.click(screen.getByRole("button", { name: listWords.end }));
  await userEvent.click(screen.getByRole("button", { name: listWords.endSure }));
  await waitFor(() => expect(useMarkingList.getState().rows).toHaveLength(0));
  expect(useApp.getState().development.job.exercise.ranges).toHaveLength(1);
});

test("a list opened beside another piece takes its exercise when that comes to the board", async () => {
  const found = variants(exerciseOf(exercise), 1);
  const text = `Name,Code\nAda,${found.ok ? found.variants[0]!.code : ""}`;
  replaceJob(job);
  await openList(file(text));
  expect(await takeStudent(row("Ada"))).toBe(false);
  replaceJob(exercise);
  expect(useMarkingList.getState().exercise).toEqual(useApp.getState().development.job);
  expect(await takeStudent(row("Ada"))).toBe(true);
});
