// One thing to be cut at true size: a piece or an end plate, what is drawn of it and what its title block says.

import { type Development, type EndPlate, type FabricatedPiece, type Fabrication, type FabricationChoices, GAUGES, type Segment, gaugeOf } from "../../core/index";
import { blankDrawing } from "../blank/blankDrawing";
import { plateDrawing } from "../blank/plateDrawing";
import { boundsOf } from "../bounds";
import type { Box } from "../box";
import type { Item } from "../display";
import type { Figures } from "../figures";
import type { SheetWords } from "./sheetWords";
import type { Cell } from "./titleBlock";

export interface TemplatePart {
  readonly name: string;
  /** Pattern mm, true size. */
  readonly art: readonly Item[];
  readonly bounds: Box;
  /** What is cut: closed outlines. */
  readonly outlines: readonly (readonly Segment[])[];
  /** What it is, for every page of it. */
  readonly heading: string;
  readonly cells: readonly Cell[];
  /** Where it is not of full size: its scale; and what to mind instead of the cautions of the shop. */
  readonly scale?: string;
  readonly cautions?: readonly string[];
}

/** The pieces, then the end plates. */
export function templateParts(development: Development, fabrication: Fabrication, figures: Figures, words: SheetWords): TemplatePart[] {
  const all = fabrication.pieces.length + fabrication.plates.length;
  const pieces = fabrication.pieces.map((made, i) => piecePart(development, made, words.pieceOf(i + 1, all), figures, words));
  const plates = fabrication.plates.map((made, i) => platePart(development, made, words.pieceOf(fabrication.pieces.length + i + 1, all), figures, words));
  return [...pieces, ...plates];
}

/** The title of the job, or the word for none. */
export function jobTitle({ job }: Development, words: SheetWords): string {
  return job.title.trim() === "" ? words.untitled : job.title.trim();
}

function piecePart(development: Development, made: FabricatedPiece, count: string, figures: Figures, words: SheetWords): TemplatePart {
  const art = blankDrawing(made, { figures });
  const { job } = development;
  const { seam } = job.development;
  const { field } = words;
  const hand = made.hand === "opposite" ? [{ label: field.hand, value: words.opposite }] : [];
  const gap = job.fabrication.seam.kind === "butt" ? job.fabrication.seam.gap : 0;
  return {
    name: made.name, art, bounds: boundsOf(art), outlines: made.contours.map(({ segments }) => segments), heading: `${jobTitle(development, words)} · ${made.name}, ${count}`,
    cells: [
      ...headCells(development, made, count, words),
      sheetCell(made.purpose === "wrap" ? words.wrap : sheetText(made, development.job.fabrication, figures, words), words),
      { label: field.size, value: words.outsideAndMean(figures.length(job.part.diameter), words.basis[job.part.basis]) },
      { label: field.girth, value: figures.length(made.piece.pattern.girth) },
      { label: field.face, value: made.face === "inside" ? words.insideUp : words.outsideUp },
      ...hand,
      { label: field.seamPlace, value: seam.at === "angle" ? words.seamAtAngle(figures.angle(seam.angle)) : words.seamAt[seam.at] },
      { label: field.allowances, value: [allowancesText(made, figures, words), gap > 0 ? words.gapIncluded(figures.length(gap)) : words.notIncluded] },
    ],
  };
}

function platePart(development: Development, made: EndPlate, count: string, figures: Figures, words: SheetWords): TemplatePart {
  const { long, short } = made.semiAxes;
  const { segments } = made.contour;
  const art = plateDrawing(made, { figures });
  const shape = words.plate(made.shape, figures.length(2 * long), figures.length(2 * short));
  return {
    name: made.name, art, bounds: boundsOf(art), outlines: [segments], heading: `${jobTitle(development, words)} · ${made.name}, ${count}`,
    cells: [
      ...headCells(development, made, count, words),
      sheetCell(sheetText(made, development.job.fabrication, figures, words), words),
      { label: words.field.plate, value: shape },
      { label: words.field.allowances, value: made.gap > 0 ? words.weldGap(figures.length(made.gap)) : words.net },
    ],
  };
}

function headCells(development: Development, { name, quantity }: { readonly name: string; readonly quantity: number }, count: string, words: SheetWords): Cell[] {
  const { field } = words;
  return [
    { label: field.job, value: jobTitle(development, words), height: 5, large: 2 },
    { label: field.part, value: `${name}, ${count}` },
    { label: field.quantity, value: String(quantity) },
  ];
}

function sheetCell(value: string, words: SheetWords): Cell {
  return { label: words.field.sheet, value };
}

/** "lap 12 at the first seam edge, hem 6 at the bottom", or that it is net. */
export function allowancesText({ allowances }: FabricatedPiece, figures: Figures, words: SheetWords): string {
  const added = allowances.map(({ kind, place, width }) => words.allowance(kind, place, figures.length(width)));
  return added.length > 0 ? added.join(", ") : words.net;
}

/** Material and thickness, by its gauge too where the job names a table of them. */
export function sheetText({ blank: { material, thickness } }: Pick<FabricatedPiece, "blank">, { gauge }: FabricationChoices, figures: Figures, words: SheetWords): string {
  const number = gauge && gaugeOf(gauge, thickness);
  return [
    words.materials[material], ...(thickness > 0 ? [words.thick(figures.length(thickness))] : []),
    ...(gauge && number ? [words.gauge(number, GAUGES[gauge].name)] : []),
  ].join(", ");
}
