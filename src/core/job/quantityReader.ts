import type { QuantityReason, Refusal, Sign, Token } from "./quantityTokens";

// Going through the tokens of a typed quantity, and giving up at the first place that makes no sense.

const DEEPEST_NESTING = 32;

/** A plain number (`measured` false), or a length in mm or angle in degrees. */
export interface Value {
  number: number;
  measured: boolean;
}

/** The tokens still to read; the first refusal is kept and ends the reading. */
export interface Reader {
  tokens: readonly Token[];
  next: number;
  depth: number;
  plainSize: number;
  refusal: Refusal | null;
}

export function peek(reader: Reader, ahead = 0): Token {
  return reader.tokens[Math.min(reader.next + ahead, reader.tokens.length - 1)] as Token;
}

export function take(reader: Reader, count: number, value: number): number {
  reader.next += count;
  return value;
}

export function takeSign(reader: Reader, ...signs: Sign[]): { sign: Sign; at: number } | null {
  const token = peek(reader);
  if (token.type !== "sign" || !signs.includes(token.sign)) return null;
  reader.next++;
  return token;
}

export function nested(reader: Reader, at: number, read: (reader: Reader) => Value): Value {
  if (reader.depth >= DEEPEST_NESTING) return refuse(reader, "too-deep", at);
  reader.depth++;
  const value = read(reader);
  reader.depth--;
  return value;
}

export function finite(reader: Reader, value: Value, at: number): Value {
  return Number.isFinite(value.number) ? value : refuse(reader, "not-finite", at);
}

/** Keeps the first refusal and goes to the end of the text; the value returned is never used. */
export function refuse(reader: Reader, reason: QuantityReason, at: number): Value {
  reader.refusal ??= { reason, at };
  reader.next = reader.tokens.length - 1;
  return { number: 0, measured: false };
}
