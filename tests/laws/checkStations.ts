import type { Station, Stretch } from "../../src/core/index";
import { expectAllClose, expectClose } from "../support/approximate";
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
 * size. Else they are those of its neighbours 1e-9 rad away, as far as an upright tangent lets these differ (0.02 mm).
 */
function checkStation(one: LawCase, station: Station): void {
  const { elements, job } = one;
  const size = Math.max(elements.length, 2 * elements.radius);
  const theta = directionAt(one, station.girth);
  const around = [-1e-9, 0, 1e-9].map((step) => ends(elements.at(theta + step)));
  const clear = around.every((list) => list.length === around[1]!.length && list.every((z, index) => Math.abs(z - around[1]![index]!) < 1e-5));
  if (clear) {
    expectAllClose(ends(station.after), around[1]!, 1e-9 * size, `after ${station.label} at ${theta}`);
    expectAllClose(ends(station.before), around[1]!, 1e-9 * size, `before ${station.label} at ${theta}`);
    return;
  }
  const way = job.development.face === "outside" ? 1 : -1;
  expectAllClose(lasting(station.after), lasting(elements.at(theta + way * 1e-9)), 0.02, `after ${station.label} at ${theta}`);
  expectAllClose(lasting(station.before), lasting(elements.at(theta - way * 1e-9)), 0.02, `before ${station.label} at ${theta}`);
}

/** Ends of the reaches without those, and without gaps, shorter than 0.05 mm. */
function lasting(reaches: readonly Reach[] | readonly Stretch[]): number[] {
  const joined: Reach[] = [];
  for (const { from, to } of reaches) {
    const last = joined.at(-1);
    if (last && from - last.to < 0.05) joined[joined.length - 1] = { from: last.from, to };
    else joined.push({ from, to });
  }
  return ends(joined.filter(({ from, to }) => to - from >= 0.05));
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
