import type { Cut, Job, OpeningCut, ShapedCut } from "../../core/index";
import { freshId } from "./changeCuts";
import type { CutWord } from "./cutWords";

/** A cut of this kind to begin with, sized to sit well on the pipe as it is now. */
export function newCut(job: Job, word: CutWord): Cut {
  const { diameter, length } = job.part;
  const whole = (value: number) => Math.max(1, Math.round(value));
  const base = { id: freshId(job, word), on: true };
  const high = whole(length * 0.8);
  const rise = Math.min(whole(diameter * 0.4), whole(length * 0.3));
  const shaped = (profile: ShapedCut["profile"]): ShapedCut => ({ ...base, kind: "shaped", end: "top", direction: 0, profile });
  const opening = (outline: OpeningCut["outline"]): OpeningCut => ({ ...base, kind: "opening", outline, direction: 0, height: whole(length * 0.4), offset: 0, through: "near" });
  const wide = whole(diameter * 0.4);
  switch (word) {
    case "plane":
      return { ...base, kind: "plane", end: "top", angle: 30, direction: 180, at: "high", height: high };
    case "hollow":
      return shaped({ shape: "hollow", radius: whole(diameter * 0.6), centre: 0, height: high - rise });
    case "nose":
      return shaped({ shape: "nose", radius: whole(diameter * 0.5), centre: 0, height: high });
    case "ogee":
      return shaped({ shape: "ogee", low: high - rise, high, rising: "right", radius: null });
    case "step":
      return shaped({ shape: "step", low: high - rise, high, rising: "right", position: 0 });
    case "vee":
      return shaped({ shape: "vee", angle: 90, centre: 0, height: high - rise });
    case "free":
      return shaped({ shape: "free", start: { x: -whole(diameter * 0.6), z: high - rise }, legs: [{ to: { x: 0, z: high } }, { to: { x: whole(diameter * 0.6), z: high - rise } }] });
    case "round":
      return opening({ shape: "round", diameter: wide });
    case "rectangle":
      return opening({ shape: "rectangle", width: wide, length: whole(wide * 0.75), turn: 0 });
    case "slot":
      return opening({ shape: "slot", width: whole(wide * 0.5), length: wide, turn: 0 });
  }
}
