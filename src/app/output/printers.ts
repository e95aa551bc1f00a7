import { create } from "zustand";
import { say } from "../store/store";
import { MOST_CORRECTION, type PrinterCorrection } from "../../drawing/sheets/setup";

// The printers measured on this device, each on each paper.

export interface Printer extends PrinterCorrection {
  /** The name of the paper it was measured on. */
  readonly paper: string;
}

const place = "flatwright.printers";

export const usePrinters = create<{ readonly all: readonly Printer[] }>()(() => ({ all: kept() }));

/** Keeps what was measured, instead of what was measured before on the same printer and paper. */
export function keepPrinter(printer: Printer): void {
  keep([...others(printer), printer]);
}

/** Forgets what was measured of a printer on a paper. */
export function forgetPrinter(printer: Pick<Printer, "printer" | "paper">): void {
  keep(others(printer));
}

/** The correction of a printer on a paper, null when it was not measured there. */
export function correctionOn(all: readonly Printer[], name: string, paper: string): Printer | null {
  return all.find((one) => one.printer === name && one.paper === paper) ?? null;
}

function others({ printer, paper }: Pick<Printer, "printer" | "paper">): Printer[] {
  return usePrinters.getState().all.filter((one) => one.printer !== printer || one.paper !== paper);
}

function keep(all: readonly Printer[]): void {
  usePrinters.setState({ all });
  try {
    localStorage.setItem(place, JSON.stringify(all));
  } catch {
    // Without storage a correction lasts until the page is left.
    say({ kind: "no-storage" });
  }
}

function kept(): Printer[] {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(place) ?? "[]");
    return Array.isArray(read) ? read.filter(isPrinter) : [];
  } catch {
    return [];
  }
}

function isPrinter(value: unknown): value is Printer {
  if (typeof value !== "object" || value === null) return false;
  const { printer, paper, across, along } = value as Record<string, unknown>;
  return typeof printer === "string" && typeof paper === "string" && isFactor(across) && isFactor(along);
}

function isFactor(value: unknown): boolean {
  return typeof value === "number" && Math.abs(value - 1) <= MOST_CORRECTION + 1e-9;
}
