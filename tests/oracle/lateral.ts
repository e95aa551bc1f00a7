import type { OpenCascadeInstance, TopoDS_Edge, TopoDS_Face, TopoDS_Shape } from "replicad-opencascadejs";

/** What the kernel says of the part of a solid's skin that lies on the cylinder of `radius` about z. */
export interface Lateral {
  /** mm². */
  readonly area: number;
  /** Length in mm of each edge that bounds it; the kernel's own seam edges and edges between two lateral faces left out. */
  readonly edges: readonly number[];
}

/**
 * Area by the kernel's adaptive integration (the overload with an Eps; the one without strays by whole mm²).
 * Lengths by integrating the speed of the edge's curve here: the kernel's LinearProperties strays by micrometres.
 */
export function lateral(oc: OpenCascadeInstance, solid: TopoDS_Shape, radius: number): Lateral {
  const faces = facesOnCylinder(oc, solid, radius);
  const edges = faces.flatMap((face) => edgesOf(oc, face));
  const bounding = edges.filter((edge) => edges.filter((other) => other.IsSame(edge)).length === 1);
  return {
    area: faces.reduce((sum, face) => sum + faceArea(oc, face), 0),
    edges: bounding.map((edge) => edgeLength(oc, edge)),
  };
}

function facesOnCylinder(oc: OpenCascadeInstance, solid: TopoDS_Shape, radius: number): TopoDS_Face[] {
  return explore(oc, solid, "TopAbs_FACE")
    .map((shape) => oc.TopoDS.Face(shape))
    .filter((face) => {
      const surface = new oc.BRepAdaptor_Surface(face);
      if (surface.GetType() !== oc.GeomAbs_SurfaceType.GeomAbs_Cylinder) return false;
      const cylinder = surface.Cylinder();
      const axis = cylinder.Axis();
      const at = axis.Location();
      const off = Math.hypot(at.X(), at.Y(), cylinder.Radius() - radius) + 1 - Math.abs(axis.Direction().Z());
      // The kernel hands the primitive's own cylinder through: only rounding may separate them.
      return off < 1e-9 * radius;
    });
}

function edgesOf(oc: OpenCascadeInstance, face: TopoDS_Face): TopoDS_Edge[] {
  return explore(oc, face, "TopAbs_EDGE").map((shape) => oc.TopoDS.Edge(shape));
}

function explore(oc: OpenCascadeInstance, shape: TopoDS_Shape, kind: "TopAbs_FACE" | "TopAbs_EDGE"): TopoDS_Shape[] {
  const found: TopoDS_Shape[] = [];
  const explorer = new oc.TopExp_Explorer(shape, oc.TopAbs_ShapeEnum[kind]);
  for (; explorer.More(); explorer.Next()) found.push(explorer.Current());
  return found;
}

function faceArea(oc: OpenCascadeInstance, face: TopoDS_Face): number {
  const properties = new oc.GProp_GProps();
  // Relative error asked of the kernel's integration.
  oc.BRepGProp.SurfaceProperties(face, properties, 1e-9, false);
  return properties.Mass();
}

function edgeLength(oc: OpenCascadeInstance, edge: TopoDS_Edge): number {
  const curve = new oc.BRepAdaptor_Curve(edge);
  const first = curve.FirstParameter();
  const step = (curve.LastParameter() - first) / lengthSteps;
  const speed = (u: number) => curve.EvalD1(u).D1.Magnitude();
  let length = 0;
  for (let i = 0; i < lengthSteps; i += 1) {
    const middle = first + (i + 0.5) * step;
    for (const [place, weight] of gauss3) length += (weight * step * speed(middle + (place * step) / 2)) / 2;
  }
  return length;
}

/** Splines of the kernel change polynomial at knots: many short steps serve them better than a high order. */
const lengthSteps = 400;

/** Three-point Gauss-Legendre rule on [-1, 1]. */
const gauss3 = [
  [-Math.sqrt(0.6), 5 / 9],
  [0, 8 / 9],
  [Math.sqrt(0.6), 5 / 9],
] as const;
