import { useMemo } from "react";
import type { Check } from "../check/useCheck";
import { drawnSize, markedDrawing, type DrawnSize, type Marked } from "./markedDrawing";
import { usePhoto } from "./photo";

/** What the marks say about the drawing that is checked, and its size on paper. */
export function useMarkedDrawing({ piece, job, readings: { scale } }: Check): Marked & { readonly size: DrawnSize } {
  const photo = usePhoto();
  return useMemo(() => {
    const size = drawnSize(piece, scale);
    return { ...markedDrawing(photo, job.units, size), size };
  }, [photo, piece, job.units, scale]);
}
