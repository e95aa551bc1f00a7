import type { Why } from "../../drawing/handles/grip";

// The words of the handles and of the figures that are typed on the board, loaded with them.

export const handleWords = {
  group: "Handles of the drawing",
  figures: "Figures of the drawing",
  figuresHelp: "Arrow keys go from figure to figure.",
  help: "Page Down and Page Up go from handle to handle. Arrow keys step, with Shift by ten, with Alt by a tenth; Enter goes to the field in the description.",
  of: (clause: string, fields: string) => `${clause}: ${fields}`,
  /** A field of the job in a word, by the last part of its path. */
  short: {
    height: "height", centre: "sideways", offset: "sideways", radius: "radius", angle: "angle", direction: "direction", low: "low", high: "high",
    position: "sideways", x: "across", z: "height", diameter: "diameter", width: "width", length: "length", turn: "turned",
  } as Readonly<Record<string, string>>,
  level: "level at both ends",
  why: {
    level: (clause) => (clause ? `level: ${clause}` : "level with its neighbour"),
    "in-line": (clause) => `in line: ${clause}`,
    axis: () => "on the axis",
    contour: () => "at the contour",
    tangent: (clause) => (clause ? `tangent: ${clause}` : "tangent"),
    "own-radius": () => "the pipe’s own",
    "level-ends": () => "level at both ends",
    "same-direction": (clause) => `as: ${clause}`,
    side: () => "square",
    upright: () => "upright with its neighbour",
  } satisfies Record<Why, (clause: string) => string>,
  type: (label: string, figure: string) => `${label}, ${figure}: type another`,
  derived: (figure: string) => `${figure} follows from other figures and cannot be typed here; go to what it follows from`,
  snap: { on: "Alt: without snapping", off: "Alt: with snapping" },
} as const;
