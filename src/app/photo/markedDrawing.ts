import { LENS_POINTS, POINTS, inDrawingFrame, parseQuantity, rectification, type Job, type MarkedPoint, type Piece, type Problem, type Rectification, type Vec2 } from "../../core/index";
import { paperNamed } from "../../drawing/sheets/papers";
import type { Fault } from "../store/attempt";
import { placeable, type Photo } from "./photo";

// What the marks say: where the drawing lies in the picture, or what is still wanting.

export interface Marked {
  /** Places of the known points on the paper (mm), for the fields left empty; null where there are none. */
  readonly corners: readonly Vec2[] | null;
  /** Faults of typed places by "id x" and "id y". */
  readonly faults: Readonly<Record<string, Fault>>;
  readonly found: Found;
}

export type Found =
  | { readonly kind: "wanting"; /** Points to be marked yet. */ readonly points: number; readonly base: boolean }
  | { readonly kind: "refused"; readonly problem: Problem }
  | {
      readonly kind: "found";
      readonly rectification: Rectification;
      /** mm from each marked point, by its id. */
      readonly residuals: Readonly<Record<string, number>>;
      /** Whether the points leave anything over to judge them by. */
      readonly judged: boolean;
      /** mm: the stretch-out as drawn, where it was measured. */
      readonly length: number | null;
    };

/** The size of the drawing on its paper, mm. */
export interface DrawnSize {
  readonly width: number;
  readonly height: number;
}

/** How large a drawing of the piece is at its scale: the rectangle of the stretch-out. */
export function drawnSize(piece: Piece, scale: number): DrawnSize {
  return { width: piece.pattern.girth * scale, height: piece.form.length * scale };
}

/** The corners of the drawing, from the start of its base line. */
export function drawnCorners({ width, height }: DrawnSize): Vec2[] {
  return [{ x: 0, y: 0 }, { x: width, y: 0 }, { x: width, y: height }, { x: 0, y: height }];
}

/** What the marks of a photo say about a drawing of this size. */
export function markedDrawing(photo: Photo, units: Job["units"], size: DrawnSize): Marked {
  const { by, points, places, picture } = photo;
  const corners = by === "rectangle" ? [...drawnCorners(size), { x: size.width / 2, y: 0 }, { x: size.width / 2, y: size.height }] : by === "sheet" ? sheetCorners(photo) : null;
  const faults: Record<string, Fault> = {};
  const coordinate = (id: string, axis: "x" | "y", text: string, otherwise: number | undefined): number => {
    if (text.trim() === "") return otherwise ?? NaN;
    const parsed = parseQuantity(text, { units, kind: "length" });
    if (!parsed.ok) faults[`${id} ${axis}`] = { kind: "quantity", reason: parsed.reason };
    return parsed.ok ? parsed.value : NaN;
  };
  const marked = points.flatMap(({ id, corner, x, y }): (MarkedPoint & { readonly id: string })[] => {
    const known = corner === null ? undefined : corners?.[corner];
    const paper = { x: coordinate(id, "x", x, known?.x), y: coordinate(id, "y", y, known?.y) };
    const place = places[id];
    return place && Number.isFinite(paper.x) && Number.isFinite(paper.y) ? [{ id, picture: place, paper }] : [];
  });
  const base = by === "rectangle" ? null : [places.start, places.end] as const;
  const wanting = Math.max(0, POINTS.min - marked.length);
  if (!picture || wanting > 0 || (base && !(base[0] && base[1]))) return { corners, faults, found: { kind: "wanting", points: wanting, base: base !== null && !(base[0] && base[1]) } };
  return { corners, faults, found: found(marked, photo, picture, base, size) };
}

function found(marked: readonly (MarkedPoint & { readonly id: string })[], photo: Photo, picture: DrawnSize, base: readonly (Vec2 | undefined)[] | null, size: DrawnSize): Found {
  const [start, end] = base ?? [];
  const framed = start && end ? inDrawingFrame(marked, picture, start, end) : { ok: true as const, points: marked, length: null };
  const outcome = framed.ok ? rectification(framed.points, picture, drawnCorners(size), start && end ? { start, end } : null) : framed;
  if (!outcome.ok || !framed.ok) return { kind: "refused", problem: numbered(outcome.ok ? null : outcome.problem, marked, photo) };
  const { residuals } = outcome.rectification;
  return {
    kind: "found", rectification: outcome.rectification, length: framed.length,
    residuals: Object.fromEntries(marked.map(({ id }, i) => [id, residuals[i] ?? NaN])),
    // Each point says two numbers; four fix the homography, and the bend of the lens is one more.
    judged: 2 * marked.length > (marked.length >= LENS_POINTS ? 9 : 8),
  };
}

/** The problem with the numbers of the rows on the screen, where it names points. */
function numbered(problem: Problem | null, marked: readonly { readonly id: string }[], photo: Photo): Problem {
  if (!problem) throw new Error("nothing is wrong");
  const { detail } = problem;
  if (detail?.first === undefined) return problem;
  const row = (number: unknown) => placeable(photo).indexOf(marked[Number(number) - 1]?.id ?? "") + 1;
  return { ...problem, detail: { first: row(detail.first), second: row(detail.second) } };
}

/** The sheet lies with its long side across. */
function sheetCorners({ sheet }: Photo): Vec2[] {
  const { width, height } = paperNamed(sheet);
  return drawnCorners({ width: Math.max(width, height), height: Math.min(width, height) });
}
