// @vitest-environment jsdom
import { cleanup, render, screen, waitFor, within } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test } from "vitest";
import { Description } from "../../../src/app/description/Description";
import { useTouch } from "../../../src/app/screen/touch";
import { replaceJob } from "../../../src/app/store/changes";
import { say, useApp } from "../../../src/app/store/store";
import { hole, pipeWith, slant } from "../pipe";

const job = () => useApp.getState().development.job;
const ids = () => job().part.cuts.map((cut) => cut.id);

beforeEach(() => {
  replaceJob(pipeWith([slant, hole]));
  say(null);
  useTouch.setState({ touched: true });
  render(<Description />);
});
afterEach(cleanup);

async function verb(group: string, name: string) {
  await userEvent.click(await screen.findByRole("button", { name: `${group}, more: move, copy, switch off, remove` }));
  await userEvent.click(within(screen.getByRole("group", { name: group })).getByRole("button", { name }));
}

test("every clause is a named group of labelled fields", () => {
  expect(screen.getAllByRole("group").map((group) => group.getAttribute("aria-label"))).toEqual(["The pipe", "Slanted end", "Round opening", "Sheet", "Seam", "Stations"]);
  for (const field of [...screen.getAllByRole("textbox"), ...screen.getAllByRole("combobox")]) expect(field.getAttribute("aria-label") ?? field.closest("label")).toBeTruthy();
});

test("a choice changes the job", async () => {
  await userEvent.selectOptions(screen.getByRole("combobox", { name: "Side it faces" }), "right");
  expect(job().part.cuts[1]).toMatchObject({ direction: 90 });
});

test("choosing an angle for a side shows it in figures, ready to be typed over", async () => {
  await userEvent.selectOptions(screen.getByRole("combobox", { name: "Side it faces" }), "an angle");
  const figure = screen.getByRole<HTMLInputElement>("textbox", { name: "Direction from the front" });
  expect(figure.value).toBe("270");
  await userEvent.clear(figure);
  await userEvent.type(figure, "95{Enter}");
  await waitFor(() => expect(job().part.cuts[1]).toMatchObject({ direction: 95 }));
});

test("a cut is added from the menu, and the new clause is there to be edited", async () => {
  await userEvent.click(screen.getByRole("button", { name: "Add a cut or an opening" }));
  await userEvent.click(screen.getByRole("button", { name: "Slot" }));
  expect(await screen.findByRole("group", { name: "Slot" })).toBeTruthy();
  expect(ids()).toEqual(["slope", "branch", "slot"]);
});

test("the verbs of a clause move, copy, switch off and remove its cut", async () => {
  await verb("Slanted end", "Move down");
  await waitFor(() => expect(ids()).toEqual(["branch", "slope"]));
  await verb("Slanted end", "Switch off");
  await waitFor(() => expect(job().part.cuts[1]?.on).toBe(false));
  await verb("Slanted end", "Remove");
  await waitFor(() => expect(ids()).toEqual(["branch"]));
  await verb("Round opening", "Copy");
  await waitFor(() => expect(ids()).toEqual(["branch", "branch-2"]));
});

test("Escape closes a menu and gives the focus back", async () => {
  const opener = screen.getByRole("button", { name: "Add a cut or an opening" });
  await userEvent.click(opener);
  await userEvent.keyboard("{Escape}");
  expect(opener.getAttribute("aria-expanded")).toBe("false");
  expect(document.activeElement).toBe(opener);
});

test("a cut that misses is said at its clause", async () => {
  const height = within(screen.getByRole("group", { name: "Round opening" })).getByRole("textbox", { name: "Height of its centre" });
  await userEvent.clear(height);
  await userEvent.type(height, "900{Enter}");
  expect(await within(screen.getByRole("group", { name: "Round opening" })).findByText("This misses the pipe: nothing is cut.")).toBeTruthy();
});

test("the clause that has the focus is in hand", async () => {
  await userEvent.click(screen.getByRole("combobox", { name: "Place of the seam" }));
  expect(useApp.getState().clause).toBe("seam");
});
