// @vitest-environment jsdom
import { cleanup, fireEvent, render, screen, waitFor, within } from "@testing-library/react";
import { afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { choose, useOutput } from "../../../src/app/output/choices";
import { OutputPanel } from "../../../src/app/output/OutputPanel";
import { usePrinters } from "../../../src/app/output/printers";
import { usePdfJob } from "../../../src/app/print/pdfJob";
import { replaceJob } from "../../../src/app/store/changes";
import { useSettings } from "../../../src/app/store/settings";
import type { FabricationChoices } from "../../../src/core/index";
import { hole, pipeWith, slant } from "../pipe";

const begin = (fabrication: Partial<FabricationChoices> = {}) => {
  const job = pipeWith([slant, hole], { thickness: 1 });
  replaceJob({ ...job, fabrication: { ...job.fabrication, ...fabrication } });
  render(<OutputPanel />);
};
// Found by label and text: roles take long among so many lines of drawing.
const patience = { timeout: 8000 };
const field = (name: string) => screen.getByLabelText<HTMLInputElement>(name);
const type = (name: string, text: string) => {
  fireEvent.change(field(name), { target: { value: text } });
  fireEvent.keyDown(field(name), { key: "Enter" });
};
const verb = () => screen.getByText<HTMLButtonElement>(/^Save as/);

// The words of faults come later on the page; here they are there before they are asked for.
beforeAll(() => import("../../../src/app/screen/FaultWords"));

beforeEach(() => {
  // The dialog element of the test's page cannot open by itself.
  HTMLDialogElement.prototype.showModal = function showModal() {
    this.open = true;
  };
  HTMLDialogElement.prototype.close = function close() {
    this.open = false;
  };
  useSettings.setState({ comma: false, denominator: 0 });
  usePrinters.setState({ all: [] });
  choose({ what: "template", paper: "A3", orientation: "best", margin: 10, overlap: 10, printer: null, scale: null, tolerance: 0.01, curves: "arcs", parts: "together", width: 600, height: 900 });
});
afterEach(cleanup);

test("the panel says the sheets, their paper and size before anything is made", () => {
  choose({ paper: "A4" });
  begin();
  expect(screen.getByText(/^Pipe: 2 sheets of A4, 210 × 297 mm, 2 across and 1 up, and their map$/)).toBeTruthy();
});

test("the panel says the face, the hand, the allowances and the seam", () => {
  begin({ hand: "opposite", seam: { kind: "grooved", width: 6, share: 0.5 } });
  const checks = within(screen.getByLabelText("Check before you cut"));
  expect(checks.getAllByRole("listitem").map((one) => one.textContent)).toEqual([
    "Print at 100 %, actual size, and measure both rulers of a page: each must be as long as its figures say.",
    "The inside of the pipe is up.",
    "The piece is of the opposite hand: the mirror image of the description.",
    "Added: groove 9 mm at the first edge of the seam, groove 9 mm at the last edge of the seam.",
    "The seam is at the shortest element.",
    "Prove it in card or scrap first.",
  ]);
});

test("a margin the paper has no room for is said at its field, nothing is made, and mending it makes the pages again", async () => {
  begin();
  type("Margin", "120");
  await waitFor(() => expect(field("Margin").getAttribute("aria-invalid")).toBe("true"));
  expect(field("Margin").value).toBe("120");
  expect(verb().disabled).toBe(true);
  type("Margin", "12");
  await waitFor(() => expect(verb().disabled).toBe(false));
});

test("text that is no measure stays at its field with the reason", async () => {
  begin();
  type("Overlap of the sheets", "abc");
  expect(await screen.findByText(/^This cannot be read as a number/, {}, patience)).toBeTruthy();
  type("Overlap of the sheets", "1o");
  expect(field("Overlap of the sheets").value).toBe("1o");
  expect(await screen.findByText(/^This unit is not known/, {}, patience)).toBeTruthy();
  expect(useOutput.getState().overlap).toBe(10);
  // Nothing is printed with the number that stood there before.
  fireEvent.click(verb());
  expect(screen.getByText("Nothing was made: Overlap of the sheets is not right yet.")).toBeTruthy();
  expect(document.activeElement).toBe(field("Overlap of the sheets"));
  expect(usePdfJob.getState().state).toBe("idle");
});

test("an allowance that cannot be made keeps the template from being made, and says where", async () => {
  begin({ edges: { top: { kind: "none" }, bottom: { kind: "hem", width: 400 } } });
  expect((await screen.findByText(/^The bottom edge is too short for this width and its two notches/, {}, patience)).textContent).toMatch(/along/);
  expect(verb().disabled).toBe(true);
});

test("that a file was saved is said until something else is asked for", async () => {
  URL.createObjectURL = () => "blob:";
  URL.revokeObjectURL = () => undefined;
  choose({ what: "dxf" });
  begin();
  fireEvent.click(verb());
  const [, arcs = ""] = /^Saved: (.*)$/.exec((await screen.findByText(/^Saved: /, {}, patience)).textContent) ?? [];
  fireEvent.change(field("How curves are written"), { target: { value: "splines" } });
  expect(screen.queryByText(/^Saved: /)).toBeNull();
  fireEvent.click(verb());
  const [, splines = ""] = /^Saved: (.*)$/.exec((await screen.findByText(/^Saved: /, {}, patience)).textContent) ?? [];
  expect(arcs).toMatch(/^[^,]+, pipe, \d+x\d+\.dxf$/);
  expect(splines).toBe(arcs.replace(".dxf", ", splines.dxf"));
});

test("what two rulers measure becomes the correction of the printer on that paper", async () => {
  begin();
  fireEvent.click(screen.getByText("Measure a printer"));
  fireEvent.change(field("Name of the printer"), { target: { value: "Workshop" } });
  const across = Number(field("Ruler across, as measured").value);
  type("Ruler across, as measured", String(across - 0.8));
  fireEvent.click(screen.getByText("Keep the correction"));
  const [kept] = usePrinters.getState().all;
  expect(kept).toMatchObject({ printer: "Workshop", paper: "A3", along: 1 });
  // A printer that draws short is made up for by drawing longer.
  expect(kept?.across).toBeCloseTo(across / (across - 0.8), 12);
  const percent = ((across / (across - 0.8) - 1) * 100).toFixed(2);
  expect(await screen.findByText(new RegExp(`corrected by \\+${percent} % across and \\+0\\.00 % along`), {}, patience)).toBeTruthy();
});

test("a correction beyond five percent is refused at its ruler, and nothing is kept", async () => {
  begin();
  fireEvent.click(screen.getByText("Measure a printer"));
  fireEvent.change(field("Name of the printer"), { target: { value: "Workshop" } });
  type("Ruler along, as measured", "200");
  fireEvent.click(screen.getByText("Keep the correction"));
  await waitFor(() => expect(field("Ruler along, as measured").getAttribute("aria-invalid")).toBe("true"));
  expect(usePrinters.getState().all).toEqual([]);
});

test("the part list gives sheet, area, cut length and mass of what is to be cut", () => {
  begin({ quantity: 3, plates: { top: null, bottom: { fit: "outside", gap: 0 } } });
  const rows = [...screen.getAllByLabelText("Part list")[0]!.querySelectorAll("tr")].map((row) => row.textContent);
  expect(rows).toHaveLength(3);
  // A disc of 90 in 1 mm steel: π 45² mm² × 7.85e-6 kg/mm³.
  expect(rows[2]).toContain(`${Math.round(Math.PI * 45 * 45 * 7.85e-3)} g`);
  expect(rows[2]).toContain("90 × 90 mm");
});
