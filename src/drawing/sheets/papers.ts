// Sizes of paper, mm, upright: ISO 216 A series; American sizes (8½ × 11, 8½ × 14, 11 × 17, 17 × 22, 22 × 34, 34 × 44 in; the last
// three are ASME Y14.1 C to E, from memory).

export type PaperFamily = "iso" | "us";

export interface Paper {
  readonly name: PaperName;
  readonly family: PaperFamily;
  readonly width: number;
  readonly height: number;
}

export const PAPER_NAMES = ["A4", "A3", "A2", "A1", "A0", "Letter", "Legal", "Tabloid", "US C", "US D", "US E"] as const;
export type PaperName = (typeof PAPER_NAMES)[number];

/** From small to large in each family. */
export const PAPERS: readonly Paper[] = [
  { name: "A4", family: "iso", width: 210, height: 297 },
  { name: "A3", family: "iso", width: 297, height: 420 },
  { name: "A2", family: "iso", width: 420, height: 594 },
  { name: "A1", family: "iso", width: 594, height: 841 },
  { name: "A0", family: "iso", width: 841, height: 1189 },
  { name: "Letter", family: "us", width: 215.9, height: 279.4 },
  { name: "Legal", family: "us", width: 215.9, height: 355.6 },
  { name: "Tabloid", family: "us", width: 279.4, height: 431.8 },
  { name: "US C", family: "us", width: 431.8, height: 558.8 },
  { name: "US D", family: "us", width: 558.8, height: 863.6 },
  { name: "US E", family: "us", width: 863.6, height: 1117.6 },
];

/** The papers of a family, from small to large. */
export function papersOf(family: PaperFamily): Paper[] {
  return PAPERS.filter((paper) => paper.family === family);
}

/** The paper of that name. @throws RangeError for an unknown name. */
export function paperNamed(name: PaperName): Paper {
  const paper = PAPERS.find((one) => one.name === name);
  if (!paper) throw new RangeError(`unknown paper: ${name}`);
  return paper;
}
