import type { Station, Stretch } from "../../src/core/index";
import { expectAllClose, expectClose, isClose } from "../support/approximate";
import type { Reach } from "../support/keptElements";
import type { LawCase } from "../support/lawCase";
import { directionAt } from "./checkSurface";

const ends = (reaches: readonly Reach[] | readonly Stretch[]): number[] => reaches.flatMap(({ from, to }) => [from, to]);

/** Every station reports the kept stretches of its element, each end right to 1e-9 of the pipe's size (see `checkStation` for elements along an edge). */
export function checkOrdinates(one: LawCase): void {
  one.piece.stations.forEach((station) => checkStation(one, station));
}

/**
 * Where the element of the station lies clear of upright edges and of the places where an edge begins, its stretches are those of the element itself, to 1e-9 of the
 * size. Else they are those of its neighbours on either side, the nearest of which may lie 1e-6 rad away (a sine near 1 tells no closer directions apart), as
 * far as an upright tangent lets these differ. Stretches and gaps of no length (an edge that only touches the element) count for nothing.
 */
function checkStation(one: LawCase, station: Station): void {
  const { elements, job } = one;
  const size = Math.max(elements.length, 2 * elements.radius);
  const theta = directionAt(one, station.girth);
  const sides = [["after", 1, station.after], ["before", -1, station.before]] as const;
  const clear = isClear(one, theta);
  for (const [side, along, reaches] of sides) {
    const what = `${side} ${station.label} at ${theta}`;
    if (clear) {
      expectAllClose(lasting(reaches, 1e-6), lasting(elements.at(theta), 1e-6), 1e-9 * size, what);
      continue;
    }
    const way = along * (job.development.face === "outside" ? 1 : -1);
    const matches = [1e-9, 1e-8, 1e-7, 1e-6].some((step) => {
      const slack = 3 * Math.sqrt(step) * size;
      return areClose(lasting(reaches, slack), lasting(elements.at(theta + way * step), slack), slack);
    });
    if (!matches) throw new Error(`${what}: ${ends(reaches).join()}, expected near ${ends(elements.at(theta + way * 1e-6)).join()}`);
  }
}

/** True where the elements 3e-8 rad to either side end within 1e-4 mm of where this one does. */
export function isClear({ elements }: LawCase, theta: number): boolean {
  const here = lasting(elements.at(theta), 1e-6);
  return [-3e-8, 3e-8].every((step) => areClose(lasting(elements.at(theta + step), 1e-6), here, 1e-4));
}

function areClose(actual: readonly number[], expected: readonly number[], tolerance: number): boolean {
  return actual.length === expected.length && actual.every((z, index) => isClose(z, expected[index]!, tolerance));
}

/** Ends of the reaches but for those, and for gaps, no longer than `sliver` mm. */
function lasting(reaches: readonly Reach[] | readonly Stretch[], sliver: number): number[] {
  const joined: Reach[] = [];
  for (const { from, to } of reaches) {
    const last = joined.at(-1);
    if (last && from - last.to <= sliver) joined[joined.length - 1] = { from: last.from, to };
    else joined.push({ from, to });
  }
  return ends(joined.filter(({ from, to }) => to - from > sliver));
}

/** Even stations lie at equal steps of the girth from the seam, in order, with a closing one at the full girth on the first one's element. */
export function checkSpacing({ piece, job }: LawCase): void {
  const { girth } = piece.pattern;
  const even = piece.stations.filter((station) => station.mark === "even");
  expectAllClose(even.map((station) => station.girth), Array.from({ length: job.development.stations }, (_, index) => (index * girth) / job.development.stations), 1e-9 * girth, "even stations");
  const closing = piece.stations.at(-1)!;
  if (closing.mark !== "closing" || piece.stations.filter((station) => station.mark === "closing").length !== 1) throw new Error("the last station is not the one closing station");
  expectClose(closing.girth, girth, 1e-9 * girth, "closing station");
  if (closing.label !== piece.stations[0]!.label) throw new Error(`the closing station is ${closing.label}, the first ${piece.stations[0]!.label}`);
  piece.stations.forEach((station, index) => {
    if (index > 0 && !(station.girth > piece.stations[index - 1]!.girth)) throw new Error(`station ${index} is not after the one before it`);
  });
}

/** Bottom, top, length and openings of a station are those of its stretches, wherever the two sides of its element agree. */
export function checkSummary({ piece }: LawCase): void {
  for (const station of piece.stations) {
    const list = ends(station.after);
    if (list.join() !== ends(station.before).join()) continue;
    if (station.bottom !== (list[0] ?? null)) throw new Error(`station ${station.label}: bottom ${station.bottom}`);
    if (station.top !== (list.at(-1) ?? null)) throw new Error(`station ${station.label}: top ${station.top}`);
    expectClose(station.length, station.after.reduce((sum, { from, to }) => sum + (to - from), 0), 1e-9 * piece.form.length, `length of ${station.label}`);
    expectAllClose(ends(station.openings), list.slice(1, -1), 0, `openings of ${station.label}`);
  }
}
