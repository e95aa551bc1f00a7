// Which measures define the piece? The fields of the job, each once, and nothing that follows from them: what a question may state.

import type { Development, Job, Piece, PlaneCut } from "../../core/index";
import type { Figures } from "../figures";
import { openingMeasures } from "../dimension/openingMeasures";
import { givingView } from "../steps/cutSight";
import type { ViewDimension, ViewMeasures, ViewNote } from "../dimension/viewMeasures";
import { type Broadside, type ViewName, type Views, sideways } from "../view/views";
import type { AllLessonWords } from "./lessonWords";
import { type GivenPoint, shapedGiven } from "./shapedGiven";

/** mm: nearer than this a measure is nothing, and two are one. */
const SAME = 1e-6;

/** The measures of each view; angles, radii and directions the views draw of themselves. */
export function givenMeasures({ job }: Development, piece: Piece, views: Views, figures: Figures, words: AllLessonWords): Record<ViewName, ViewMeasures> {
  const made = openingMeasures(job, piece, views, figures);
  const lengths: Record<ViewName, ViewDimension[]> = { front: [...made.front.lengths], top: [...made.top.lengths], side: [...made.side.lengths] };
  const notes: Record<ViewName, ViewNote[]> = { front: [...made.front.notes], top: [...made.top.notes], side: [...made.side.notes] };
  lengths.front.push(diameterGiven(job, piece, figures, words));
  const radius = piece.form.cutRadius;
  const put = (name: ViewName, points: readonly GivenPoint[]) => {
    for (const point of points) for (const one of dimensionsOf(point, radius, figures)) if (!lengths[name].some((other) => isSame(one, other))) lengths[name].push(one);
  };
  if (piece.trimmed.edges.some(({ owner }) => owner.kind === "top")) put("front", [{ x: -radius, z: job.part.length, zField: "length", xField: null, clause: "part" }]);
  const cutting = new Set(piece.trimmed.edges.flatMap(({ owner }) => (owner.kind === "cut" ? [owner.id] : [])));
  for (const cut of job.part.cuts) {
    if (!cutting.has(cut.id) || cut.kind === "opening") continue;
    const name = givingView(cut, views) ?? "front";
    const view = views[name];
    if (view.kind !== "broadside") continue;
    if (cut.kind === "plane") {
      put(name, [planePoint(cut, view, radius)]);
      if (givingView(cut, views) === null) notes[name].push({ text: words.lesson.fromSquare(figures.angle(cut.angle)), centre: { x: 0, y: cut.height }, ref: { clause: `cut:${cut.id}`, field: "angle" } });
    } else {
      const { points, note } = shapedGiven(cut, view, (angle) => words.lesson.included(figures.angle(angle)));
      put(name, points);
      notes[name].push(...note);
    }
  }
  return { front: { lengths: lengths.front, notes: notes.front }, top: { lengths: lengths.top, notes: notes.top }, side: { lengths: lengths.side, notes: notes.side } };
}

/** The diameter as the job states it, with the surface it is measured on when the sheet has a thickness. */
function diameterGiven({ part }: Job, { form: { cutRadius, thickness } }: Piece, figures: Figures, words: AllLessonWords): ViewDimension {
  const surface = thickness > 0 ? ` ${words.sheet.surface[part.basis]}` : "";
  return {
    along: "across", group: "ends", ref: { clause: "part", field: "diameter" }, text: `⌀${figures.length(part.diameter)}${surface}`,
    a: { x: -cutRadius, y: 0 }, b: { x: cutRadius, y: 0 },
  };
}

/** The place of a plane whose height is given. */
function planePoint({ id, direction, at, height }: PlaneCut, view: Broadside, radius: number): GivenPoint {
  const theta = (direction * Math.PI) / 180 + (at === "low" ? Math.PI : 0);
  return { x: at === "axis" ? 0 : sideways(view, radius, theta), z: height, zField: "height", xField: null, clause: `cut:${id}` };
}

function dimensionsOf({ x, z, xField, zField, clause }: GivenPoint, radius: number, figures: Figures): ViewDimension[] {
  const up: ViewDimension[] = zField === null || Math.abs(z) < SAME ? [] : [{
    along: "axis", group: "ends", text: figures.length(z), ref: { clause, field: zField }, a: { x: radius, y: 0 }, b: { x, y: z },
  }];
  // On the contour the diameter says it; beyond it nothing of the profile is left.
  const across: ViewDimension[] = xField === null || Math.abs(x) < SAME || Math.abs(x) > radius - SAME ? [] : [{
    along: "across", group: "ends", text: figures.length(Math.abs(x)), ref: { clause, field: xField }, a: { x: 0, y: z }, b: { x, y: z }, beside: [z, z],
  }];
  return [...up, ...across];
}

function isSame(a: ViewDimension, b: ViewDimension): boolean {
  const span = ({ along, a: from, b: to }: ViewDimension) => (along === "axis" ? [from.y, to.y] : [from.x, to.x]).sort((p, q) => p - q);
  const [first, second] = [span(a), span(b)];
  return a.along === b.along && first.every((place, i) => Math.abs(place - (second[i] ?? NaN)) < SAME);
}
