import { peek, type Reader, refuse, take } from "./quantityReader";

// The numbers of a typed quantity as makers write them: 12, 1,5, 1 3/8, 2½, pi.
//   literal = whole whole / whole | whole / whole (before a unit) | [ whole ] ½ | number | pi

export function literalFollows(reader: Reader): boolean {
  return ["number", "fraction"].includes(peek(reader).type);
}

/** The number that starts here; call it only where `literalFollows`. */
export function literal(reader: Reader): number {
  const token = peek(reader);
  if (token.type !== "number") return fractionSign(reader);
  const simple = ratioAt(reader, 0);
  if (simple !== null && peek(reader, 3).type === "unit") return take(reader, 3, simple);
  const mixed = token.whole ? ratioAt(reader, 1) : null;
  if (mixed !== null) return take(reader, 4, token.value + mixed);
  reader.next++;
  return token.whole ? token.value + fractionSign(reader) : token.value;
}

/** The value of "whole / whole" starting `ahead` tokens on, null when there is none. */
function ratioAt(reader: Reader, ahead: number): number | null {
  const [over, bar, under] = [peek(reader, ahead), peek(reader, ahead + 1), peek(reader, ahead + 2)];
  if (over.type !== "number" || !over.whole || under.type !== "number" || !under.whole) return null;
  if (bar.type !== "sign" || bar.sign !== "/") return null;
  if (under.value === 0) refuse(reader, "not-finite", bar.at);
  return over.value / under.value;
}

function fractionSign(reader: Reader): number {
  const token = peek(reader);
  return token.type === "fraction" ? take(reader, 1, token.value) : 0;
}
