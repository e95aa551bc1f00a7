// What is said in tables: beside the drawing of a key where it leaves room, else on pages of its own.

import type { Piece } from "../../core/index";
import { type Box, growBox } from "../box";
import type { Item } from "../display";
import type { Layout } from "../sheets/layouts";
import { type Shape, setBeside } from "../sheets/setBeside";
import { flow } from "./flow";
import { type SheetBody, sheetRoom } from "./lessonSheet";
import type { LessonSheets } from "./lessonSheets";
import { markingTable, stationTables, stretchOutTable } from "./lessonTables";
import { lettered, linesOf } from "./lessonText";

/** To the frame, and between blocks, mm. */
const AIR = 5, BETWEEN = 6;

/** Height of a row and of the heads of a table, mm, for how many rows a page takes. */
const ROW = 6.3, HEADS = 10;

/** Longest line of a sentence, mm. */
const LINE = 110;

/** That of where ordinates are found, mm, so that it has room on any sheet. */
const SHORT = 58;

/** In how many parts the stations are tabled to stand beside a drawing. */
const PARTS = [1, 2, 3, 4];

/** The stretch-out and the stations in tables no higher than a page of this paper. */
export function figureBlocks(lesson: LessonSheets, piece: Piece, layout: Layout): Shape[] {
  return blocksOf(lesson, piece, [], rowsOn(lesson, layout));
}

/**
 * What a key says in tables: beside its drawing as far as there is room, the stations in as many parts as it takes; and the others.
 * `left`: the stations, by index, whose ordinates it does not figure.
 */
export function keyBlocks(lesson: LessonSheets, piece: Piece, layout: Layout, left: readonly number[], room: FreeRoom): { items: Item[]; rest: Shape[] } {
  const { stations } = piece;
  const whole = PARTS.map((parts) => Math.ceil(stations.length / parts)).map((most) => besideDrawing(blocksOf(lesson, piece, left, most), room)).find(({ rest }) => rest.length === 0);
  return whole ?? besideDrawing(blocksOf(lesson, piece, left, rowsOn(lesson, layout)), room);
}

/**
 * The stretch-out, or on a key, which has it under its pattern, where its ordinates are, the tolerance and the marking scheme; and the
 * stations in tables of so many rows at most.
 */
function blocksOf(lesson: LessonSheets, piece: Piece, left: readonly number[], most: number): Shape[] {
  const stations = stationTables(piece, lesson, most);
  if (lesson.kind !== "key") return [stretchOutTable(piece, lesson), ...stations];
  const marking = [markingTable(lesson)].filter((one) => one !== null);
  return [...leftBlock(lesson, piece, left), ...toleranceBlock(lesson), ...(left.length > 0 ? [...stations, ...marking] : [...marking, ...stations])];
}

/** Rows that a page of this paper takes. */
function rowsOn(lesson: LessonSheets, layout: Layout): number {
  const { bottom, top } = tableRoom(lesson, layout);
  return Math.floor((top - bottom - HEADS) / ROW);
}

/** As many pages as the blocks take on this paper. */
export function figureBodies(lesson: LessonSheets, layout: Layout, blocks: readonly Shape[]): SheetBody[] {
  return blocks.length === 0 ? [] : flow(blocks, tableRoom(lesson, layout), BETWEEN).map((items) => ({ items, scale: null }));
}

/** Over the title block. */
function tableRoom(lesson: LessonSheets, layout: Layout): Box {
  const { frame, corner } = sheetRoom(lesson, layout, null);
  return { ...growBox(frame, -AIR), bottom: corner.top + AIR };
}

/** A sheet and what is taken on it. */
interface FreeRoom {
  readonly frame: Box;
  readonly taken: readonly Box[];
}

/** The blocks for which a drawing leaves room, drawn; and the others. */
function besideDrawing(blocks: readonly Shape[], { frame, taken }: FreeRoom): { items: Item[]; rest: Shape[] } {
  const { items, left } = setBeside(blocks, (block) => [block], growBox(frame, -AIR / 2), taken, { air: AIR, kept: AIR / 2 });
  return { items, rest: left };
}

/** Where the ordinates stand that have no figure on the drawing. */
function leftBlock({ words: { lesson } }: LessonSheets, { stations }: Piece, left: readonly number[]): Shape[] {
  if (left.length === 0) return [];
  const isAll = left.length >= stations.length - 1;
  const lines = linesOf([lesson.inTable(isAll ? null : left.flatMap((index) => stations[index]?.label ?? []).join(", "))], SHORT);
  return [{ width: SHORT, height: lines.at(-1)?.down ?? 0, at: (corner) => lettered(lines, corner) }];
}

function toleranceBlock({ tolerance, figures, words: { lesson }, development: { job } }: LessonSheets): Shape[] {
  if (!tolerance) return [];
  const { girth } = job.marking;
  const lines = linesOf([lesson.tolerance(`${figures.length(tolerance.length)} ${job.units === "inch" ? "in" : "mm"}`, figures.angle(tolerance.angle)), ...(girth === "exact" ? [] : [lesson.girthRule[girth]])], LINE);
  return [{ width: LINE, height: lines.at(-1)?.down ?? 0, at: (corner) => lettered(lines, corner) }];
}
