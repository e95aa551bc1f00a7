// On which paper, at which scale and where does the drawing of a school sheet stand? Worked out from the key, the fullest of them, so
// that question, question begun and key stand alike.

import type { Piece } from "../../core/index";
import { LETTERING } from "../lettering";
import { SCALES } from "../sheets/scales";
import { layoutsFor } from "../sheets/layouts";
import { evenStations } from "./evenStations";
import { type LessonBoard, lessonBoards } from "./lessonBoard";
import { type LessonLayout, placedOn } from "./placedOn";
import type { LessonSheets } from "./lessonSheets";

/** Drawn larger than it is only a piece that comes out no wider than this, mm: pieces are drawn full size where they can be. */
const LARGE = 40;

/** Text on a page of its own is worth more than one step of the scale. */
const STEPS = 2;

/** Elements nearer than this on paper, lettering heights, do not take a figure each, in two rows. */
const NEAR = 0.6;

/**
 * The drawing at the largest usual scale over the ways to lay the paper, or at the scale asked for; null when that does not fit. The
 * text stands beside it where that costs no more than one step of the scale, and no figures.
 */
export function lessonLayout(lesson: LessonSheets, piece: Piece): LessonLayout | null {
  const { development, figures, words, views: { other }, setup } = lesson;
  const boardAt = lessonBoards(development, piece, { other, figures, words });
  const known = new Map<number, LessonBoard>();
  const boards = (scale: number) => {
    const made = known.get(scale) ?? boardAt(scale);
    known.set(scale, made);
    return made;
  };
  const layouts = layoutsFor(setup, { width: ROLL, height: ROLL });
  let alone: LessonLayout | null = null;
  let steps = 0;
  const usual = SCALES.filter((scale) => scale <= 1 || 2 * piece.form.cutRadius * scale <= LARGE);
  const spaces = Math.max(1, evenStations(piece));
  for (const scale of lesson.scale === null ? usual : [lesson.scale]) {
    if (alone && (piece.pattern.girth * scale) / spaces < NEAR * LETTERING) break;
    const placed = layouts.flatMap((layout) => placedOn(lesson, layout, boards, scale, piece));
    const whole = placed.find(({ text }) => text !== null);
    if (whole) return whole;
    alone ??= placed[0] ?? null;
    if (alone && ++steps >= STEPS) break;
  }
  return alone;
}

/** As long as a sheet cut from a roll is made, mm. */
const ROLL = 600;
