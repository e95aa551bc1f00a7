import type { Sight } from "../../drawing/pictorial/pictorialSight";

export type Way = "left" | "right" | "up" | "down";

export const ways: readonly Way[] = ["left", "right", "up", "down"];

/** Radians a key or button turns the piece. */
const step = Math.PI / 12;

/** Radians a CSS pixel of dragging turns it. */
const rate = 0.01;

const steps: Readonly<Record<Way, readonly [number, number]>> = { left: [-step, 0], right: [step, 0], up: [0, -step], down: [0, step] };

/** The sight after turning the near side of the piece one step that way. */
export function turnedStep(sight: Sight, way: Way): Sight {
  return turned(sight, ...steps[way]);
}

/** The sight after dragging the near side of the piece so many CSS pixels to the right and down. */
export function dragged(sight: Sight, right: number, down: number): Sight {
  return turned(sight, right * rate, down * rate);
}

/** The viewer goes the other way; no farther than straight above or below. */
function turned({ turn, tilt }: Sight, right: number, down: number): Sight {
  return { turn: turn - right, tilt: Math.min(Math.PI / 2, Math.max(-Math.PI / 2, tilt + down)) };
}
