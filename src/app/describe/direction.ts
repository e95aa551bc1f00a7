import type { Job } from "../../core/index";
import type { PlaceWords } from "../words/clauses";
import { clauseWords, fieldWords } from "../words/clauses";
import { text, type Token } from "./token";

// A direction about the axis as words: one of the four sides by name, or an angle from the front in figures.

interface DirectionField {
  readonly key: string;
  readonly field: string;
  readonly label: string;
  readonly value: number;
  readonly place: PlaceWords;
  /** Keys of the directions the reader asked to see in figures. */
  readonly spelled: ReadonlySet<string>;
  readonly put: (job: Job, value: number) => Job;
  readonly article: string;
}

export const angled = "angle";

/** "the [back]", or "[an angle] of [95]° from the front" for any other direction. */
export function directionTokens(of: DirectionField): Token[] {
  const quarter = of.place.sides.findIndex((_, i) => i * 90 === of.value);
  const named = quarter >= 0 && !of.spelled.has(of.key);
  const choice: Token = {
    kind: "choice",
    key: `${of.key}.side`,
    field: of.field,
    label: of.label,
    value: named ? String(quarter * 90) : angled,
    options: [...of.place.sides.map((label, i) => ({ value: String(i * 90), label })), { value: angled, label: clauseWords.angled }],
    put: (job, value) => (value === angled ? job : of.put(job, Number(value))),
    spells: angled,
  };
  if (named) return [text(of.article), choice];
  const figure: Token = { kind: "number", key: of.key, field: of.field, quantity: "angle", label: fieldWords.direction, value: of.value, put: of.put };
  return [choice, text(" of "), figure, text(" from the front")];
}
