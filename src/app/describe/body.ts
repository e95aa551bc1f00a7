import type { Job, Material, PipePart } from "../../core/index";
import { clauseWords, fieldWords, type PlaceWords } from "../words/clauses";
import { optionsOf, text, unsaid, type NumberToken, type Token } from "./token";

/** "A pipe, ⌀ [90] [outside], [220] high, [upright]." */
export function bodyTokens(job: Job, place: PlaceWords): Token[] {
  const { part } = job;
  return [
    text("A pipe, ⌀ "),
    { kind: "number", key: "diameter", field: "part.diameter", quantity: "length", label: fieldWords.diameter, value: part.diameter, put: inPart((p, diameter) => ({ ...p, diameter })) },
    text(" "),
    {
      kind: "choice",
      key: "basis",
      field: "part.basis",
      label: fieldWords.basis,
      value: part.basis,
      options: optionsOf(clauseWords.basis),
      put: inPart((p, basis) => ({ ...p, basis: basis as PipePart["basis"] })),
    },
    text(", "),
    { kind: "number", key: "length", field: "part.length", quantity: "length", label: fieldWords.length, value: part.length, put: inPart((p, length) => ({ ...p, length })) },
    text(` ${place.length}, `),
    {
      kind: "choice",
      key: "attitude",
      field: "part.attitude",
      label: fieldWords.attitude,
      value: part.attitude,
      options: optionsOf(clauseWords.attitude),
      put: inPart((p, attitude) => ({ ...p, attitude: attitude as PipePart["attitude"] })),
    },
    text("."),
  ];
}

/** "Sheet [0] thick, marked out [inside up].", or with a thickness "[Steel] sheet [1] thick, …"; a template to wrap round is outside up. */
export function sheetTokens(job: Job): Token[] {
  const { material, purpose } = job.fabrication;
  const named: Token[] = [
    {
      kind: "choice",
      key: "material",
      field: "fabrication.material",
      label: fieldWords.material,
      value: material,
      options: optionsOf(clauseWords.material),
      // A density of one's own was that of another material.
      put: (of, value) => ({ ...of, fabrication: { ...of.fabrication, material: value as Material, density: null } }),
    },
    text(" sheet "),
  ];
  const face: Token[] = [
    {
      kind: "choice",
      key: "face",
      field: "development.face",
      label: fieldWords.face,
      value: job.development.face,
      options: optionsOf(clauseWords.face),
      put: (of, value) => ({ ...of, development: { ...of.development, face: value as Job["development"]["face"] } }),
    },
    text("."),
  ];
  const thickness: NumberToken = { kind: "number", key: "thickness", field: "part.thickness", quantity: "length", label: fieldWords.thickness, value: job.part.thickness, put: inPart((p, value) => ({ ...p, thickness: value })) };
  if (job.part.thickness > 0) return [...named, thickness, ...(purpose === "wrap" ? [text(" thick.")] : [text(" thick, marked out "), ...face])];
  return [text("Sheet ", ""), unsaid(thickness), ...(purpose === "wrap" ? [text(" thick.", "")] : [text(" thick, marked out ", "Marked out "), ...face])];
}

function inPart<V>(change: (part: PipePart, value: V) => PipePart) {
  return (job: Job, value: V): Job => ({ ...job, part: change(job.part, value) });
}
