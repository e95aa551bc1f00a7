import init, { type OpenCascadeInstance, type TopoDS_Shape } from "replicad-opencascadejs";

/**
 * Solids of a general-purpose B-rep kernel, as an oracle that shares nothing with the core:
 * an upright cylinder and tools drawn as closed outlines of lines and arcs, extruded and taken away.
 */
export interface Kernel {
  readonly oc: OpenCascadeInstance;
  /** The solid cylinder about z from z = 0 to `length`, its own seam edge at an odd direction that no test cut meets. */
  cylinder(radius: number, length: number): TopoDS_Shape;
  /** The outline, closed, drawn in the frame's right and up, extruded along its out from `from` to `to`. */
  extrusion(frame: Frame, outline: Outline, from: number, to: number): TopoDS_Shape;
  /** What is left of `solid` without `tool`. Throws when the kernel reports failure. */
  cut(solid: TopoDS_Shape, tool: TopoDS_Shape): TopoDS_Shape;
}

export type Triple = readonly [number, number, number];

export interface Frame {
  readonly origin: Triple;
  readonly right: Triple;
  readonly up: Triple;
  readonly out: Triple;
}

/** A closed outline: each leg goes on from where the one before ended, the first from where the last ends. */
export type Outline = readonly OutlineLeg[];

export interface OutlineLeg {
  readonly to: readonly [number, number];
  /** A point of the circular arc between the ends; a straight line without it. */
  readonly via?: readonly [number, number];
}

/** Radians from x; far from every direction in use. */
const seamOfKernel = 0.7391;

export async function loadKernel(): Promise<Kernel> {
  const oc = await init();
  return {
    oc,
    cylinder: (radius, length) => cylinder(oc, radius, length),
    extrusion: (frame, outline, from, to) => extrusion(oc, frame, outline, from, to),
    cut: (solid, tool) => cut(oc, solid, tool),
  };
}

function cylinder(oc: OpenCascadeInstance, radius: number, length: number): TopoDS_Shape {
  const seam = new oc.gp_Dir(Math.cos(seamOfKernel), Math.sin(seamOfKernel), 0);
  const axes = new oc.gp_Ax2(new oc.gp_Pnt(0, 0, 0), new oc.gp_Dir(0, 0, 1), seam);
  return new oc.BRepPrimAPI_MakeCylinder(axes, radius, length).Shape();
}

function extrusion(oc: OpenCascadeInstance, frame: Frame, outline: Outline, from: number, to: number): TopoDS_Shape {
  const place = ([x, y]: readonly [number, number]) => {
    const at = (i: 0 | 1 | 2) => frame.origin[i] + x * frame.right[i] + y * frame.up[i] + from * frame.out[i];
    return new oc.gp_Pnt(at(0), at(1), at(2));
  };
  const wire = new oc.BRepBuilderAPI_MakeWire();
  let start = place(last(outline).to);
  for (const leg of outline) {
    const end = place(leg.to);
    const edge = leg.via
      ? new oc.BRepBuilderAPI_MakeEdge(new oc.GC_MakeArcOfCircle(start, place(leg.via), end).Value())
      : new oc.BRepBuilderAPI_MakeEdge(start, end);
    wire.Add(edge.Edge());
    if (!wire.IsDone()) throw new Error("the outline does not join");
    start = end;
  }
  const face = new oc.BRepBuilderAPI_MakeFace(wire.Wire(), true).Face();
  const [x, y, z] = frame.out;
  const height = to - from;
  return new oc.BRepPrimAPI_MakePrism(face, new oc.gp_Vec(height * x, height * y, height * z)).Shape();
}

function cut(oc: OpenCascadeInstance, solid: TopoDS_Shape, tool: TopoDS_Shape): TopoDS_Shape {
  const operation = new oc.BRepAlgoAPI_Cut(solid, tool);
  if (!operation.IsDone()) throw new Error("the kernel could not cut");
  return operation.Shape();
}

function last(outline: Outline): OutlineLeg {
  const leg = outline.at(-1);
  if (!leg) throw new RangeError("an outline needs legs");
  return leg;
}
