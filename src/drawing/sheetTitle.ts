// What a template says it is.

import type { Development, Piece } from "../core/index";
import type { Figures } from "./figures";
import type { SheetWords } from "./sheetWords";

/** The sentences of the title strip: what the piece is, how it was developed, what to check and mind before it is used. */
export function sheetTitle({ job, pieces }: Development, piece: Piece, figures: Figures, words: SheetWords): string[] {
  const { part, development } = job;
  const title = job.title.trim() === "" ? words.untitled : job.title.trim();
  const count = `${words.piece} ${pieces.indexOf(piece) + 1} ${words.of} ${pieces.length}`;
  const size = `⌀${figures.length(part.diameter)} ${words.basis[part.basis]}, ${words.thickness} ${figures.length(part.thickness)}`;
  const stretchOut = `${words.stretchOut} ${figures.length(piece.pattern.girth)}`;
  const face = development.face === "inside" ? words.insideUp : words.outsideUp;
  const { seam } = development;
  const seamText = seam.at === "angle" ? `${words.seamAtAngle} ${figures.angle(seam.angle)}` : words.seamAt[seam.at];
  const stations = `${development.stations} ${words.stations}`;
  return [
    `${title} · ${count}`,
    `${size} · ${stretchOut} · ${face} · ${seamText} · ${stations}`,
    `${words.scale} · ${words.net} · ${words.checkRuler}`,
    ...words.cautions,
  ];
}
