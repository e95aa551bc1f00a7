import { defaultJob, type Cut, type Job, type OpeningCut, type ShapedCut } from "../../core/index";

// The small pieces on which the fields are explained: pipes of 100 across and 150 high, with one cut each.

const shaped = (profile: ShapedCut["profile"]): Cut => ({ id: "end", on: true, kind: "shaped", end: "top", direction: 0, profile });
const opening = (outline: OpeningCut["outline"], change: Partial<OpeningCut> = {}): Cut => ({ id: "hole", on: true, kind: "opening", outline, direction: 0, height: 75, offset: 0, through: "near", ...change });

const cuts = {
  plain: null,
  plane: { id: "end", on: true, kind: "plane", end: "top", angle: 35, direction: 270, at: "high", height: 150 },
  hollow: shaped({ shape: "hollow", radius: 60, centre: 0, height: 95 }),
  "hollow aside": shaped({ shape: "hollow", radius: 60, centre: 18, height: 95 }),
  nose: shaped({ shape: "nose", radius: 60, centre: 0, height: 140 }),
  "nose aside": shaped({ shape: "nose", radius: 60, centre: 18, height: 140 }),
  ogee: shaped({ shape: "ogee", low: 90, high: 140, rising: "right", radius: null }),
  step: shaped({ shape: "step", low: 90, high: 140, rising: "right", position: 14 }),
  vee: shaped({ shape: "vee", angle: 90, centre: 0, height: 95 }),
  "vee aside": shaped({ shape: "vee", angle: 90, centre: 18, height: 80 }),
  free: shaped({ shape: "free", start: { x: -60, z: 100 }, legs: [{ to: { x: -20, z: 135 } }, { to: { x: 25, z: 110 }, radius: 40, turn: "right", long: false }, { to: { x: 60, z: 120 } }] }),
  round: opening({ shape: "round", diameter: 46 }),
  "round aside": opening({ shape: "round", diameter: 40 }, { offset: 20 }),
  rectangle: opening({ shape: "rectangle", width: 54, length: 38, turn: 0 }),
  "turned rectangle": opening({ shape: "rectangle", width: 54, length: 38, turn: 25 }),
  slot: opening({ shape: "slot", width: 26, length: 64, turn: 0 }),
  "turned slot": opening({ shape: "slot", width: 26, length: 64, turn: 25 }),
} as const satisfies Record<string, Cut | null>;

export type SampleName = keyof typeof cuts;

/** The job of a sample. */
export function sampleJob(name: SampleName): Job {
  const job = defaultJob();
  const cut = cuts[name];
  return { ...job, part: { ...job.part, diameter: 100, basis: "mean", thickness: 0, length: 150, attitude: "upright", cuts: cut ? [cut] : [] }, development: { ...job.development, stations: 12 } };
}
