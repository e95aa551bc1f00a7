import { expectAllClose } from "../support/approximate";
import { firstCrossing } from "../support/crossings";
import type { LawCase } from "../support/lawCase";
import { loopArea } from "../support/loopSampling";

/** Each segment begins exactly where the one before it ends, round every loop. */
export function checkClosed({ piece }: LawCase): void {
  for (const { segments } of piece.pattern.loops) {
    if (segments.length === 0) throw new Error("a loop without segments");
    segments.forEach((segment, index) => {
      const next = segments[(index + 1) % segments.length]!;
      if (segment.to.x !== next.from.x || segment.to.y !== next.from.y) {
        throw new Error(`segment ${index} ends at ${segment.to.x}, ${segment.to.y}; the next begins at ${next.from.x}, ${next.from.y}`);
      }
    });
  }
}

/** No loop crosses itself or another by more than 0.00001 mm, seen on chords that stray by 0.0005 mm at most. */
export function checkSimple({ runs }: LawCase): void {
  const crossing = firstCrossing(runs(), 1e-5);
  if (crossing) throw new Error(`loops ${crossing.loops.join(" and ")} cross near ${crossing.at.x}, ${crossing.at.y}`);
}

/** Outlines run anticlockwise, openings clockwise. */
export function checkOrientation({ piece }: LawCase): void {
  piece.pattern.loops.forEach((loop, index) => {
    const area = loopArea(loop);
    if (!(loop.kind === "outline" ? area > 0 : area < 0)) throw new Error(`loop ${index}, ${loop.kind}, has the area ${area}`);
  });
}

/** Nothing lies left or right of the girth, below the base or above the stock's length. */
export function checkInsideBlank({ piece, elements, runs }: LawCase): void {
  const slack = 1e-9 * Math.max(elements.length, elements.radius) + 0.005;
  for (const { x, y } of runs().flat()) {
    const out = Math.max(-x, x - piece.pattern.girth, -y, y - elements.length);
    if (out > slack) throw new Error(`the point ${x}, ${y} lies ${out} mm outside the blank`);
  }
}

/** Both seam edges are the same: their stretches of the element, joined where they touch, have the same heights. */
export function checkSeamEdges({ piece }: LawCase): void {
  const { girth, loops } = piece.pattern;
  const seams = loops.flatMap((loop) => loop.segments).filter((segment) => segment.owner.kind === "seam");
  const edge = (x: number): number[] => {
    const ends = seams.filter((segment) => Math.abs(segment.from.x - x) < 1e-9 * girth).flatMap((segment) => [segment.from.y, segment.to.y]).sort((a, b) => a - b);
    return ends.filter((y, index) => (index % 2 === 1 ? ends[index + 1] : ends[index - 1]) !== y);
  };
  expectAllClose(edge(girth), edge(0), 1e-7, "seam ends");
}
