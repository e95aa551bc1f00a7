import type { PlaneCut } from "../../core/index";
import { clauseWords, fieldWords, type PlaceWords } from "../words/clauses";
import { cutFields } from "./cutField";
import { directionTokens } from "./direction";
import { optionsOf, text, type Token } from "./token";

/** "Its [top] is cut at [35]° from square, highest at the [back], [180] up [on the axis]." */
export function planeTokens(cut: PlaneCut, index: number, place: PlaceWords, spelled: ReadonlySet<string>): Token[] {
  const of = cutFields<"plane">(cut, index);
  const at = { ...clauseWords.at, low: place.low, high: place.high };
  const highest: Token[] =
    cut.angle === 0
      ? []
      : [
          text(`, ${place.highest} `),
          ...directionTokens({
            key: of.key("direction"),
            field: of.field("direction"),
            label: fieldWords.highestAt,
            value: cut.direction,
            place,
            spelled,
            put: of.put((c, direction: number) => ({ ...c, direction })),
            article: place.highest.endsWith("at") ? "the " : "at the ",
          }),
        ];
  return [
    text("Its "),
    of.choice("end", fieldWords.end, cut.end, optionsOf(place.end), (c, end) => ({ ...c, end: end as PlaneCut["end"] })),
    text(" is cut at "),
    of.number("angle", "angle", fieldWords.angle, cut.angle, (c, angle) => ({ ...c, angle })),
    text(" from square"),
    ...highest,
    text(", "),
    of.number("height", "length", fieldWords.height, cut.height, (c, height) => ({ ...c, height })),
    text(` ${place.up} `),
    of.choice("at", fieldWords.at, cut.at, optionsOf(at), (c, value) => ({ ...c, at: value as PlaneCut["at"] })),
    text("."),
  ];
}
