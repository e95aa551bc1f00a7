import DxfParser, { type IArcEntity, type ILineEntity, type ISplineEntity } from "dxf-parser";

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Points of each spline stretch between two knots, and of an arc. */
const POINTS = 400;

/** The closed loops on the layer that lines, arcs and splines make, joined where their ends are within `joint` of each other; an open end throws. */
export function readLoops(text: string, layer: string, joint: number): Point[][] {
  const file = new DxfParser().parseSync(text);
  if (!file) throw new Error("not a DXF file");
  const left = file.entities.filter((entity) => entity.layer === layer).flatMap((entity) => {
    if (entity.type === "LINE") return [(entity as ILineEntity).vertices.map(({ x, y }) => ({ x, y }))];
    if (entity.type === "ARC") return [arcPoints(entity as IArcEntity)];
    return entity.type === "SPLINE" ? [splinePoints(entity as ISplineEntity)] : [];
  });
  const loops: Point[][] = [];
  for (let loop = left.shift(); loop; loop = left.shift()) {
    while (apart(loop[0]!, loop.at(-1)!) > joint) {
      const end = loop.at(-1)!;
      const next = left.findIndex((one) => Math.min(apart(one[0]!, end), apart(one.at(-1)!, end)) <= joint);
      if (next < 0) throw new Error(`open at ${end.x}, ${end.y}`);
      const [one] = left.splice(next, 1);
      loop.push(...(apart(one![0]!, end) <= joint ? one! : [...one!].reverse()).slice(1));
    }
    loops.push(loop);
  }
  return loops;
}

function apart(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

function arcPoints({ center, radius, startAngle, endAngle }: IArcEntity): Point[] {
  const sweep = (endAngle - startAngle + 4 * Math.PI) % (2 * Math.PI);
  return Array.from({ length: POINTS + 1 }, (_, i) => {
    const angle = startAngle + (i * sweep) / POINTS;
    return { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
  });
}

/** By de Boor's recursion, from the knots and control points alone. */
function splinePoints({ controlPoints = [], knotValues: knots, degreeOfSplineCurve: degree }: ISplineEntity): Point[] {
  const points: Point[] = [];
  for (let span = degree; span < controlPoints.length; span++) {
    const from = knots[span]!, to = knots[span + 1]!;
    if (to > from) for (let i = points.length === 0 ? 0 : 1; i <= POINTS; i++) points.push(deBoor(controlPoints, knots, degree, span, from + ((to - from) * i) / POINTS));
  }
  return points;
}

function deBoor(points: readonly Point[], knots: readonly number[], degree: number, span: number, t: number): Point {
  const d = Array.from({ length: degree + 1 }, (_, j) => points[j + span - degree]!);
  for (let round = 1; round <= degree; round++) {
    for (let j = degree; j >= round; j--) {
      const low = knots[j + span - degree]!, share = (t - low) / (knots[j + 1 + span - round]! - low);
      d[j] = { x: (1 - share) * d[j - 1]!.x + share * d[j]!.x, y: (1 - share) * d[j - 1]!.y + share * d[j]!.y };
    }
  }
  return d[degree]!;
}
