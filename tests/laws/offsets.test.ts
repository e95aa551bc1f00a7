import { areaD, differenceD, EndType, FillRule, inflatePathsD, JoinType, type PathD, type PathsD } from "clipper2-ts";
import { expect, it } from "vitest";
import { flattenSegments, type FabricatedPiece, type Segment } from "../../src/core/index";
import { offsetRun } from "../../src/core/fabricate/offsetRun";
import { runsOf } from "../../src/core/fabricate/place";
import { expectClose } from "../support/approximate";
import { randomShop } from "../support/randomShop";

// Against clipper2-ts, a general library of polygon clipping and offsetting: what an allowance adds is what lies within its width of
// the net edge, outside the pattern; less the two notches.

const PLACES = 5;

/** Straightness of curves handed to the library, mm. */
const FINE = 0.01;

const path = (segments: readonly Segment[]): PathD => flattenSegments(segments, FINE).map(({ x, y }) => ({ x, y }));
const area = (paths: PathsD) => paths.reduce((sum, one) => sum + areaD(one), 0);

/** The band beside a run of edge, round at its bends, ending square. */
const band = (run: readonly Segment[], width: number) => inflatePathsD([path(run)], width, JoinType.Round, EndType.Butt, 2, PLACES, FINE);

interface Strip { readonly width: number; readonly run: readonly Segment[]; /** All other net edges. */ readonly others: readonly (readonly Segment[])[] }

function stripsOf({ net, allowances, piece }: FabricatedPiece, cuts: Parameters<typeof runsOf>[2]): Strip[] {
  const runs = net.flatMap(({ kind, segments }) => runsOf(segments, piece.pattern.girth, cuts).map((run) => ({ kind, ...run })));
  return runs.flatMap(({ kind, place, segments }) => {
    const allowance = kind === "outline" ? allowances.find((one) => one.place === place) : undefined;
    return allowance ? [{ width: allowance.width, run: segments, others: runs.map((one) => one.segments).filter((one) => one !== segments) }] : [];
  });
}

it("allowances of random jobs lie within the bands the library makes, and fill them but for the ends", () => {
  let count = 0;
  for (const { name, development, fabrication } of randomShop(0, 14)) {
    const [piece] = fabrication.pieces;
    if (!piece || piece.allowances.length === 0 || piece.hand === "opposite") continue;
    const net = piece.net.map(({ segments }) => path(segments));
    const added = differenceD(piece.contours.map(({ segments }) => path(segments)), net, FillRule.NonZero, PLACES);
    const strips = stripsOf(piece, development.job.part.cuts);
    const bands = strips.flatMap(({ run, width }) => band(run, width));
    const ends = strips.flatMap(({ run, width }) => [run[0]!.from, run.at(-1)!.to].flatMap(({ x, y }) => inflatePathsD([[{ x, y }, { x: x + 1e-3, y }]], 1.5 * width, JoinType.Round, EndType.Round, 2, PLACES)));
    const edges = strips.reduce((sum, { run }) => sum + flattenSegments(run, FINE).reduce((length, b, i, all) => length + Math.hypot(b.x - all[Math.max(0, i - 1)]!.x, b.y - all[Math.max(0, i - 1)]!.y), 0), 0);
    const slack = 4 * FINE * edges + 0.01;
    expect(Math.abs(area(differenceD(added, [...bands, ...ends], FillRule.NonZero, PLACES))), `${name}: beyond the band`).toBeLessThan(slack);
    for (const { run, width, others } of strips) {
      // Near another edge the band reaches through a narrow place of the pattern to its other side.
      const elsewhere = others.flatMap((other) => inflatePathsD([path(other)], width, JoinType.Round, EndType.Round, 2, PLACES, FINE));
      const short = differenceD(band(run, width), [...added, ...net, ...ends, ...elsewhere], FillRule.NonZero, PLACES);
      expect(Math.abs(area(short)), `${name}: short of the band`).toBeLessThan(slack);
    }
    count += strips.length;
  }
  expect(count).toBeGreaterThan(6);
});

it("offsetRun round a closed ring is the library's inflated polygon, inwards and outwards", () => {
  const quarter = (a: number): Segment => ({
    kind: "arc", from: { x: 40 * Math.cos(a), y: 40 * Math.sin(a) }, to: { x: 40 * Math.cos(a + Math.PI / 2), y: 40 * Math.sin(a + Math.PI / 2) }, centre: { x: 0, y: 0 }, anticlockwise: true,
  });
  const ring = [0, 1, 2, 3].map((i) => quarter((i * Math.PI) / 2));
  for (const width of [6, -6]) {
    const own = offsetRun(ring, width, 1e-4);
    expectClose(area(inflatePathsD([path(ring)], width, JoinType.Round, EndType.Polygon, 2, PLACES, FINE)), own.ok ? areaD(path(own.segments)) : NaN, 2 * FINE * 300);
  }
});
