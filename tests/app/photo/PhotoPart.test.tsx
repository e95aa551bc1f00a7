// @vitest-environment jsdom
import { act, cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { CheckMargin } from "../../../src/app/check/CheckMargin";
import { emptySheet } from "../../../src/app/check/sheet";
import { pieceKey, useSheets } from "../../../src/app/check/sheets";
import { useLaid } from "../../../src/app/photo/laid";
import { usePhoto, type Photo } from "../../../src/app/photo/photo";
import { pressedAt } from "../../../src/app/photo/readFromBoard";
import { readingAfresh, rowsRead, useReadingOff } from "../../../src/app/photo/readingOff";
import { checkOf } from "../../../src/app/check/useCheck";
import { formatOf } from "../../../src/app/quantity/format";
import { replaceJob } from "../../../src/app/store/changes";
import { useApp } from "../../../src/app/store/store";
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
  // The lens is not looked for: half a millimetre and more on a drawing of nearly A3's size.
  expect(screen.getByText(/true to about 0\.[34]\d* mm at its worst place, .*For 0\.3 mm, mark more points, six or more/)).toBeTruthy();
  useLaid.setState({ wanted: true });
  expect(await screen.findByText(/Station 0 is next: press on the board/)).toBeTruthy();
  await userEvent.click(screen.getByRole("button", { name: "Skip" }));
  expect(screen.getByText(/Station 1 is next/)).toBeTruthy();
});

test("after the last station none is next: what was left out is named, and Back goes to the last", async () => {
  await userEvent.upload(file(), new File(["x"], "drawing.jpg", { type: "image/jpeg" }));
  await screen.findByText("drawing.jpg");
  usePhoto.setState({ places });
  useLaid.setState({ wanted: true });
  await screen.findByText(/Station 0 is next/);
  const { job, pieces: [piece] } = useApp.getState().development;
  const now = () => checkOf(job, piece!, useSheets.getState().all[pieceKey(job)] ?? emptySheet);
  const { rows, line } = rowsRead(now().places, null);
  const format = formatOf("mm", { places: 2, denominator: 0, comma: false });
  for (const [k, { at }] of rows.entries()) if (k !== 3 && k !== 7) act(() => pressedAt(now(), line, rows, { x: (at * 282.74) / 16, y: 100 + k }, format));
  expect(screen.getByText("The last station has had its turn. Not read yet: Station 3, Station 7.")).toBeTruthy();
  expect(screen.queryByText(/is next/)).toBeNull();
  for (const k of [3, 7]) act(() => pressedAt(now(), line, rows, { x: (k * 282.74) / 16, y: 100 + k }, format));
  expect(screen.getByText(/The last station is read, and none is missing/)).toBeTruthy();
  expect(field("Station 0 again").value).toBe("116");
  await userEvent.click(screen.getByRole("button", { name: "Back" }));
  expect(screen.getByText(/Station 0 again is next/)).toBeTruthy();
});

test("the picture of one student is not read for another", async () => {
  await userEvent.upload(file(), new File(["x"], "drawing.jpg", { type: "image/jpeg" }));
  await screen.findByText("drawing.jpg");
  useSheets.setState({ student: { id: "7", piece: "another" } });
  await waitFor(() => expect(screen.queryByText("drawing.jpg")).toBeNull());
  expect(usePhoto.getState().picture).toBeNull();
});
