// What the sheet is, in the middle of it: which face looks up, what it is for, which hand.

import type { FabricatedPiece, Vec2 } from "../../core/index";
import { boundsOf } from "../bounds";
import { type Box, growBox } from "../box";
import type { ClearSpace } from "../clearSpace";
import type { Item, TextItem } from "../display";
import type { Figures } from "../figures";
import type { Metrics } from "../metrics";
import type { BlankWords } from "./blankWords";
import type { CutSheet } from "./cutSheet";

/** The sheet is searched in so many places each way. */
const STEPS = 24;

/** A root gap smaller than this, mm, is rounding. */
const NOTHING = 1e-6;

/** Pitch of lines, in lettering heights. */
const PITCH = 1.7;

/** The lines of the note where they meet nothing, as near as can be to the middle of the sheet; none where it has no room for them. */
export function faceNote(piece: FabricatedPiece, sheet: CutSheet, space: ClearSpace, metrics: Metrics, figures: Figures, words: BlankWords): Item[] {
  const gap = rootGap(piece);
  const lines = [words.face[piece.face], words.purpose[piece.purpose]];
  if (piece.hand === "opposite") lines.push(words.oppositeHand);
  if (piece.allowances.length === 0) lines.push(words.net);
  if (gap > NOTHING) lines.push(`${words.rootGap} ${figures.length(gap)}`);
  for (const middle of places(sheet.bounds)) {
    const block = centred(lines, middle, metrics);
    if (!sheet.holds(middle) || !space.isFree(growBox(boundsOf(block), metrics.gap))) continue;
    space.take(block);
    return block;
  }
  return [];
}

/** What was taken off the girth, mm. */
function rootGap({ piece, net }: FabricatedPiece): number {
  const edges = net.flatMap(({ segments }) => segments.flatMap(({ owner, from }) => (owner.kind === "seam" ? [from.x] : [])));
  return edges.length === 0 ? 0 : Math.max(0, piece.pattern.girth - (Math.max(...edges) - Math.min(...edges)));
}

function centred(lines: readonly string[], { x, y }: Vec2, { lettering }: Metrics): TextItem[] {
  const top = y + ((lines.length - 1) / 2) * PITCH * lettering - lettering / 2;
  return lines.map((text, i) => ({ kind: "text", pen: "lettering", text, height: lettering, align: "middle", turn: 0, at: { x, y: top - i * PITCH * lettering } }));
}

/** Places of a grid over the box, the middle ones first. */
function places({ left, right, bottom, top }: Box): Vec2[] {
  const shares = Array.from({ length: STEPS - 1 }, (_, i) => (i + 1) / STEPS);
  const far = (share: number) => (share - 0.5) ** 2;
  return shares.flatMap((u) => shares.map((v) => ({ u, v }))).sort((a, b) => far(a.u) + far(a.v) - far(b.u) - far(b.v))
    .map(({ u, v }) => ({ x: left + u * (right - left), y: bottom + v * (top - bottom) }));
}
