import { openingCut, pipeJob, planeCut, shapedCut, type Job } from "../support/pipeJob";

/** Pipes that between them have every kind of cut, on both ends, meeting each other and running off, for comparison with the kernel. */
export const cutPipes: Readonly<Record<string, Job>> = {
  "a square pipe of thick plate": pipeJob({ diameter: 120, basis: "outside", thickness: 6, length: 200 }),
  "a mitre at 45 degrees": pipeJob({ diameter: 100, length: 300, cuts: [planeCut({ angle: 45, height: 180 })] }),
  "a slant turned to 217 degrees, given at its low point": pipeJob({ diameter: 88.9, basis: "outside", thickness: 3.2, length: 240, cuts: [planeCut({ angle: 31.5, direction: 217, at: "low", height: 90 })] }),
  "slants on both ends": pipeJob({
    diameter: 150, basis: "inside", thickness: 2, length: 420,
    cuts: [planeCut({ angle: 22.5, height: 330, direction: 40 }), planeCut({ id: "foot", end: "bottom", angle: 30, direction: 250, height: 80 })],
  }),
  "a roof of two planes": pipeJob({
    diameter: 110, length: 260,
    cuts: [planeCut({ angle: 35, direction: 90, height: 190 }), planeCut({ id: "other", angle: 50, direction: 262, height: 200 })],
  }),
  "a steep slant that runs out through the base": pipeJob({ diameter: 60, length: 200, cuts: [planeCut({ angle: 70, direction: 12, height: 30 })] }),
  "a hoof through the middle of the base": pipeJob({ diameter: 100, length: 80, cuts: [planeCut({ angle: 45, direction: 33, height: 0 })] }),
  "a hollow of a wider pipe": pipeJob({ diameter: 80, length: 220, cuts: [shapedCut({ shape: "hollow", radius: 70, centre: 0, height: 150 }, { direction: 65 })] }),
  "a hollow of the pipe's own radius": pipeJob({ diameter: 80, length: 220, cuts: [shapedCut({ shape: "hollow", radius: 40, centre: 0, height: 150 })] }),
  "a hollow off the middle": pipeJob({ diameter: 76.1, length: 220, cuts: [shapedCut({ shape: "hollow", radius: 60, centre: 14, height: 120 }, { direction: 300 })] }),
  "a hollow narrower than the pipe": pipeJob({ diameter: 90, length: 200, cuts: [shapedCut({ shape: "hollow", radius: 25, centre: -6, height: 140 }, { direction: 150 })] }),
  "a nose with shoulders": pipeJob({ diameter: 100, length: 250, cuts: [shapedCut({ shape: "nose", radius: 30, centre: 5, height: 220 }, { direction: 20 })] }),
  "a wide nose on the bottom end": pipeJob({ diameter: 100, length: 250, cuts: [shapedCut({ shape: "nose", radius: 65, centre: 0, height: 20 }, { end: "bottom", direction: 110 })] }),
  "an ogee whose arcs have the pipe's own radius": pipeJob({ diameter: 100, length: 300, cuts: [shapedCut({ shape: "ogee", low: 120, high: 220, rising: "right", radius: null })] }),
  "a flat ogee rising to the left": pipeJob({ diameter: 100, length: 300, cuts: [shapedCut({ shape: "ogee", low: 150, high: 190, rising: "left", radius: 90 }, { direction: 77 })] }),
  "a step": pipeJob({ diameter: 100, length: 240, cuts: [shapedCut({ shape: "step", low: 130, high: 200, rising: "right", position: 12 }, { direction: 25 })] }),
  "a vee off the middle on the bottom end": pipeJob({ diameter: 70, length: 200, cuts: [shapedCut({ shape: "vee", angle: 80, centre: -8, height: 45 }, { end: "bottom", direction: 200 })] }),
  "a free chain of lines and arcs": pipeJob({
    diameter: 100, length: 300,
    cuts: [shapedCut({
      shape: "free", start: { x: -60, z: 180 },
      legs: [{ to: { x: -30, z: 180 } }, { to: { x: 10, z: 190 }, radius: 40, turn: "left", long: false }, { to: { x: 10, z: 230 } }, { to: { x: 60, z: 250 }, centre: { x: 60, z: 177.5 }, turn: "right" }],
    }, { direction: 340 })],
  }),
  "a round hole": pipeJob({ diameter: 200, length: 400, cuts: [openingCut({ shape: "round", diameter: 100 }, { height: 200 })] }),
  "a round hole off the middle, through both walls": pipeJob({ diameter: 200, length: 400, cuts: [openingCut({ shape: "round", diameter: 60 }, { height: 190, offset: 40, direction: 130, through: "both" })] }),
  "a round hole that breaks out at the side": pipeJob({ diameter: 120, length: 300, cuts: [openingCut({ shape: "round", diameter: 70 }, { height: 140, offset: 42, direction: 10 })] }),
  "a turned rectangle": pipeJob({ diameter: 120, length: 300, cuts: [openingCut({ shape: "rectangle", width: 40, length: 70, turn: 25 }, { height: 150, direction: 285, offset: -9 })] }),
  "an upright slot across the seam": pipeJob({ diameter: 120, length: 300, seam: { at: "back" }, cuts: [openingCut({ shape: "slot", width: 24, length: 90, turn: 0 }, { height: 150, direction: 176 })] }),
  "a slot lying across, through both walls": pipeJob({ diameter: 120, length: 300, cuts: [openingCut({ shape: "slot", width: 80, length: 22, turn: 8 }, { height: 110, direction: 48, through: "both" })] }),
  "a hole into a slant": pipeJob({
    diameter: 120, length: 300,
    cuts: [planeCut({ angle: 40, direction: 180, height: 190 }), openingCut({ shape: "round", diameter: 60 }, { height: 200, direction: 95 })],
  }),
  "a hole off the bottom end": pipeJob({ diameter: 140, length: 250, cuts: [openingCut({ shape: "round", diameter: 80 }, { height: 18, direction: 222 })] }),
  "everything at once": pipeJob({
    diameter: 168.3, basis: "outside", thickness: 4, length: 500,
    cuts: [
      planeCut({ angle: 33, direction: 140, height: 430 }),
      shapedCut({ shape: "hollow", radius: 110, centre: 0, height: 70 }, { id: "saddle", end: "bottom", direction: 30 }),
      openingCut({ shape: "slot", width: 40, length: 120, turn: 20 }, { id: "slot", height: 260, direction: 15 }),
      openingCut({ shape: "round", diameter: 55 }, { id: "hole", height: 300, direction: 200, offset: 20, through: "both" }),
      openingCut({ shape: "rectangle", width: 50, length: 50, turn: 45 }, { id: "window", height: 180, direction: 290 }),
    ],
  }),
};
