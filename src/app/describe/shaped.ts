import type { ShapedCut } from "../../core/index";
import { clauseWords, fieldWords, type PlaceWords } from "../words/clauses";
import { cutFields, type CutFields } from "./cutField";
import { directionTokens } from "./direction";
import { freeTokens } from "./freeProfile";
import { inProfile } from "./inProfile";
import { optionsOf, rightOfAxis, text, type Token } from "./token";

type Profile = ShapedCut["profile"];
type Shape = Profile["shape"];
type Of<S extends Shape> = Extract<Profile, { shape: S }>;

/** "Seen from the [front], its [top] is a hollow of radius [60], deepest at [150] up, centred [5] right of the axis." */
export function shapedTokens(cut: ShapedCut, index: number, place: PlaceWords, spelled: ReadonlySet<string>): Token[] {
  const of = cutFields<"shaped">(cut, index);
  return [
    text("Seen from "),
    ...directionTokens({
      key: of.key("direction"),
      field: of.field("direction"),
      label: fieldWords.seenFrom,
      value: cut.direction,
      place,
      spelled,
      put: of.put((c, direction: number) => ({ ...c, direction })),
      article: "the ",
    }),
    text(", its "),
    of.choice("end", fieldWords.end, cut.end, optionsOf(place.end), (c, end) => ({ ...c, end: end as ShapedCut["end"] })),
    ...profileTokens(cut, of, place),
    text("."),
  ];
}

function profileTokens(cut: ShapedCut, of: CutFields<ShapedCut>, place: PlaceWords): Token[] {
  const profile = cut.profile;
  switch (profile.shape) {
    case "hollow":
      return arcTokens(profile, of, place, " is a hollow of radius ", cut.end === "top" ? ", deepest at " : ", highest at ");
    case "nose":
      return arcTokens(profile, of, place, " is a round nose of radius ", cut.end === "top" ? ", its crown at " : ", its lowest at ");
    case "ogee":
      return ogeeTokens(profile, of, place);
    case "step":
      return stepTokens(profile, of, place);
    case "vee":
      return veeTokens(profile, of, place);
    case "free":
      return freeTokens(profile, of, place);
  }
}

function arcTokens(p: Of<"hollow"> | Of<"nose">, of: CutFields<ShapedCut>, place: PlaceWords, first: string, second: string): Token[] {
  const { shape } = p;
  return [
    text(first),
    of.number("profile.radius", "length", fieldWords.radius, p.radius, inProfile(shape, (q, radius: number) => ({ ...q, radius }))),
    text(second),
    of.number("profile.height", "length", fieldWords.height, p.height, inProfile(shape, (q, height: number) => ({ ...q, height }))),
    text(` ${place.up}, centred `),
    ...rightOfAxis(of.number("profile.centre", "length", fieldWords.centre, p.centre, inProfile(shape, (q, centre: number) => ({ ...q, centre })))),
  ];
}

function ogeeTokens(p: Of<"ogee">, of: CutFields<ShapedCut>, place: PlaceWords): Token[] {
  const arcs = of.choice(
    "profile.radius.kind",
    fieldWords.arcs,
    p.radius === null ? "level" : "radius",
    optionsOf(clauseWords.ogee),
    inProfile("ogee", (q, kind: string) => ({ ...q, radius: kind === "level" ? null : (q.radius ?? levelRadiusBound(q)) })),
  );
  const radius: Token[] =
    p.radius === null
      ? []
      : [text(" "), of.number("profile.radius", "length", fieldWords.radius, p.radius, inProfile("ogee", (q, value: number) => ({ ...q, radius: value })))];
  return [text(" is an ogee "), ...risingTokens(p, of, place), text(", its arcs "), arcs, ...radius];
}

/** A radius to begin with: as large as the rise, so that the arcs stay shallow enough to be seen as one curve. */
function levelRadiusBound(p: Of<"ogee">): number {
  return Math.max(1, p.high - p.low);
}

function stepTokens(p: Of<"step">, of: CutFields<ShapedCut>, place: PlaceWords): Token[] {
  return [
    text(" is a step "),
    ...risingTokens(p, of, place),
    text(", "),
    ...rightOfAxis(of.number("profile.position", "length", fieldWords.position, p.position, inProfile("step", (q, position: number) => ({ ...q, position })))),
  ];
}

function risingTokens(p: Of<"ogee"> | Of<"step">, of: CutFields<ShapedCut>, place: PlaceWords): Token[] {
  const { shape } = p;
  return [
    text("from "),
    of.number("profile.low", "length", fieldWords.low, p.low, inProfile(shape, (q, low: number) => ({ ...q, low }))),
    text(" to "),
    of.number("profile.high", "length", fieldWords.high, p.high, inProfile(shape, (q, high: number) => ({ ...q, high }))),
    text(` ${place.up}, rising to the `),
    of.choice("profile.rising", fieldWords.rising, p.rising, optionsOf(clauseWords.rising), inProfile(shape, (q, rising: string) => ({ ...q, rising: rising as "left" | "right" }))),
  ];
}

function veeTokens(p: Of<"vee">, of: CutFields<ShapedCut>, place: PlaceWords): Token[] {
  return [
    text(" is a vee of "),
    of.number("profile.angle", "angle", fieldWords.vee, p.angle, inProfile("vee", (q, angle: number) => ({ ...q, angle }))),
    text(" included, its point "),
    of.number("profile.height", "length", fieldWords.height, p.height, inProfile("vee", (q, height: number) => ({ ...q, height }))),
    text(` ${place.up}, `),
    ...rightOfAxis(of.number("profile.centre", "length", fieldWords.centre, p.centre, inProfile("vee", (q, centre: number) => ({ ...q, centre })))),
  ];
}
