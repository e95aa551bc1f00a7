import type { Leg, ShapedCut } from "../../core/index";
import { clauseWords, fieldWords, type PlaceWords } from "../words/clauses";
import type { CutFields } from "./cutField";
import { inProfile } from "./inProfile";
import { optionsOf, text, type NumberToken, type Token } from "./token";

type Free = Extract<ShapedCut["profile"], { shape: "free" }>;
type LegKind = keyof typeof clauseWords.arc;

/** " follows a profile from [-60] across, [150] up:" and a line for each leg. */
export function freeTokens(p: Free, of: CutFields<ShapedCut>, place: PlaceWords): Token[] {
  const start = (axis: "x" | "z", label: string) =>
    of.number(`profile.start.${axis}`, "length", label, p.start[axis], inProfile("free", (q, value: number) => ({ ...q, start: { ...q.start, [axis]: value } })));
  return [
    text(" follows a profile from "),
    start("x", fieldWords.startX),
    text(" across, "),
    start("z", fieldWords.startZ),
    text(` ${place.up};`),
    ...p.legs.flatMap((leg, n) => [{ kind: "break" } as const, ...legTokens(leg, n, p.legs.length, of)]),
  ];
}

function legTokens(leg: Leg, n: number, count: number, of: CutFields<ShapedCut>): Token[] {
  const kind = kindOf(leg);
  const number = (name: string, label: string, value: number, change: (leg: Leg, value: number) => Leg): NumberToken =>
    of.number(`profile.legs.${n}.${name}`, "length", label, value, inLeg(n, change));
  return [
    text(n === 0 ? "goes " : "then "),
    of.choice(`profile.legs.${n}.kind`, fieldWords.legKind(n + 1), kind, optionsOf(clauseWords.arc), inLeg(n, (old, value: string) => asKind(old, value as LegKind))),
    text(" to "),
    number("to.x", fieldWords.legX(n + 1), leg.to.x, (old, x) => ({ ...old, to: { ...old.to, x } })),
    text(", "),
    number("to.z", fieldWords.legZ(n + 1), leg.to.z, (old, z) => ({ ...old, to: { ...old.to, z } })),
    ...arcTokens(leg, n, number, of),
    text(n === count - 1 ? "" : ";"),
  ];
}

function arcTokens(leg: Leg, n: number, number: (name: string, label: string, value: number, change: (leg: Leg, value: number) => Leg) => NumberToken, of: CutFields<ShapedCut>): Token[] {
  if (!("turn" in leg)) return [];
  const turn = of.choice(`profile.legs.${n}.turn`, fieldWords.legTurn(n + 1), leg.turn, optionsOf(clauseWords.turn), inLeg(n, (old, value: string) => ("turn" in old ? { ...old, turn: value as "left" | "right" } : old)));
  if ("radius" in leg) {
    return [
      text(" of radius "),
      number("radius", fieldWords.legRadius(n + 1), leg.radius, (old, radius) => ("radius" in old ? { ...old, radius } : old)),
      text(" turning "),
      turn,
      text(", "),
      of.choice(`profile.legs.${n}.long`, fieldWords.legLong(n + 1), leg.long ? "yes" : "no", optionsOf(clauseWords.long), inLeg(n, (old, value: string) => ("radius" in old ? { ...old, long: value === "yes" } : old))),
    ];
  }
  const centre = (axis: "x" | "z", label: string) =>
    number(`centre.${axis}`, label, leg.centre[axis], (old, value) => ("centre" in old ? { ...old, centre: { ...old.centre, [axis]: value } } : old));
  return [text(" about "), centre("x", fieldWords.legCentreX(n + 1)), text(", "), centre("z", fieldWords.legCentreZ(n + 1)), text(" turning "), turn];
}

function kindOf(leg: Leg): LegKind {
  return "radius" in leg ? "radius" : "centre" in leg ? "centre" : "line";
}

/** The leg to the same point in another kind; a new arc begins flat enough to reach any neighbour. */
function asKind(leg: Leg, kind: LegKind): Leg {
  if (kind === kindOf(leg)) return leg;
  if (kind === "line") return { to: leg.to };
  if (kind === "radius") return { to: leg.to, radius: 100, turn: "left", long: false };
  return { to: leg.to, centre: { x: 0, z: leg.to.z }, turn: "left" };
}

function inLeg<V>(n: number, change: (leg: Leg, value: V) => Leg) {
  return inProfile("free", (q, value: V) => ({ ...q, legs: q.legs.map((leg, i) => (i === n ? change(leg, value) : leg)) }));
}
