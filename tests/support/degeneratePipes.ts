import { openingCut, pipeJob, planeCut, shapedCut, type Cut, type Job, type Outline, type PipeDescription, type Profile } from "./pipeJob";

/** A named job whose edges touch, coincide or run along elements. All on a pipe of 100 mm diameter and 200 mm length unless said otherwise. */
export interface NamedJob { readonly name: string; readonly job: Job }

const round = (diameter: number): Outline => ({ shape: "round", diameter });
const rectangle = (width: number, length: number, turn = 0): Outline => ({ shape: "rectangle", width, length, turn });
const slot = (width: number, length: number, turn = 0): Outline => ({ shape: "slot", width, length, turn });
const free = (start: [number, number], ...to: [number, number][]): Profile => ({ shape: "free", start: { x: start[0], z: start[1] }, legs: to.map(([x, z]) => ({ to: { x, z } })) });

const DESCRIPTIONS: Readonly<Record<string, readonly Cut[]>> = {
  "no cut at all": [],
  "a plane that touches the base at one element": [planeCut({ angle: 45, at: "low", height: 0 })],
  "a plane that touches the stock's top at one element": [planeCut({ angle: 45, at: "high", height: 200 })],
  "a square cut exactly at the stock's top": [planeCut({ height: 200 })],
  "a square cut exactly at the base from below": [planeCut({ end: "bottom", height: 0 })],
  "two planes that touch at one element": [planeCut({ id: "a", angle: 30, at: "low", height: 100 }), planeCut({ id: "b", angle: 30, at: "high", height: 100, end: "bottom", direction: 180 })],
  "two planes that meet on an element": [planeCut({ id: "a", angle: 30, height: 100 }), planeCut({ id: "b", angle: 30, height: 100, direction: 180 })],
  "three planes through one point": [planeCut({ id: "a", angle: 45, height: 100 }), planeCut({ id: "b", angle: 45, height: 100, direction: 90 }), planeCut({ id: "c", angle: 45, height: 100, direction: 45 })],
  "the same plane twice": [planeCut({ id: "a", angle: 40, height: 100, direction: 10 }), planeCut({ id: "b", angle: 40, height: 100, direction: 10 })],
  "the same plane said by its axis and by its low point": [planeCut({ id: "a", angle: 45, height: 100 }), planeCut({ id: "b", angle: 45, height: 50, at: "low" })],
  "a plane at 89.9 degrees": [planeCut({ angle: 89.9, height: 100 })],
  "a plane turned by 89.999999 degrees": [planeCut({ angle: 45, height: 100, direction: 89.999999 })],
  "two planes turned apart by a millionth of a degree": [planeCut({ id: "a", angle: 45, height: 100, direction: 89.999999 }), planeCut({ id: "b", angle: 45, height: 100, direction: 90 })],
  "a plane at a millionth of a degree": [planeCut({ angle: 1e-6, height: 100 })],
  "an opening of the pipe's own diameter": [openingCut(round(100), { height: 100 })],
  "an opening of the pipe's own diameter through both walls": [openingCut(round(100), { height: 100, through: "both" })],
  "an opening a hair smaller than the pipe": [openingCut(round(99.999), { height: 100 })],
  "an opening a hair larger than the pipe": [openingCut(round(100.001), { height: 100 })],
  "an opening larger than the pipe through the near wall": [openingCut(round(120), { height: 100 })],
  "an opening that runs over the contour element": [openingCut(round(40), { height: 100, offset: 40 })],
  "an opening whose edge touches the contour element": [openingCut(round(40), { height: 100, offset: 30 })],
  "an opening with its middle on the contour element": [openingCut(round(40), { height: 100, offset: 50 })],
  "an opening with its middle on the contour element that touches the base": [openingCut(round(40), { height: 20, offset: -50, through: "both" })],
  "an opening with its middle on the contour element that touches the top": [openingCut(round(40), { height: 180, offset: 50, through: "both" })],
  "an opening with its middle on the contour element that touches a mitre's low end": [planeCut({ id: "a", angle: 45, at: "low", height: 120, direction: 90 }), openingCut(round(40), { id: "b", height: 100, offset: -50, through: "both" })],
  "a slot whose round end just misses a square cut": [planeCut({ id: "a", height: 120 }), openingCut(slot(20, 60, 90), { id: "b", height: 110.0001 })],
  "a slot whose tip lies just under a mitre": [planeCut({ id: "a", angle: 45, height: 100 }), openingCut(slot(20, 60, 90), { id: "b", height: 100.01, direction: 90, offset: 30 })],
  "two openings that touch side by side": [openingCut(round(40), { id: "a", height: 60 }), openingCut(round(40), { id: "b", height: 100 })],
  "two openings that overlap": [openingCut(round(40), { id: "a", height: 60 }), openingCut(round(40), { id: "b", height: 90, direction: 10 })],
  "an opening inside another": [openingCut(round(40), { id: "a", height: 100 }), openingCut(round(20), { id: "b", height: 100 })],
  "an opening that touches another from inside": [openingCut(round(40), { id: "a", height: 100 }), openingCut(round(20), { id: "b", height: 110 })],
  "the same opening twice": [openingCut(round(40), { id: "a", height: 100 }), openingCut(round(40), { id: "b", height: 100 })],
  "an opening across the seam": [openingCut(round(40), { height: 100, direction: 3 })],
  "the seam on the edge of a rectangle": [openingCut(rectangle(40, 30), { height: 100, offset: 20 })],
  "the seam on the other edge of a rectangle": [openingCut(rectangle(40, 30), { height: 100, offset: -20 })],
  "the seam touching a round opening": [openingCut(round(40), { height: 100, offset: 20 })],
  "an opening off the top": [openingCut(round(40), { height: 195 })],
  "an opening that touches the top": [openingCut(round(40), { height: 180 })],
  "an opening with its middle on the base": [openingCut(round(40), { height: 0 })],
  "an opening into a mitre": [planeCut({ id: "a", angle: 45, height: 100 }), openingCut(round(40), { id: "b", height: 100, direction: 90 })],
  "an opening that touches a square cut": [planeCut({ id: "a", height: 120 }), openingCut(round(40), { id: "b", height: 100 })],
  "a rectangle whose side lies in a square cut": [planeCut({ id: "a", height: 120 }), openingCut(rectangle(30, 40), { id: "b", height: 100 })],
  "a rectangle that ends at the base": [openingCut(rectangle(30, 40), { height: 20 })],
  "a rectangle as wide as the pipe": [openingCut(rectangle(100, 40), { height: 100 })],
  "a rectangle wider than the pipe through the near wall": [openingCut(rectangle(150, 40), { height: 100 })],
  "two rectangles side by side": [openingCut(rectangle(30, 40), { id: "a", height: 100, offset: -15 }), openingCut(rectangle(30, 40), { id: "b", height: 100, offset: 15 })],
  "two rectangles one on the other": [openingCut(rectangle(30, 40), { id: "a", height: 80 }), openingCut(rectangle(30, 40), { id: "b", height: 120 })],
  "two rectangles corner to corner": [openingCut(rectangle(30, 40), { id: "a", height: 80, offset: -15 }), openingCut(rectangle(30, 40), { id: "b", height: 120, offset: 15 })],
  "a rectangle on its corner": [openingCut(rectangle(30, 30, 45), { height: 100 })],
  "a slot whose straight sides run along elements": [openingCut(slot(20, 60), { height: 100, direction: 45 })],
  "a slot lying across": [openingCut(slot(60, 20), { height: 100, direction: 45 })],
  "a slot as long as wide": [openingCut(slot(30, 30), { height: 100 })],
  "a slot turned by a quarter": [openingCut(slot(20, 60, 90), { height: 100 })],
  "a hollow of the pipe's own radius": [shapedCut({ shape: "hollow", radius: 50, centre: 0, height: 80 })],
  "a nose of the pipe's own radius": [shapedCut({ shape: "nose", radius: 50, centre: 0, height: 150 })],
  "a nose with a shoulder": [shapedCut({ shape: "nose", radius: 30, centre: 0, height: 150 })],
  "a nose with its end on the contour element": [shapedCut({ shape: "nose", radius: 30, centre: 20, height: 150 })],
  "an ogee of the pipe's own radius": [shapedCut({ shape: "ogee", low: 50, high: 150, rising: "right", radius: null })],
  "an ogee of the pipe's own radius, radius said": [shapedCut({ shape: "ogee", low: 50, high: 150, rising: "left", radius: 50 })],
  "an ogee that hangs over": [shapedCut({ shape: "ogee", low: 40, high: 160, rising: "right", radius: null })],
  "an ogee at the bottom, turned": [shapedCut({ shape: "ogee", low: 40, high: 120, rising: "right", radius: null }, { end: "bottom", direction: 75 })],
  "a step on the axis": [shapedCut({ shape: "step", low: 80, high: 150, rising: "right", position: 0 })],
  "a step at the seam": [shapedCut({ shape: "step", low: 80, high: 150, rising: "right", position: 0 }, { direction: 90 })],
  "a step on the contour element": [shapedCut({ shape: "step", low: 80, high: 150, rising: "right", position: 50 })],
  "a step beyond the pipe": [shapedCut({ shape: "step", low: 80, high: 150, rising: "right", position: 60 })],
  "a vee whose point is on the contour element": [shapedCut({ shape: "vee", angle: 90, centre: 50, height: 100 })],
  "a vee down to the base": [shapedCut({ shape: "vee", angle: 90, centre: 0, height: 0 })],
  "a vee through the base": [shapedCut({ shape: "vee", angle: 60, centre: 0, height: -20 })],
  "two vees crosswise": [shapedCut({ shape: "vee", angle: 90, centre: 0, height: 100 }, { id: "a" }), shapedCut({ shape: "vee", angle: 90, centre: 0, height: 100 }, { id: "b", direction: 90 })],
  "a chain with its ends on the contour elements": [shapedCut(free([-50, 100], [0, 140], [50, 90]))],
  "a chain with corners on the contour elements": [shapedCut(free([-80, 60], [-50, 100], [50, 90], [80, 200]))],
  "a chain with an upright leg on the contour element": [shapedCut(free([-80, 60], [-50, 60], [-50, 110], [50, 90], [80, 200]))],
  "a chain with a level leg": [shapedCut(free([-60, 100], [-20, 100], [-20, 150], [20, 150], [20, 100], [60, 100]))],
  "a chain that hangs over": [shapedCut(free([-60, 150], [-10, 150], [-30, 80], [30, 80], [10, 150], [60, 150]))],
  "a chain that runs along the stock's top": [shapedCut(free([-60, 200], [-20, 200], [0, 150], [20, 200], [60, 200]))],
  "a mitre whose stock is just long enough": [planeCut({ angle: 45, height: 150 })],
  "a mitre at both ends that meet at the low side": [planeCut({ id: "a", angle: 45, at: "low", height: 60 }), planeCut({ id: "b", angle: 45, at: "high", height: 60, end: "bottom", direction: 180 })],
  "a hoof": [planeCut({ angle: 45, height: 0 })],
  "a hoof with its ends off the stations": [planeCut({ angle: 61, height: 13, direction: 17 })],
  "a cut switched off": [planeCut({ angle: 45, height: 100, on: false })],
  "an opening right through, offset": [openingCut(round(30), { height: 100, offset: 25, through: "both" })],
  "a rectangle that cuts the pipe in two": [openingCut(rectangle(110, 30), { height: 100, through: "both" })],
  "a rectangle just as wide as the pipe that cuts it in two": [openingCut(rectangle(100, 30), { height: 100, through: "both" })],
};

/** Where the seam stands, and by how many degrees all directions are turned on. */
const SETTINGS: readonly { readonly seam: NonNullable<PipeDescription["seam"]>; readonly turned: number }[] = [
  { seam: { at: "front" }, turned: 0 },
  { seam: { at: "right" }, turned: 0 },
  { seam: { at: "shortest" }, turned: 255 },
  { seam: { at: "angle", angle: 33.3 }, turned: 3 },
  { seam: { at: "angle", angle: 123.456 }, turned: 123.456 },
];

/** Every degenerate pipe with five settings of its seam and directions, either face up. */
export function degeneratePipes(): NamedJob[] {
  return Object.entries(DESCRIPTIONS).flatMap(([name, cuts]) =>
    SETTINGS.map(({ seam, turned }, index) => ({
      name: `${name} (seam: ${seam.at}, turned ${turned}°)`,
      job: pipeJob({
        diameter: 100, length: 200, seam, critical: index % 2 === 1, face: index < 2 ? "inside" : "outside",
        cuts: cuts.map((cut) => ({ ...cut, direction: (cut.direction + turned) % 360 })),
      }),
    })),
  );
}
