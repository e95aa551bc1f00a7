// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test } from "vitest";
import { Description } from "../../../src/app/description/Description";
import { useSettings } from "../../../src/app/store/settings";
import { replaceJob } from "../../../src/app/store/changes";
import { say, useApp } from "../../../src/app/store/store";
import { hole, pipeWith, slant } from "../pipe";

const diameter = () => screen.getByRole<HTMLInputElement>("textbox", { name: "Diameter" });
const job = () => useApp.getState().development.job;

beforeEach(() => {
  useSettings.setState({ comma: false, denominator: 0 });
  replaceJob(pipeWith([slant, hole]));
  say(null);
  render(<Description />);
});
afterEach(cleanup);

async function type(text: string, end = "{Enter}") {
  await userEvent.clear(diameter());
  await userEvent.type(diameter(), text + end);
}

test.each([
  ["180-2*45+10", 100],
  ["1 3/8 in", 34.925],
  ["92,5", 92.5],
  ["9 cm", 90],
])("a length field takes %s", async (text, value) => {
  await type(text);
  await waitFor(() => expect(job().part.diameter).toBeCloseTo(value, 9));
});

test("Enter makes the change and the field shows it in the job's units", async () => {
  await type("4 in");
  await waitFor(() => expect(diameter().value).toBe("101.6"));
});

test("leaving the field makes the change", async () => {
  await type("95", "{Tab}");
  await waitFor(() => expect(job().part.diameter).toBe(95));
});

test("Escape takes the text back", async () => {
  await type("9x", "{Escape}");
  expect(diameter().value).toBe("90");
  expect(job().part.diameter).toBe(90);
});

test("arrow keys step by one, with Shift by ten", async () => {
  for (const [keys, value] of [["{ArrowUp}", 91], ["{ArrowUp}", 92], ["{Shift>}{ArrowDown}{/Shift}", 82]] as const) {
    await userEvent.type(diameter(), keys);
    await waitFor(() => expect(job().part.diameter).toBe(value));
  }
});

test("text that is no quantity stays with its reason at the field, and the job stays", async () => {
  await type("9o");
  await screen.findByRole("alert");
  expect(diameter().value).toBe("9o");
  expect(diameter().getAttribute("aria-invalid")).toBe("true");
  expect(screen.getByRole("alert").id).toBe(diameter().getAttribute("aria-describedby"));
  expect(job().part.diameter).toBe(90);
});

test.each([
  ["0", "At least 1 mm."],
  ["-5", "At least 1 mm."],
  ["1e9", "At most 20000 mm."],
  ["1/0", "This has no finite result."],
  ["", "Type a number."],
])("a diameter of “%s” is refused in words", async (text, sentence) => {
  await type(text);
  await waitFor(() => expect(screen.getByRole("alert").textContent).toBe(sentence));
});

test("a mended field loses its fault", async () => {
  await type("-5");
  await screen.findByRole("alert");
  await type("88");
  await waitFor(() => expect(screen.queryByRole("alert")).toBeNull());
  expect(job().part.diameter).toBe(88);
});

test("a value that waits is made when another field lets it", async () => {
  const sheet = screen.getByRole("textbox", { name: "Sheet thickness" });
  await userEvent.clear(sheet);
  await userEvent.type(sheet, "50{Enter}");
  await waitFor(() => expect(screen.getByRole("alert").textContent).toBe("The sheet leaves no bore: under 45 mm."));
  await type("120");
  await waitFor(() => expect(job().part).toMatchObject({ diameter: 120, thickness: 50 }));
});

test("a count that is not whole is refused", async () => {
  const stations = screen.getByRole("textbox", { name: "Number of stations" });
  await userEvent.clear(stations);
  await userEvent.type(stations, "12.5{Enter}");
  await waitFor(() => expect(screen.getByRole("alert").textContent).toBe("A whole number is needed."));
});
