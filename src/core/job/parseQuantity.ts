import type { Units } from "./job";
import { literal, literalFollows } from "./quantityLiteral";
import { finite, nested, peek, type Reader, refuse, takeSign, type Value } from "./quantityReader";
import { quantityTokens, type Refusal } from "./quantityTokens";
import { plainUnitSize, type QuantityKind } from "./quantityUnits";

// What length, angle or number does a typed text mean? Arithmetic by recursive descent:
//   sum      = product { (+ | -) product }
//   product  = signed { (* | /) signed }
//   signed   = (+ | -) signed | power
//   power    = measure [ ^ signed ]
//   measure  = atom [ unit [ literal smaller-unit ] ]      a measure may go on in the smaller unit: 5' 3 1/2"
//   atom     = literal | ( sum )

export type ParsedQuantity = { ok: true; value: number } | ({ ok: false } & Refusal);

const LONGEST_TEXT = 200;

/**
 * The value of `text` in mm (kind "length"), degrees ("angle") or as a plain number ("count", not necessarily whole).
 * A number without a unit is in the job's units (degrees for angles); a length times a length, or under a fraction
 * bar, is refused, a length by a length is a plain number. Text over 200 characters and brackets or signs nested
 * deeper than 32 are refused. The value is finite and never -0; no range is checked. Never throws.
 */
export function parseQuantity(text: string, { units, kind }: { units: Units; kind: QuantityKind }): ParsedQuantity {
  if (text.trim() === "") return { ok: false, reason: "empty", at: 0 };
  if (text.length > LONGEST_TEXT) return { ok: false, reason: "too-long", at: LONGEST_TEXT };
  const tokens = quantityTokens(text, kind);
  if ("reason" in tokens) return { ok: false, ...tokens };
  const reader: Reader = { tokens, next: 0, depth: 0, plainSize: plainUnitSize(kind, units), refusal: null };
  const value = measuredIn(reader, sum(reader), 0);
  if (peek(reader).type !== "end") refuse(reader, "syntax", peek(reader).at);
  if (reader.refusal) return { ok: false, ...reader.refusal };
  return { ok: true, value: value + 0 };
}

function sum(reader: Reader): Value {
  let left = product(reader);
  for (let sign = takeSign(reader, "+", "-"); sign; sign = takeSign(reader, "+", "-")) {
    const right = product(reader);
    const factor = sign.sign === "+" ? 1 : -1;
    const measured = left.measured || right.measured;
    const [a, b] = measured
      ? [measuredIn(reader, left, sign.at), measuredIn(reader, right, sign.at)]
      : [left.number, right.number];
    left = finite(reader, { number: a + factor * b, measured }, sign.at);
  }
  return left;
}

function product(reader: Reader): Value {
  let left = signed(reader);
  for (let sign = takeSign(reader, "*", "/"); sign; sign = takeSign(reader, "*", "/")) {
    const right = signed(reader);
    const combine = sign.sign === "*" ? times : over;
    left = finite(reader, combine(reader, left, right, sign.at), sign.at);
  }
  return left;
}

function times(reader: Reader, left: Value, right: Value, at: number): Value {
  if (left.measured && right.measured) return refuse(reader, "dimension", at);
  return { number: left.number * right.number, measured: left.measured || right.measured };
}

function over(reader: Reader, left: Value, right: Value, at: number): Value {
  if (right.measured && !left.measured) return refuse(reader, "dimension", at);
  return { number: left.number / right.number, measured: left.measured && !right.measured };
}

function signed(reader: Reader): Value {
  const sign = takeSign(reader, "+", "-");
  if (!sign) return power(reader);
  const value = nested(reader, sign.at, signed);
  return sign.sign === "-" ? { ...value, number: -value.number } : value;
}

function power(reader: Reader): Value {
  const base = measure(reader);
  const sign = takeSign(reader, "^");
  if (!sign) return base;
  const exponent = nested(reader, sign.at, signed);
  if (base.measured || exponent.measured) return refuse(reader, "dimension", sign.at);
  return finite(reader, { number: base.number ** exponent.number, measured: false }, sign.at);
}

function measure(reader: Reader): Value {
  const value = atom(reader);
  const token = peek(reader);
  if (token.type !== "unit") return value;
  if (value.measured) return refuse(reader, "dimension", token.at);
  reader.next++;
  let total = value.number * token.unit.size;
  for (let smaller = token.unit.then; smaller && literalFollows(reader); smaller = smaller.then) {
    const part = literal(reader);
    const unit = peek(reader);
    if (unit.type !== "unit" || unit.unit !== smaller) return refuse(reader, "syntax", unit.at);
    reader.next++;
    total += part * smaller.size;
  }
  return finite(reader, { number: total, measured: true }, token.at);
}

function atom(reader: Reader): Value {
  if (literalFollows(reader)) return { number: literal(reader), measured: false };
  const open = takeSign(reader, "(");
  if (!open) return refuse(reader, "syntax", peek(reader).at);
  const value = nested(reader, open.at, sum);
  return takeSign(reader, ")") ? value : refuse(reader, "syntax", peek(reader).at);
}

function measuredIn(reader: Reader, value: Value, at: number): number {
  if (value.measured) return value.number;
  return finite(reader, { number: value.number * reader.plainSize, measured: true }, at).number;
}

