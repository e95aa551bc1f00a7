// Which way does each view look at the pipe? Upright or lying, first or third angle: only the lines of sight differ.

/** Seen square to the axis: `facing` is the direction (radians) of the element nearest to the viewer. */
export interface Broadside {
  readonly kind: "broadside";
  readonly facing: number;
}

/** Seen along the axis: the element at θ stands at the angle `start + sense · θ` on the sheet. */
export interface EndOn {
  readonly kind: "end-on";
  readonly start: number;
  readonly sense: 1 | -1;
}

export type ViewName = "front" | "top" | "side";
export type Views = Readonly<Record<ViewName, Broadside | EndOn>>;

const FRONT: Broadside = { kind: "broadside", facing: 0 };
const FROM_RIGHT: Broadside = { kind: "broadside", facing: Math.PI / 2 };
const FROM_LEFT: Broadside = { kind: "broadside", facing: (3 * Math.PI) / 2 };

/**
 * The three views. The side view is seen from the left in first angle, from the right in third, and stands to the right
 * of the front view either way. A lying pipe is the upright one tipped over to the right: what was its left side is seen
 * from above, its base from the left, its top end from the right.
 */
export function viewsOf(attitude: "upright" | "lying", projection: "first" | "third"): Views {
  if (attitude === "upright") {
    return {
      front: FRONT,
      top: { kind: "end-on", start: -Math.PI / 2, sense: 1 },
      side: projection === "first" ? FROM_LEFT : FROM_RIGHT,
    };
  }
  return {
    front: FRONT,
    top: FROM_LEFT,
    side: projection === "first" ? { kind: "end-on", start: 0, sense: -1 } : { kind: "end-on", start: Math.PI, sense: 1 },
  };
}

/** Sideways place on a broadside view, mm to the right of the axis (upright). */
export function sideways(view: Broadside, radius: number, theta: number): number {
  return radius * Math.sin(theta - view.facing);
}

/** The angle on the sheet (radians) at which an end-on view shows the element at θ. */
export function sheetAngle(view: EndOn, theta: number): number {
  return view.start + view.sense * theta;
}
