import type { Vec2 } from "../../../src/core/index";

/**
 * A path's points, read by the rules of SVG for the commands M, L, C, A and Z (y turned up again): curves and arcs in `steps` pieces.
 * Arcs by the implementation notes of SVG 1.1, F.6.5, for circles.
 */
export function readSvgPath(d: string, steps: number): { points: Vec2[]; isClosed: boolean; commands: string } {
  const points: Vec2[] = [];
  let [at, isClosed] = [{ x: 0, y: 0 }, false];
  const commands: string[] = [];
  for (const [, command = "", rest = ""] of d.matchAll(/([MLCAZ])([^MLCAZ]*)/g)) {
    const n = [...rest.matchAll(/-?\d+(?:\.\d+)?/g)].map(([one]) => Number(one));
    commands.push(command);
    if (command === "Z") isClosed = true;
    else {
      const to = { x: n.at(-2)!, y: n.at(-1)! };
      if (command === "C") points.push(...along(steps, (u) => cubic(at, { x: n[0]!, y: n[1]! }, { x: n[2]!, y: n[3]! }, to, u)));
      else if (command === "A") points.push(...arc(at, to, n[0]!, n[3] === 1, n[4] === 1, steps));
      else points.push(to);
      at = to;
    }
  }
  return { points: points.map(({ x, y }) => ({ x, y: -y })), isClosed, commands: commands.join("") };
}

function along(steps: number, at: (u: number) => Vec2): Vec2[] {
  return Array.from({ length: steps }, (_, i) => at((i + 1) / steps));
}

function cubic(a: Vec2, b: Vec2, c: Vec2, d: Vec2, u: number): Vec2 {
  const v = 1 - u;
  const mix = (p: number, q: number, r: number, s: number) => v ** 3 * p + 3 * v * v * u * q + 3 * v * u * u * r + u ** 3 * s;
  return { x: mix(a.x, b.x, c.x, d.x), y: mix(a.y, b.y, c.y, d.y) };
}

function arc(from: Vec2, to: Vec2, radius: number, isLarge: boolean, isPositive: boolean, steps: number): Vec2[] {
  const half = { x: (from.x - to.x) / 2, y: (from.y - to.y) / 2 };
  const r = Math.max(radius, Math.hypot(half.x, half.y));
  const away = Math.sqrt(Math.max(0, r * r - half.x ** 2 - half.y ** 2)) / Math.hypot(half.x, half.y) * (isLarge === isPositive ? -1 : 1);
  const centre = { x: (from.x + to.x) / 2 + away * half.y, y: (from.y + to.y) / 2 - away * half.x };
  const start = Math.atan2(from.y - centre.y, from.x - centre.x);
  let turn = Math.atan2(to.y - centre.y, to.x - centre.x) - start;
  if (isPositive && turn < 0) turn += 2 * Math.PI;
  if (!isPositive && turn > 0) turn -= 2 * Math.PI;
  return along(steps, (u) => ({ x: centre.x + r * Math.cos(start + u * turn), y: centre.y + r * Math.sin(start + u * turn) }));
}
