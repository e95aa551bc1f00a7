import { type QuantityKind, type Unit, unitNamed } from "./quantityUnits";

// The numbers, signs and units in a typed quantity.

/** Why a typed quantity is refused; `docs/job-format.md` gives each its meaning. */
export type QuantityReason =
  | "empty"
  | "too-long"
  | "too-deep"
  | "syntax"
  | "ambiguous"
  | "unit"
  | "dimension"
  | "not-finite";

/** `at` counts characters of the text from 0. */
export interface Refusal {
  reason: QuantityReason;
  at: number;
}

export type Token = { at: number } & (
  | { type: "number"; value: number; whole: boolean }
  | { type: "fraction"; value: number }
  | { type: "unit"; unit: Unit }
  | { type: "sign"; sign: Sign }
  | { type: "end" }
);

export type Sign = "+" | "-" | "*" | "/" | "^" | "(" | ")";

/** Other ways to write the signs. */
const SIGNS: Partial<Record<string, Sign>> = {
  ...{ "+": "+", "-": "-", "*": "*", "/": "/", "^": "^", "(": "(", ")": ")" },
  ...{ "−": "-", "–": "-", "×": "*", "·": "*", "÷": "/", "∕": "/", "⁄": "/" },
};

const FRACTIONS: Partial<Record<string, number>> = {
  ...{ "½": 1 / 2, "¼": 1 / 4, "¾": 3 / 4, "⅓": 1 / 3, "⅔": 2 / 3 },
  ...{ "⅛": 1 / 8, "⅜": 3 / 8, "⅝": 5 / 8, "⅞": 7 / 8 },
};

const SPACE = /\s+/y;
const NUMBER = /(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:e[+-]?\d+)?/iy;
const UNIT = /[a-z]+|["″”'′’°º]/iy;
/** 5'-3" is read as five feet three by some and as a difference by others. */
const FOOT_HYPHEN = /['′’][-−–]\d/y;

/** The tokens of `text`, the last one of type "end"; or the first place that is none. */
export function quantityTokens(text: string, kind: QuantityKind): Token[] | Refusal {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    const space = matchAt(SPACE, text, at);
    if (space) {
      at += space.length;
      continue;
    }
    const found = tokenAt(text, at, kind);
    if ("reason" in found) return found.reason === "unit" && !isMeasure(tokens.at(-1)) ? { ...found, reason: "syntax" } : found;
    tokens.push(found.token);
    at = found.end;
  }
  return [...tokens, { type: "end", at: text.length }];
}

/** Whether a word after this is meant for a unit; anywhere else it is no part of a number. */
function isMeasure(before: Token | undefined): boolean {
  return before !== undefined && (before.type !== "sign" || before.sign === ")");
}

function tokenAt(text: string, at: number, kind: QuantityKind): { token: Token; end: number } | Refusal {
  const character = text.charAt(at);
  const sign = SIGNS[character];
  if (sign) return { token: { type: "sign", sign, at }, end: at + 1 };
  if (character === "π") return { token: { type: "number", value: Math.PI, whole: false, at }, end: at + 1 };
  const fraction = FRACTIONS[character];
  if (fraction) return { token: { type: "fraction", value: fraction, at }, end: at + 1 };
  const digits = matchAt(NUMBER, text, at);
  return digits ? numberToken(text, at, digits) : wordToken(text, at, kind);
}

function numberToken(text: string, at: number, digits: string): { token: Token; end: number } | Refusal {
  const end = at + digits.length;
  if (/[.,\d]/.test(text.charAt(end))) return { reason: "ambiguous", at };
  const value = Number(digits.replace(",", "."));
  if (!Number.isFinite(value)) return { reason: "not-finite", at };
  return { token: { type: "number", value, whole: /^\d+$/.test(digits), at }, end };
}

function wordToken(text: string, at: number, kind: QuantityKind): { token: Token; end: number } | Refusal {
  const word = matchAt(UNIT, text, at);
  if (!word) return { reason: "syntax", at };
  if (matchAt(FOOT_HYPHEN, text, at)) return { reason: "ambiguous", at: at + 1 };
  const end = at + word.length;
  const name = word.toLowerCase();
  if (name === "pi") return { token: { type: "number", value: Math.PI, whole: false, at }, end };
  const unit = unitNamed(name, kind);
  return unit ? { token: { type: "unit", unit, at }, end } : { reason: "unit", at };
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
