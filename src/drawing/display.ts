// The display list: what is drawn and what it means, never how it looks. Sheet millimetres, x to the right, y up; arcs stay arcs.

import type { Segment, Vec2 } from "../core/index";
import type { Box } from "./box";
import type { PenName } from "./pens";

/** The part of the job an item shows, so that the item and the words of the job can light up together. */
export interface Ref {
  readonly clause: "part" | "seam" | "stations" | `cut:${string}`;
  /** Index into the stations of the piece. */
  readonly station?: number;
  /** Of a dimension: the job field its figure states, by its path in the part or the cut; null when it follows from several. */
  readonly field?: string | null;
}

/** A chain of segments, each beginning where the one before ends. */
export interface PathItem {
  readonly kind: "path";
  readonly pen: PenName;
  readonly segments: readonly Segment[];
  readonly closed: boolean;
  readonly ref?: Ref;
}

export interface CircleItem {
  readonly kind: "circle";
  readonly pen: PenName;
  readonly centre: Vec2;
  readonly radius: number;
  readonly ref?: Ref;
}

export interface TextItem {
  readonly kind: "text";
  readonly pen: PenName;
  /** On the base line of the letters: their start, middle or end as `align` says. */
  readonly at: Vec2;
  readonly text: string;
  /** Height of a capital letter, mm. */
  readonly height: number;
  readonly align: "start" | "middle" | "end";
  /** Radians, anticlockwise from reading level. */
  readonly turn: number;
  /** The paper is kept clear behind the letters. */
  readonly clear?: true;
  readonly ref?: Ref;
}

/** A filled arrowhead. */
export interface ArrowheadItem {
  readonly kind: "arrowhead";
  readonly pen: PenName;
  readonly tip: Vec2;
  /** Radians: the way it points. */
  readonly direction: number;
  /** From tip to back, mm. */
  readonly length: number;
  readonly ref?: Ref;
}

/** A filled surface: of the sheet, which covers what was drawn before it and by its tone tells which side it shows, or of ink. */
export interface SurfaceItem {
  readonly kind: "surface";
  readonly side: "inside" | "outside" | "ink";
  /** Closed chains of corners; a place inside an even number of them is open. */
  readonly loops: readonly (readonly Vec2[])[];
}

/** Items moved together and shown only inside a window. */
export interface GroupItem {
  readonly kind: "group";
  readonly move: Vec2;
  /** The window, in the coordinates of the sheet (after the move). */
  readonly clip: Box;
  readonly items: readonly Item[];
}

export type Item = PathItem | CircleItem | TextItem | ArrowheadItem | SurfaceItem | GroupItem;
