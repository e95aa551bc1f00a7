import { angle, arrow, bothWays, line, place, size, thin, thinCircle, type HelpRow, type HelpTable } from "../../help/helpRow";
import type { SampleName } from "../../help/samples";

// The fields of the cuts that give an end its form.

const which = "Which end is cut. At the top what lies above the cut goes away, at the bottom what lies below.";

/** Which end, marked along the cut, and the side it is seen from. */
function everyEnd(kind: string, sample: SampleName, cut: HelpRow["marks"]): HelpTable {
  return {
    [`${kind}.end`]: { says: which, sample, view: "front", marks: cut },
    [`${kind}.direction`]: {
      says: "The side you look from to see this line in its true shape. It is cut straight through the pipe that way.",
      sample, view: "top", marks: [arrow(0, -104, 0, -58)],
    },
  };
}

const planeHelp: HelpTable = {
  "plane.end": { says: which, sample: "plane", view: "front", marks: [line(-50, 150, 50, 80)] },
  "plane.angle": {
    says: "How far the cut leans from square: 0° is straight across the pipe.",
    sample: "plane", view: "front", marks: [thin(-50, 150, 50, 150), bothWays(-50, 150, 66, 0, -35)],
  },
  "plane.direction": {
    says: "The side on which the cut is highest. In figures: degrees from the front, anticlockwise seen from above.",
    sample: "plane", view: "top", marks: [arrow(0, 0, -48, 0), place(-50, 0)],
  },
  "plane.height": {
    says: "How high the cut is above the base, at the point the next field names.",
    sample: "plane", view: "front", marks: [size(-50, 0, -50, 150, 22)],
  },
  "plane.at": {
    says: "The point of the cut whose height you give: on the axis, or where the cut is lowest or highest.",
    sample: "plane", view: "front", marks: [place(-50, 150), place(0, 115), place(50, 80)],
  },
};

const arcHelp: HelpTable = {
  ...everyEnd("hollow", "hollow", [arrow(0, 150, 0, 98)]),
  "hollow.profile.radius": {
    says: "The radius of the hollow. To sit on another pipe, give that pipe’s own radius.",
    sample: "hollow", view: "front", marks: [place(0, 155), arrow(0, 155, 30, 103)],
  },
  "hollow.profile.height": { says: "How high the deepest point of the hollow is above the base.", sample: "hollow", view: "front", marks: [size(0, 0, 0, 95, 72)] },
  "hollow.profile.centre": {
    says: "How far the hollow stands to the right of the axis; less than 0 is to the left.",
    sample: "hollow aside", view: "front", marks: [size(0, 95, 18, 95, -40), place(18, 95)],
  },
  ...everyEnd("nose", "nose", [arrow(0, 190, 0, 143)]),
  "nose.profile.radius": { says: "The radius of the round nose.", sample: "nose", view: "front", marks: [place(0, 80), arrow(0, 80, 30, 132)] },
  "nose.profile.height": { says: "How high the crown of the nose is above the base.", sample: "nose", view: "front", marks: [size(0, 0, 0, 140, 72)] },
  "nose.profile.centre": {
    says: "How far the nose stands to the right of the axis; less than 0 is to the left.",
    sample: "nose aside", view: "front", marks: [size(0, 140, 18, 140, 20), place(18, 140)],
  },
};

const levelHelp = (kind: "ogee" | "step", sample: SampleName, what: string): HelpTable => ({
  [`${kind}.profile.low`]: { says: `How high the lower end of the ${what} is above the base.`, sample, view: "front", marks: [size(-50, 0, -50, 90, 22)] },
  [`${kind}.profile.high`]: { says: `How high the upper end of the ${what} is above the base.`, sample, view: "front", marks: [size(50, 0, 50, 140, -22)] },
  [`${kind}.profile.rising`]: { says: `Whether the ${what} rises to the left or to the right.`, sample, view: "front", marks: [arrow(-40, 120, 20, 162)] },
});

