// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen } from "@testing-library/react";
import { afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { replaceJob } from "../../../../src/app/store/changes";
import { useSettings } from "../../../../src/app/store/settings";
import { chooseSheets, initialChoices, useSheets } from "../../../../src/app/teach/sheets/sheetChoices";
import { SheetsPart } from "../../../../src/app/teach/sheets/SheetsPart";
import { pipeWith, slant } from "../../pipe";

const begin = () => {
  replaceJob(pipeWith([slant]));
  render(<SheetsPart />);
};
const patience = { timeout: 20_000 };
const verb = () => screen.getByText<HTMLButtonElement>("Save as PDF");
const laidOut = () => screen.findByText("Question:", {}, patience);

// The words of faults come later on the page; here they are there before they are asked for.
beforeAll(() => import("../../../../src/app/screen/FaultWords"));

beforeEach(() => {
  localStorage.clear();
  useSettings.setState({ comma: false, denominator: 0 });
  chooseSheets({ ...initialChoices, paper: "A3" });
});
afterEach(cleanup);

test("the sheets chosen are laid out, told and shown before anything is made", async () => {
  begin();
  expect(verb().disabled).toBe(true);
  await laidOut();
  expect(screen.getByText(/1 page of A3, drawn 1:/)).toBeTruthy();
  expect(screen.getAllByLabelText(/^Key, page \d$/).length).toBeGreaterThan(0);
  expect(verb().disabled).toBe(false);
}, 30_000);

test("the teacher's words and the school's block go on the sheets and are kept on the device", async () => {
  begin();
  fireEvent.change(screen.getByLabelText("What is to be done"), { target: { value: "Develop the vent.\nNo rubbing out." } });
  fireEvent.change(screen.getByLabelText("School"), { target: { value: "Harbour Road" } });
  await laidOut();
  for (const text of ["Develop the vent.", "No rubbing out.", "Harbour Road"]) expect((await screen.findAllByText(text, { selector: "text *, text" }, patience)).length).toBeGreaterThan(0);
  expect(JSON.parse(localStorage.getItem("flatwright.sheets") ?? "{}")).toMatchObject({ school: "Harbour Road", task: "Develop the vent.\nNo rubbing out." });
  fireEvent.click(screen.getByText("The usual words"));
  expect(useSheets.getState().task).toBeNull();
}, 60_000);

test("a scale that does not fit is said at its sheet and nothing is made", async () => {
  chooseSheets({ scale: 10, kinds: ["question"] });
  begin();
  expect(await screen.findByRole("alert", {}, patience)).toBeTruthy();
  expect(verb().disabled).toBe(true);
}, 30_000);

test("without a kind of sheet there is nothing to make", async () => {
  chooseSheets({ kinds: [] });
  begin();
  expect(await screen.findByText("Choose at least one kind of sheet.", {}, patience)).toBeTruthy();
  expect(verb().disabled).toBe(true);
});
