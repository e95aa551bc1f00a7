// @vitest-environment jsdom
import { act, cleanup, configure, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { ClassPart } from "../../../src/app/class/ClassPart";
import { chooseCount, takeListText, useClassList } from "../../../src/app/class/classList";
import { fetchChanges } from "../../../src/app/store/changing";
import { replaceJob } from "../../../src/app/store/changes";
import { useApp } from "../../../src/app/store/store";
import { classHelp } from "../../../src/app/words/help/class";
import type { Job } from "../../../src/core/index";
import { hole, pipeWith, slant } from "../pipe";

// The search takes its time where other tests run beside this one.
configure({ asyncUtilTimeout: 15_000 });

beforeEach(async () => {
  localStorage.clear();
  await fetchChanges();
  replaceJob(pipeWith([slant, hole]));
  chooseCount(30);
});

afterEach(cleanup);

const exercise = () => useApp.getState().development.job.exercise;
const box = (name: string) => screen.getByRole<HTMLInputElement>("checkbox", { name });
const type = (name: string, text: string) => {
  const field = screen.getByRole<HTMLInputElement>("textbox", { name });
  fireEvent.change(field, { target: { value: text } });
  fireEvent.blur(field);
};
const settled = (what: () => void) => act(async () => {
  what();
  await Promise.resolve();
});
const verb = (name: string) => screen.getByRole<HTMLButtonElement>("button", { name });
const withRanges = (ranges: Job["exercise"]["ranges"], keeps: Partial<Job["exercise"]["keeps"]> = {}): Job => {
  const job = pipeWith([slant]);
  return { ...job, exercise: { ...job.exercise, ranges, keeps: { ...job.exercise.keeps, ...keeps } } };
};

describe("what differs", () => {
  test("is ticked, typed in any quantity, and taken out again", () => {
    render(<ClassPart />);
    fireEvent.click(box("The pipe: Diameter"));
    expect(exercise().ranges).toEqual([{ field: "part.diameter", from: 70, to: 110, step: 5 }]);
    type("The pipe: Diameter, from", "3.5 in");
    type("The pipe: Diameter, step", "2");
    expect(exercise().ranges).toEqual([{ field: "part.diameter", from: expect.closeTo(88.9, 9) as number, to: 110, step: 2 }]);
    fireEvent.click(box("The pipe: Diameter"));
    expect(exercise().ranges).toEqual([]);
  });

  test("keeps to its cut by the cut's name", () => {
    render(<ClassPart />);
    fireEvent.click(box("Slanted end: Angle from square"));
    expect(exercise().ranges[0]?.field).toBe("part.cuts.slope.angle");
  });

  test("that makes no sense is said at its number", async () => {
    replaceJob(withRanges([{ field: "part.diameter", from: 110, to: 70, step: 5 }]));
    render(<ClassPart />);
    expect(screen.getByText("“From” must not be more than “to”.")).toBeDefined();
    type("The pipe: Diameter, step", "0");
    expect(await screen.findByText("At least 0.001 mm.")).toBeDefined();
    expect(verb("Questions (PDF)").disabled).toBe(true);
  });

  test("of a cut that has gone is offered to be left out", () => {
    replaceJob(withRanges([{ field: "part.cuts.gone.angle", from: 20, to: 45, step: 5 }]));
    render(<ClassPart />);
    fireEvent.click(verb("Leave it out"));
    expect(exercise().ranges).toEqual([]);
  });

  test("are seams and hands too", () => {
    render(<ClassPart />);
    fireEvent.click(box("back"));
    fireEvent.click(box("front"));
    fireEvent.click(box("opposite"));
    expect(exercise()).toMatchObject({ seams: [{ at: "back" }, { at: "front" }], hands: ["opposite"] });
  });

  test("keeps to what is asked of every piece", () => {
    render(<ClassPart />);
    fireEvent.click(box("Least ordinate"));
    type("Least ordinate", "25");
    fireEvent.click(box("The flat pattern fits, at full size, into"));
    type("Width of the room", "400");
    fireEvent.click(box("Cuts go through their own end only; openings keep clear of ends and of each other"));
    expect(exercise().keeps).toEqual({ inside: false, ordinate: 25, sheet: { width: 400, height: 240 } });
  });
});

describe("how many pieces there are", () => {
  test("is said exactly where all ways are tried", async () => {
    replaceJob(withRanges([{ field: "part.cuts.slope.angle", from: 20, to: 45, step: 0.5 }]));
    render(<ClassPart />);
    expect(await screen.findByText("51 pieces that differ in their answers, of 51 ways to choose.")).toBeDefined();
    expect(verb("Questions (PDF)").disabled).toBe(false);
  });

  test("is said as a least number where there are very many", async () => {
    replaceJob(withRanges([{ field: "part.cuts.slope.angle", from: 20, to: 45, step: 0.01 }, { field: "part.diameter", from: 80, to: 90, step: 0.1 }]));
    chooseCount(2);
    render(<ClassPart />);
    expect(await screen.findByText(/^At least 102 pieces .* of 252.601 ways to choose\.$/)).toBeDefined();
  });

  test("is too few: which constraint fails is said, and nothing can be made", async () => {
    replaceJob(withRanges([{ field: "part.cuts.slope.height", from: 200, to: 260, step: 2 }]));
    render(<ClassPart />);
    expect(await screen.findByText(/Only 11 for 30 students/)).toBeDefined();
    expect(screen.getByText("20 had a cut or an opening that does not stay in its place")).toBeDefined();
    expect(verb("Answers (CSV)").disabled).toBe(true);
  });

  test("is none: an ordinate that no piece reaches is named", async () => {
    replaceJob(withRanges([{ field: "part.diameter", from: 80, to: 120, step: 1 }], { ordinate: 200 }));
    render(<ClassPart />);
    expect(await screen.findByText("41 had an ordinate too short")).toBeDefined();
  });

  test("stays while all get other dimensions", async () => {
    replaceJob(withRanges([{ field: "part.cuts.slope.angle", from: 20, to: 45, step: 0.5 }]));
    render(<ClassPart />);
    await screen.findByText(/^51 pieces/);
    const before = screen.getByRole("table").textContent;
    fireEvent.click(verb("Other dimensions for all"));
    expect(exercise().seed).toBe(2);
    await waitFor(() => expect(screen.getByRole("table").textContent).not.toBe(before));
  });
});

describe("every field", () => {
  test("has its explanation, said when it is in hand and fields are explained, and there is no other", async () => {
    replaceJob(withRanges([{ field: "part.diameter", from: 80, to: 120, step: 1 }], { ordinate: 20, sheet: { width: 380, height: 240 } }));
    const { container } = render(<ClassPart />);
    const fields = () => [...container.querySelectorAll<HTMLElement>("input:not([type=file]), select, textarea")];
    const nameOf = (field: HTMLElement) => field.closest<HTMLElement>("[data-help]")?.dataset["help"] ?? `none: ${field.outerHTML}`;
    const names = new Set(fields().map(nameOf));
    await act(() => takeListText("Name,Class\nAda Winter,3b"));
    fields().forEach((field) => names.add(nameOf(field)));
    expect([...names].sort()).toEqual(Object.keys(classHelp).sort());
    fireEvent.click(verb("Explain"));
    fireEvent.focusIn(screen.getByLabelText("Code on the sheet"));
    expect(screen.getByRole("complementary").textContent).toContain("It stands for the piece as long as the exercise stays as it is");
    fireEvent.click(verb("Explain"));
    expect(screen.queryByRole("complementary")).toBeNull();
  });
});

describe("the class", () => {
  test("is pasted, counted, and forgotten", async () => {
    render(<ClassPart />);
    fireEvent.change(screen.getByPlaceholderText(/^Names, one a line/), { target: { value: "Name,Class\nAda Winter,3b\nAda Winter,3b\n王芳,3b" } });
    await settled(() => fireEvent.click(verb("Take these names")));
    await screen.findByText("3 students");
    expect(screen.getByText(/^In the list more than once: Ada Winter\./)).toBeDefined();
    expect(screen.getByText(/no letters for: 王芳\./)).toBeDefined();
    fireEvent.click(verb("Forget the list"));
    expect(useClassList.getState().rows).toEqual([]);
  });

  test("that cannot be read is refused with its reason", async () => {
    render(<ClassPart />);
    fireEvent.change(screen.getByPlaceholderText(/^Names, one a line/), { target: { value: 'Ada\n"Bo\nCy' } });
    await settled(() => fireEvent.click(verb("Take these names")));
    expect(await screen.findByText(/^Line 2: a quotation mark is not closed/)).toBeDefined();
  });

  test("is shown with its codes, and a code typed opens its piece", async () => {
    replaceJob(withRanges([{ field: "part.cuts.slope.angle", from: 20, to: 45, step: 0.5 }]));
    await takeListText("Ada Winter\nBo Sommer");
    render(<ClassPart />);
    const table = await screen.findByRole("table");
    const row = within(table).getByText("Bo Sommer").closest("tr");
    const code = row?.querySelector(".code")?.textContent ?? "";
    fireEvent.change(screen.getByLabelText("Code on the sheet"), { target: { value: `${code}Z` } });
    await settled(() => fireEvent.submit(screen.getByLabelText("Code on the sheet")));
    expect(screen.getByRole("alert").textContent).toMatch(/letter of this code is wrong/);
    fireEvent.change(screen.getByLabelText("Code on the sheet"), { target: { value: code } });
    await settled(() => fireEvent.submit(screen.getByLabelText("Code on the sheet")));
    await waitFor(() => expect(useApp.getState().development.job.title).toBe(`Vent, ${code}`));
  });
});

describe("the address in the codes", () => {
  test("of this machine alone is told, one that is none bars the sheets", async () => {
    replaceJob(withRanges([{ field: "part.cuts.slope.angle", from: 20, to: 45, step: 0.5 }]));
    render(<ClassPart />);
    await screen.findByText(/^51 pieces/);
    expect(screen.getByText(/^This address is of this machine alone/)).toBeDefined();
    const field = screen.getByRole("textbox", { name: "Address of this program in it" });
    fireEvent.change(field, { target: { value: "javascript:alert(1)" } });
    expect(screen.getByRole("alert").textContent).toMatch(/^This is no web address/);
    expect(verb("Questions (PDF)").disabled).toBe(true);
    expect(verb("Answers (CSV)").disabled).toBe(false);
    fireEvent.change(field, { target: { value: "https://school.example/pipes/" } });
    expect(screen.queryByRole("alert")).toBeNull();
  });
});