const risingHelp: HelpTable = {
  ...everyEnd("ogee", "ogee", [place(-50, 90), place(0, 115), place(50, 140)]),
  ...levelHelp("ogee", "ogee", "ogee"),
  "ogee.profile.radius.kind": {
    says: "Two equal arcs meet in the middle. They end level, or have the radius you give and then end at a slant.",
    sample: "ogee", view: "front", marks: [line(-74, 90, -26, 90), line(26, 140, 74, 140)],
  },
  "ogee.profile.radius": { says: "The radius of both arcs.", sample: "ogee", view: "front", marks: [place(-50, 152), arrow(-50, 152, -19, 98)] },
  ...everyEnd("step", "step", [line(-50, 90, 14, 90), line(14, 90, 14, 140), line(14, 140, 50, 140)]),
  ...levelHelp("step", "step", "step"),
  "step.profile.position": {
    says: "How far the upright of the step stands to the right of the axis; less than 0 is to the left.",
    sample: "step", view: "front", marks: [size(0, 140, 14, 140, 22)],
  },
};

const veeHelp: HelpTable = {
  ...everyEnd("vee", "vee", [line(-50, 145, 0, 95), line(0, 95, 50, 145)]),
  "vee.profile.angle": { says: "The angle between the two sides of the vee.", sample: "vee", view: "front", marks: [bothWays(0, 95, 44, 45, 135)] },
  "vee.profile.height": { says: "How high the point of the vee is above the base.", sample: "vee", view: "front", marks: [size(0, 0, 0, 95, 72)] },
  "vee.profile.centre": {
    says: "How far the point stands to the right of the axis; less than 0 is to the left.",
    sample: "vee aside", view: "front", marks: [size(0, 80, 18, 80, -36), place(18, 80)],
  },
};

const freeHelp: HelpTable = {
  ...everyEnd("free", "free", [arrow(-60, 100, -22, 133.3)]),
  "free.profile.start.x": { says: "How far to the right of the axis the profile begins; less than 0 is to the left. It must begin outside the pipe.", sample: "free", view: "front", marks: [size(-60, 100, 0, 100, 60), place(-60, 100)] },
  "free.profile.start.z": { says: "How high above the base the profile begins.", sample: "free", view: "front", marks: [size(-60, 0, -60, 100, 14), place(-60, 100)] },
  "free.profile.legs.kind": { says: "How the profile goes on to the next corner: straight, or along an arc given by its radius or by its centre.", sample: "free", view: "front", marks: [place(-60, 100), line(-60, 100, -20, 135), place(-20, 135)] },
  "free.profile.legs.to.x": { says: "How far to the right of the axis this leg ends; less than 0 is to the left.", sample: "free", view: "front", marks: [size(-20, 135, 0, 135, 26), place(-20, 135)] },
  "free.profile.legs.to.z": { says: "How high above the base this leg ends.", sample: "free", view: "front", marks: [size(-20, 0, -20, 135, 52), place(-20, 135)] },
  "free.profile.legs.radius": { says: "The radius of this arc: at least half the way it has to span.", sample: "free", view: "front", marks: [place(-12.4, 95.8), arrow(-12.4, 95.8, 9, 129.6)] },
  "free.profile.legs.turn": { says: "Which way the arc turns as you go along it, as if you were walking on it.", sample: "free", view: "front", marks: [angle(-12.4, 95.8, 54, 100, 20)] },
  "free.profile.legs.long": { says: "Two arcs of this radius lead there: the short way, or the long way round.", sample: "free", view: "front", marks: [thinCircle(-12.4, 95.8, 40), place(-20, 135), place(25, 110)] },
  "free.profile.legs.centre.x": { says: "How far to the right of the axis the arc has its centre. It must be equally far from both ends of the arc.", sample: "free", view: "front", marks: [size(-12.4, 95.8, 0, 95.8, -30), place(-12.4, 95.8)] },
  "free.profile.legs.centre.z": { says: "How high above the base the arc has its centre.", sample: "free", view: "front", marks: [size(-12.4, 0, -12.4, 95.8, 60), place(-12.4, 95.8)] },
};

export const endsHelp: HelpTable = { ...planeHelp, ...arcHelp, ...risingHelp, ...veeHelp, ...freeHelp };
