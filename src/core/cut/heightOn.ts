// A face by its reference: its cutter, and its height on an element.

import type { Cutter, FaceRef } from "./cutter";
import { faceHeight } from "./faceHeight";

/** The height of a face on the element at θ. @throws RangeError when there is no such cutter. */
export function heightOn(cutters: readonly Cutter[], face: FaceRef, theta: number): number {
  return faceHeight(cutterAt(cutters, face), face.face, theta);
}

/** The cutter a face belongs to. @throws RangeError when there is no such cutter. */
export function cutterAt(cutters: readonly Cutter[], { cutter }: FaceRef): Cutter {
  const found = cutters[cutter];
  if (!found) throw new RangeError(`no cutter ${cutter} among ${cutters.length}`);
  return found;
}
