// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { CheckMargin } from "../../../src/app/check/CheckMargin";
import { useSheets } from "../../../src/app/check/sheets";
import { useLaid } from "../../../src/app/photo/laid";
import { usePhoto, type Photo } from "../../../src/app/photo/photo";
import { readingAfresh, useReadingOff } from "../../../src/app/photo/readingOff";
import { replaceJob } from "../../../src/app/store/changes";
import { overA3, photographed } from "../../support/pinholeCamera";
import { pipeWith, slant } from "../pipe";

// The worker is not here: what it would answer is put in its place.
vi.mock("../../../src/app/photo/pictureDesk", () => ({
  askToOpen: (file: File) => Promise.resolve(file.name.endsWith(".txt") ? { number: 1, kind: "fault", fault: { kind: "not-a-picture" } } : { number: 1, kind: "opened", blob: new Blob(), width: 4000, height: 3000 }),
  askToRectify: () => Promise.resolve({ number: 2, kind: "rectified", blob: new Blob() }),
  endPictureDesk: () => undefined,
}));

const empty: Partial<Photo> = usePhoto.getState();
const places = Object.fromEntries([{ x: 0, y: 0 }, { x: 282.74, y: 0 }, { x: 282.74, y: 220 }, { x: 0, y: 220 }].map((corner, i) => [`corner-${i}`, photographed(overA3, corner)]));
const file = () => screen.getByLabelText<HTMLInputElement>(/JPEG, PNG or WebP/);
const field = (name: string) => screen.getByRole<HTMLInputElement>("textbox", { name });

beforeEach(() => {
  URL.createObjectURL = () => "blob:picture";
  URL.revokeObjectURL = () => undefined;
  useSheets.setState({ all: {}, last: null, keeps: true, student: null });
  usePhoto.setState(empty);
  useLaid.setState({ wanted: false, picture: null, making: false });
  useReadingOff.setState(readingAfresh);
  replaceJob(pipeWith([slant]));
  render(<CheckMargin />);
});
afterEach(cleanup);

test("a file that is no picture is said by its name, and what was typed stays", async () => {
  await userEvent.type(field("Station 0"), "157");
  await userEvent.upload(file(), new File(["words"], "notes.txt", { type: "image/png" }));
  expect(await screen.findByText("“notes.txt” was not opened. It is no JPEG, PNG or WebP picture.")).toBeTruthy();
  expect(field("Station 0").value).toBe("157");
});

test("a picture says what is still to be marked, and when it is marked and laid, whose turn it is", async () => {
  await userEvent.upload(file(), new File(["x"], "drawing.jpg", { type: "image/jpeg" }));
  expect(await screen.findByText("4 more points are to be placed.")).toBeTruthy();
  usePhoto.setState({ places });
  expect(await screen.findByText(/Four points always agree/)).toBeTruthy();
  useLaid.setState({ wanted: true });
  expect(await screen.findByText(/Station 0 is next: press on the board/)).toBeTruthy();
  await userEvent.click(screen.getByRole("button", { name: "Skip" }));
  expect(screen.getByText(/Station 1 is next/)).toBeTruthy();
});

test("the picture of one student is not read for another", async () => {
  await userEvent.upload(file(), new File(["x"], "drawing.jpg", { type: "image/jpeg" }));
  await screen.findByText("drawing.jpg");
  useSheets.setState({ student: { id: "7", piece: "another" } });
  await waitFor(() => expect(screen.queryByText("drawing.jpg")).toBeNull());
  expect(usePhoto.getState().picture).toBeNull();
});
