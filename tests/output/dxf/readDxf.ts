import DxfParser, { type ILineEntity, type ILwpolylineEntity, type ITextEntity } from "dxf-parser";

/** A contour as a reader of the format gives it back. */
export interface ReadContour {
  readonly layer: string;
  readonly isClosed: boolean;
  readonly corners: readonly { readonly x: number; readonly y: number; readonly bulge: number }[];
}

export interface ReadDxf {
  readonly units: unknown;
  readonly layers: readonly string[];
  readonly contours: readonly ReadContour[];
  readonly lines: readonly { readonly layer: string; readonly ends: readonly (readonly [number, number])[] }[];
  readonly texts: readonly string[];
  readonly kinds: readonly string[];
}

/** Reads with dxf-parser, a general reader of the format. */
export function readDxf(text: string): ReadDxf {
  const file = new DxfParser().parseSync(text);
  if (!file) throw new Error("not a DXF file");
  const of = <E>(kind: string) => file.entities.filter(({ type }) => type === kind) as unknown as E[];
  return {
    units: file.header["$INSUNITS"], layers: Object.keys(file.tables.layer.layers), kinds: file.entities.map(({ type }) => type),
    contours: of<ILwpolylineEntity>("LWPOLYLINE").map(({ layer, shape, vertices }) => ({
      layer, isClosed: shape, corners: vertices.map(({ x, y, bulge }) => ({ x, y, bulge: bulge ?? 0 })),
    })),
    lines: of<ILineEntity>("LINE").map(({ layer, vertices }) => ({ layer, ends: vertices.map(({ x, y }) => [x, y] as const) })),
    texts: of<ITextEntity>("TEXT").map((one) => one.text),
  };
}

/** Area (signed) and length of a closed contour: the format's own rule, bulge = tan of a quarter of the arc's angle. */
export function measured({ corners }: ReadContour): { area: number; length: number } {
  let [area, length] = [0, 0];
  corners.forEach((a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const chord = Math.hypot(b.x - a.x, b.y - a.y);
    const angle = 4 * Math.atan(a.bulge);
    area += (a.x * b.y - b.x * a.y) / 2;
    if (a.bulge === 0) {
      length += chord;
      return;
    }
    const radius = chord / (2 * Math.sin(Math.abs(angle) / 2));
    area += (radius * radius * (angle - Math.sin(angle))) / 2;
    length += radius * Math.abs(angle);
  });
  return { area, length };
}
