// @vitest-environment jsdom
import { cleanup, render, screen, waitFor } from "@testing-library/react";
import userEvent from "@testing-library/user-event";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Job } from "../../../src/core/index";
import { ShopPart } from "../../../src/app/description/ShopPart";
import { useTouch } from "../../../src/app/screen/touch";
import { replaceJob } from "../../../src/app/store/changes";
import { say, useApp } from "../../../src/app/store/store";
import { pipeWith, slant } from "../pipe";

const withShop = (change: Partial<Job["fabrication"]>): Job => {
  const job = pipeWith([slant]);
  return { ...job, fabrication: { ...job.fabrication, ...change } };
};
const hemmed = withShop({ edges: { top: { kind: "none" }, bottom: { kind: "hem", width: 6 } } });
const scrolled = vi.fn();

beforeEach(() => {
  Element.prototype.scrollIntoView = scrolled;
  scrolled.mockClear();
  useTouch.setState({ touched: true });
  say(null);
});
afterEach(cleanup);

const field = (name: string) => screen.getByRole<HTMLInputElement>("textbox", { name });
const described = (input: HTMLElement) => (input.getAttribute("aria-describedby") ?? "").split(" ").map((id) => document.getElementById(id)?.textContent ?? "").join(" ");

async function type(name: string, text: string) {
  await userEvent.clear(field(name));
  await userEvent.type(field(name), `${text}{Enter}`);
}

test("a hem too wide for its edge is refused at its field, with the edge and the place in rounded figures, and brought into sight", async () => {
  replaceJob(hemmed);
  render(<ShopPart />);
  await type("Width of the hem", "400");
  await waitFor(() => expect(field("Width of the hem").getAttribute("aria-invalid")).toBe("true"));
  await waitFor(() => expect(described(field("Width of the hem"))).toMatch(/^The bottom edge .*, \d+(\.\d{1,2})? mm along the stretch-out and -?\d+(\.\d{1,2})? mm up.*left off\.$/));
  expect(scrolled).toHaveBeenCalledWith({ block: "nearest" });
  expect(useApp.getState().development.job.fabrication.edges.bottom).toEqual({ kind: "hem", width: 400 });

  await type("Width of the hem", "6");
  await waitFor(() => expect(field("Width of the hem").getAttribute("aria-invalid")).toBeNull());
  expect(screen.queryByRole("alert")).toBeNull();
});

test("a lap wider than its seam, and a wire too thick for its edge, are refused at their own fields", async () => {
  replaceJob(withShop({ seam: { kind: "lap", width: 900, share: 1 }, edges: { top: { kind: "wired", wire: 90, thickness: false }, bottom: { kind: "none" } } }));
  render(<ShopPart />);
  await waitFor(() => expect(field("Width of the lap").getAttribute("aria-invalid")).toBe("true"));
  expect(field("Diameter of the wire").getAttribute("aria-invalid")).toBe("true");
  await waitFor(() => expect(described(field("Width of the lap"))).toContain("first edge of the seam"));
  expect(described(field("Diameter of the wire"))).toContain("The top edge");
  expect(scrolled).not.toHaveBeenCalled();
});

test("a gap that leaves nothing of a plate is refused at its field", async () => {
  replaceJob(withShop({ plates: { top: { fit: "outside", gap: 500 }, bottom: null } }));
  render(<ShopPart />);
  await waitFor(() => expect(field("Gap round the plate").getAttribute("aria-invalid")).toBe("true"));
  await waitFor(() => expect(described(field("Gap round the plate"))).toBe("The gap leaves nothing of the plate."));
});
