// @vitest-environment jsdom
import { beforeEach, describe, expect, it } from "vitest";
import { correctionOn, forgetPrinter, keepPrinter, usePrinters } from "../../../src/app/output/printers";

const workshop = { printer: "workshop", paper: "A4", across: 1.0033, along: 0.998 };

describe("keepPrinter", () => {
  beforeEach(() => {
    localStorage.clear();
    usePrinters.setState({ all: [] });
  });

  it("keepPrinter keeps one correction for a printer and paper, the last", () => {
    keepPrinter(workshop);
    keepPrinter({ ...workshop, paper: "A3" });
    keepPrinter({ ...workshop, across: 1.01 });
    expect(usePrinters.getState().all).toHaveLength(2);
    expect(correctionOn(usePrinters.getState().all, "workshop", "A4")?.across).toBe(1.01);
  });

  it("keepPrinter keeps it on the device", () => {
    keepPrinter(workshop);
    expect(JSON.parse(localStorage.getItem("flatwright.printers") ?? "")).toEqual([workshop]);
  });

  it("forgetPrinter forgets one paper only", () => {
    keepPrinter(workshop);
    keepPrinter({ ...workshop, paper: "A3" });
    forgetPrinter(workshop);
    expect(correctionOn(usePrinters.getState().all, "workshop", "A4")).toBeNull();
    expect(correctionOn(usePrinters.getState().all, "workshop", "A3")).not.toBeNull();
  });
});
