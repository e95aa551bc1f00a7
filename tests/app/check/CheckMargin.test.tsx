// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test } from "vitest";
import { CheckMargin } from "../../../src/app/check/CheckMargin";
import { useSheets } from "../../../src/app/check/sheets";
import { useSettings } from "../../../src/app/store/settings";
import { writeJobText, type Job } from "../../../src/core/index";
import { replaceJob } from "../../../src/app/store/changes";
import { useApp } from "../../../src/app/store/store";
import { hole, pipeWith, slant } from "../pipe";

const field = (name: string) => screen.getByRole<HTMLInputElement>("textbox", { name });
const tops = () => useApp.getState().development.pieces[0]!.stations.map(({ top }) => top!);

beforeEach(() => {
  localStorage.clear();
  useSettings.setState({ comma: false, denominator: 0 });
  useSheets.setState({ all: {}, last: null, keeps: true, student: null });
  replaceJob(pipeWith([slant]));
  render(<CheckMargin />);
});
afterEach(cleanup);

test("Enter goes to the next field, and what is read is said to be right", async () => {
  await userEvent.type(field("Stretch-out"), "282.5{Enter}17.5{Enter}35{Enter}157{Enter}159.5{Enter}");
  expect(document.activeElement).toBe(field("Station 2"));
  expect(screen.getByText(/All 5 readings are right within 1 mm/)).toBeTruthy();
});

test("a pasted column is checked, and the mistake named", async () => {
  const column = tops().map((top, k) => (top + 4 + (k % 2) * 0.3).toFixed(1)).join("\n");
  await userEvent.click(field("Station 0"));
  await userEvent.paste(column);
  expect(field("Station 15").value).toBe((tops()[15]! + 4.3).toFixed(1));
  await waitFor(() => expect(screen.getByText(/every ordinate is about 4\.1 mm too long/)).toBeTruthy());
});

test("what is named as likely is not named again among what would not have shown", async () => {
  replaceJob(pipeWith([slant, hole]));
  await screen.findByText("Opening");
  await userEvent.click(field("Stretch-out"));
  await userEvent.paste(["282.7", "17.7", "35", ...tops().map((_, k) => tops()[(k + 8) % 16]!.toFixed(1))].join("\n"));
  await waitFor(() => expect(screen.getByText(/these fit alike.*the cut faces the other way/)).toBeTruthy());
  expect(screen.getByText(/Would not have shown/).textContent).not.toContain("faces another way");
});

test("too many rows are said, a bad number stays in its field, and all is kept in the browser", async () => {
  await userEvent.click(field("Station 0 again"));
  await userEvent.paste("157x\n158\n159");
  expect(screen.getByText(/no field for the last 2 cells: 158; 159/)).toBeTruthy();
  expect(field("Station 0 again").value).toBe("157x");
  expect(field("Station 0 again").getAttribute("aria-invalid")).toBe("true");
  expect(localStorage.getItem("flatwright.readings")).toContain("157x");
});

test("station numbers beside the ordinates are no readings; how commas were read is said and turned round, and a paste is taken back", async () => {
  await userEvent.type(field("Station 1"), "12");
  await userEvent.click(field("Stretch-out"));
  await userEvent.paste("Station\tOrdinate\n0\t1,250\n1\t1,275\n2\t1,310");
  expect([0, 1, 2, 3].map((k) => field(`Station ${k}`).value)).toEqual(["1,250", "1,275", "1,310", ""]);
  expect(field("Stretch-out").value).toBe("");
  expect(screen.getByText(/3 cells taken.*heading “Station; Ordinate” was left out.*names the stations: each.*parting decimals: “1,250” is 1.25/)).toBeTruthy();
  await userEvent.click(screen.getByRole("button", { name: "Read the commas as parting thousands" }));
  expect([0, 1, 2].map((k) => field(`Station ${k}`).value)).toEqual(["1250", "1275", "1310"]);
  await userEvent.type(field("Station 3"), "9");
  await userEvent.click(screen.getByRole("button", { name: "Take the paste back" }));
  expect([0, 1, 2, 3].map((k) => field(`Station ${k}`).value)).toEqual(["", "12", "", "9"]);
  expect(screen.queryByRole("button", { name: "Take the paste back" })).toBeNull();
});

test("a paste of a hundred thousand lines is taken as far as there are fields", async () => {
  await userEvent.click(field("Station 15"));
  await userEvent.paste(Array.from({ length: 100_000 }, (_, i) => String(i)).join("\n"));
  expect(field("Station 0 again").value).toBe("1");
  expect(screen.getByText(/no field for the last 99998 cells/)).toBeTruthy();
});

test("another title, other units or another scheme leave the readings where they are, in whatever order the fields of the job were made", async () => {
  await userEvent.type(field("Station 0"), "157");
  const job = useApp.getState().development.job;
  replaceJob({ ...(JSON.parse(writeJobText(job)) as Job), title: "Another", marking: { ...job.marking, tolerance: 2 } });
  await waitFor(() => expect(field("Station 0").value).toBe("157"));
});

test("another piece begins an empty sheet; the readings before can be brought over and are there again with their piece", async () => {
  await userEvent.type(field("Station 0"), "157");
  replaceJob(pipeWith([{ ...slant, angle: 40 } as typeof slant]));
  await waitFor(() => expect(field("Station 0").value).toBe(""));
  replaceJob(pipeWith([slant]));
  await waitFor(() => expect(field("Station 0").value).toBe("157"));
  replaceJob(pipeWith([{ ...slant, angle: 41 } as typeof slant]));
  await userEvent.click(await screen.findByRole("button", { name: "Bring over the readings of the piece before" }));
  expect(field("Station 0").value).toBe("157");
});

test("more marks than an item has are refused with the reason, kept in their field and not counted", async () => {
  cleanup();
  const job = pipeWith([slant]);
  replaceJob({ ...job, marking: { ...job.marking, items: [{ id: "views", text: "Views", marks: 1, by: "eye" }, { id: "lines", text: "Lines", marks: 2, by: "eye" }] } });
  render(<CheckMargin />);
  await userEvent.type(field("Marks: Views"), "7");
  await userEvent.type(field("Marks: Lines"), "2");
  expect(field("Marks: Views").value).toBe("7");
  expect(field("Marks: Views").getAttribute("aria-invalid")).toBe("true");
  expect((await screen.findByRole("alert")).textContent).toBe("Only 1 can be given here: this is not counted.");
  expect(screen.getByText(/2 of 2 marks\./).textContent).toMatch(/1 more are still to be given\.\s+One field of marks is not counted\./);
});
