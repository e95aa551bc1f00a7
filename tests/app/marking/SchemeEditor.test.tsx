// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test } from "vitest";
import { readyItems, readySchemes } from "../../../src/app/marking/readySchemes";
import { SchemeEditor } from "../../../src/app/marking/SchemeEditor";
import { replaceJob, undo } from "../../../src/app/store/changes";
import { useSettings } from "../../../src/app/store/settings";
import { useApp } from "../../../src/app/store/store";
import { parseJob } from "../../../src/core/index";
import { TRADE } from "../../../src/drawing/tradeWords";
import { pipeWith, slant } from "../pipe";

const marking = () => useApp.getState().development.job.marking;

beforeEach(() => {
  localStorage.clear();
  useSettings.setState({ comma: false, denominator: 0 });
  replaceJob(pipeWith([slant]));
  render(<SchemeEditor />);
});
afterEach(cleanup);

test("a ready scheme is begun with, changed and taken back", async () => {
  await userEvent.click(screen.getByRole("button", { name: "Start from" }));
  await userEvent.click(screen.getByRole("button", { name: "a whole sheet, 15 marks" }));
  await waitFor(() => expect(screen.getByText("15 marks in all.")).toBeTruthy());
  const [first] = marking().items;
  const field = screen.getByRole<HTMLInputElement>("textbox", { name: `Marks: ${first!.text}` });
  await userEvent.clear(field);
  await userEvent.type(field, "4.5{Enter}");
  await waitFor(() => expect(marking().items[0]!.marks).toBe(4.5));
  await userEvent.selectOptions(screen.getByRole("combobox", { name: `Given or taken off: ${first!.text}` }), "off");
  await waitFor(() => expect(marking().items[0]!.marks).toBe(-4.5));
  undo();
  expect(marking().items[0]!.marks).toBe(4.5);
});

test("items are added, worded, moved up and removed", async () => {
  await userEvent.click(screen.getByRole("button", { name: "Add an item" }));
  await userEvent.click(screen.getByRole("button", { name: "Add an item" }));
  await waitFor(() => expect(marking().items).toHaveLength(2));
  await userEvent.type(screen.getAllByRole("textbox", { name: "What the marks are for" })[1]!, "Hidden edges{Enter}");
  await waitFor(() => expect(marking().items[1]!.text).toBe("Hidden edges"));
  await userEvent.click(screen.getByRole("button", { name: "Up: Hidden edges" }));
  expect(marking().items.map(({ text }) => text)).toEqual(["Hidden edges", ""]);
  await userEvent.click(screen.getByRole("button", { name: "Remove: Hidden edges" }));
  expect(marking().items.map(({ id }) => id)).toEqual(["item-1"]);
});

test("what is allowed is held within its range, and the text stays where it is wrong", async () => {
  const field = screen.getByRole<HTMLInputElement>("textbox", { name: "What lengths may be off by" });
  await userEvent.clear(field);
  await userEvent.type(field, "0{Enter}");
  await waitFor(() => expect(field.getAttribute("aria-invalid")).toBe("true"));
  expect(field.value).toBe("0");
  expect(marking().tolerance).toBe(1);
});

test("every ready scheme is one a job may hold, in both ways of speaking; the whole sheet has 15 marks", () => {
  for (const name of readySchemes) for (const trade of Object.values(TRADE)) {
    const items = readyItems(name, trade);
    const job = pipeWith([slant]);
    expect(parseJob({ ...job, marking: { ...job.marking, items } })).toMatchObject({ ok: true });
    expect(items.every(({ text }) => text !== "")).toBe(true);
  }
  expect(readyItems("fifteen", TRADE["stretch-out"]).reduce((sum, { marks }) => sum + marks, 0)).toBe(15);
});
