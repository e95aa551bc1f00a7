import type { OpeningCut } from "../../core/index";
import { clauseWords, fieldWords, type PlaceWords } from "../words/clauses";
import { cutFields, type CutFields } from "./cutField";
import { directionTokens } from "./direction";
import { optionsOf, text, unsaid, type Token } from "./token";

type Outline = OpeningCut["outline"];

/** "A round opening of ⌀ [40] faces [left], [70] up, [0] to the right, through [the near wall]." */
export function openingTokens(cut: OpeningCut, index: number, place: PlaceWords, spelled: ReadonlySet<string>): Token[] {
  const of = cutFields<"opening">(cut, index);
  return [
    ...outlineTokens(cut.outline, of, place),
    text(" faces "),
    ...directionTokens({
      key: of.key("direction"),
      field: of.field("direction"),
      label: fieldWords.faces,
      value: cut.direction,
      place,
      spelled,
      put: of.put((c, direction: number) => ({ ...c, direction })),
      article: "the ",
    }),
    text(", "),
    of.number("height", "length", fieldWords.openingHeight, cut.height, (c, height) => ({ ...c, height })),
    ...offsetTokens(cut, of, place),
    of.choice("through", fieldWords.through, cut.through, optionsOf(clauseWords.through), (c, through) => ({ ...c, through: through as OpeningCut["through"] })),
    text("."),
  ];
}

function outlineTokens(outline: Outline, of: CutFields<OpeningCut>, place: PlaceWords): Token[] {
  if (outline.shape === "round") {
    return [
      text("A round opening of ⌀ "),
      of.number("outline.diameter", "length", fieldWords.openingDiameter, outline.diameter, inOutline((o, diameter) => (o.shape === "round" ? { ...o, diameter } : o))),
    ];
  }
  return [
    text(outline.shape === "slot" ? "A slot " : "A rectangular opening "),
    of.number("outline.width", "length", fieldWords.width, outline.width, inOutline((o, width) => (o.shape === "round" ? o : { ...o, width }))),
    text(" wide, "),
    of.number("outline.length", "length", fieldWords.openingLength, outline.length, inOutline((o, length) => (o.shape === "round" ? o : { ...o, length }))),
    ...turnTokens(outline, of, place),
  ];
}

/** " up, [0] to the right, through "; in plain text nothing is said of an opening in the middle. */
function offsetTokens(cut: OpeningCut, of: CutFields<OpeningCut>, place: PlaceWords): Token[] {
  const offset = of.number("offset", "length", fieldWords.offset, cut.offset, (c, value) => ({ ...c, offset: value }));
  if (cut.offset === 0) return [text(` ${place.up}, `, ` ${place.up}`), unsaid(offset), text(" to the right, through ", ", through ")];
  return [text(` ${place.up}, `), offset, text(" to the right, through ")];
}

/** " high, turned [0]°,"; in plain text nothing is said of one that stands square. */
function turnTokens(outline: Exclude<Outline, { shape: "round" }>, of: CutFields<OpeningCut>, place: PlaceWords): Token[] {
  const turn = of.number("outline.turn", "angle", fieldWords.turned, outline.turn, inOutline((o, value) => (o.shape === "round" ? o : { ...o, turn: value })));
  if (outline.turn === 0) return [text(` ${place.length}, turned `, ` ${place.length}`), unsaid(turn), text(",")];
  return [text(` ${place.length}, turned `), turn, text(",")];
}

function inOutline(change: (outline: Outline, value: number) => Outline) {
  return (cut: OpeningCut, value: number): OpeningCut => ({ ...cut, outline: change(cut.outline, value) });
}
