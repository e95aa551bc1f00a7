// The grips of the pipe itself, in the front view: its length and its diameter.

import { LIMITS, type Job, type Piece } from "../../core/index";
import { type Grip, alongGrip, within } from "./grip";

export function pipeGrips({ part: { diameter, length } }: Job, { form: { cutRadius: radius } }: Piece): Grip[] {
  // The circle drawn is larger or smaller than the diameter of the job by a part that depends on the sheet only.
  const beyond = 2 * radius - diameter;
  return [
    alongGrip("length", "length", { x: 0, y: length }),
    {
      kind: "size", name: "diameter", field: "diameter", quantity: "length", value: diameter, point: { x: radius, y: length / 2 },
      pointFor: (value) => ({ x: (value + beyond) / 2, y: length / 2 }),
      valueAt: ({ x }) => within(2 * Math.abs(x) - beyond, LIMITS.diameter.min, LIMITS.diameter.max),
      put: (value) => ({ diameter: within(value, LIMITS.diameter.min, LIMITS.diameter.max) }),
    },
  ];
}
