import type { TopoDS_Shape } from "replicad-opencascadejs";
import type { Kernel } from "../oracle/kernel";
import { lateral } from "../oracle/lateral";

/** One way for the kernel to cut a cylinder by a plane; the solids are made beforehand, `cut` is the cut alone. */
export interface KernelCut {
  readonly name: string;
  readonly cut: () => void;
  /** The cut, and the area and edge lengths of its lateral faces. */
  readonly measuredCut: () => void;
  /** Lateral area in mm² of what the cut leaves. */
  readonly area: () => number;
}

/** The plane rises at 45 degrees and meets the axis at `height`. */
export function kernelCuts(kernel: Kernel, radius: number, length: number, height: number): readonly KernelCut[] {
  const { oc } = kernel;
  const plane = new oc.gp_Pln(new oc.gp_Pnt(0, 0, height), new oc.gp_Dir(-1, 0, 1));
  const reach = 10 * (radius + length);
  const half = new oc.BRepPrimAPI_MakeHalfSpace(new oc.BRepBuilderAPI_MakeFace(plane, -reach, reach, -reach, reach).Face(), new oc.gp_Pnt(0, 0, reach)).Solid();
  const solid = kernel.cylinder(radius, length);
  return [
    way(kernel, "kernel: the solid cylinder", solid, half, radius),
    way(kernel, "kernel: its lateral face alone", lateralFace(kernel, solid), half, radius),
  ];
}

function way(kernel: Kernel, name: string, shape: TopoDS_Shape, tool: TopoDS_Shape, radius: number): KernelCut {
  return {
    name,
    cut: () => {
      const operation = new kernel.oc.BRepAlgoAPI_Cut(shape, tool);
      operation.Shape().delete();
      operation.delete();
    },
    measuredCut: () => {
      const operation = new kernel.oc.BRepAlgoAPI_Cut(shape, tool);
      lateral(kernel.oc, operation.Shape(), radius);
      operation.delete();
    },
    area: () => lateral(kernel.oc, kernel.cut(shape, tool), radius).area,
  };
}

function lateralFace({ oc }: Kernel, solid: TopoDS_Shape): TopoDS_Shape {
  const explorer = new oc.TopExp_Explorer(solid, oc.TopAbs_ShapeEnum.TopAbs_FACE);
  for (; explorer.More(); explorer.Next()) {
    const face = oc.TopoDS.Face(explorer.Current());
    if (new oc.BRepAdaptor_Surface(face).GetType() === oc.GeomAbs_SurfaceType.GeomAbs_Cylinder) return face;
  }
  throw new Error("a cylinder without its lateral face");
}
