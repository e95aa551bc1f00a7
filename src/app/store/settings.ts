import { create } from "zustand";
import type { Trade } from "../../drawing/tradeWords";
import { say } from "./store";

// How things are shown on this device; no part of the job.

export interface Settings {
  readonly theme: "auto" | "light" | "dark" | "contrast";
  /** Whose words the trade is spoken of in. */
  readonly words: Trade;
  /** Decimal places of millimetres. */
  readonly places: 0 | 1 | 2 | 3;
  /** Inches as decimals (0), or as fractions down to this denominator. */
  readonly denominator: 0 | 8 | 16 | 32 | 64;
  readonly comma: boolean;
  /** How far, in mm, a smooth curve may stray from the true edge. */
  readonly tolerance: (typeof tolerances)[number];
  /** Whether the fields of the description are explained. */
  readonly explain: boolean;
  /** How many times larger than usual the board is lettered, for projecting. */
  readonly lettering: (typeof letterings)[number];
}

const place = "flatwright.settings";

/** The decimal sign to begin with follows the reader's language. */
const localeHasComma = new Intl.NumberFormat().format(1.5).includes(",");

const defaults: Settings = { theme: "auto", words: "stretch-out", places: 2, denominator: 0, comma: localeHasComma, tolerance: 0.1, lettering: 1, explain: false };

export const letterings = [1, 1.4, 1.8] as const;

export const tolerances = [1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01] as const;

const choices: { readonly [K in keyof Settings]?: readonly Settings[K][] } = {
  theme: ["auto", "light", "dark", "contrast"],
  words: ["stretch-out", "girth"],
  places: [0, 1, 2, 3],
  denominator: [0, 8, 16, 32, 64],
  comma: [false, true],
  tolerance: tolerances,
  lettering: letterings,
  explain: [false, true],
};

export const useSettings = create<Settings>()(() => ({ ...defaults, ...keptSettings() }));

/** Changes one setting and keeps it in this browser when it can. */
export function set<K extends keyof Settings>(name: K, value: Settings[K]): void {
  useSettings.setState({ [name]: value } as Pick<Settings, K>);
  try {
    localStorage.setItem(place, JSON.stringify(useSettings.getState()));
  } catch {
    // Without storage the setting lasts until the page is left.
    say({ kind: "no-storage" });
  }
}

function keptSettings(): Partial<Settings> {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? "{}");
    if (typeof kept !== "object" || kept === null) return {};
    return Object.fromEntries(Object.entries(kept).filter(([name, value]) => allowed(name, value)));
  } catch {
    return {};
  }
}

function allowed(name: string, value: unknown): boolean {
  return (choices[name as keyof Settings] as readonly unknown[] | undefined)?.includes(value) ?? false;
}
