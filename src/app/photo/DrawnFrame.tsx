import { picturePoint, type Rectification } from "../../core/index";
import type { DrawnSize } from "./markedDrawing";
import { drawnCorners } from "./markedDrawing";

/** Points of a side, so that the bend of the lens shows. */
const parts = 24;

/** The rectangle of the stretch-out as the picture should show it. */
export function DrawnFrame({ rectification, size, scale }: { rectification: Rectification; size: DrawnSize; scale: number }) {
  const corners = drawnCorners(size);
  const points = corners.flatMap((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    return Array.from({ length: parts }, (_, k) => picturePoint(rectification, { x: a.x + (k / parts) * (b.x - a.x), y: a.y + (k / parts) * (b.y - a.y) }));
  });
  const d = points.flatMap((point) => (point ? [`${point.x} ${point.y}`] : [])).join("L");
  return (
    <>
      <path d={`M${d}Z`} className="photo-halo" strokeWidth={4 / scale} />
      <path d={`M${d}Z`} className="photo-frame" strokeWidth={1.5 / scale} />
    </>
  );
}
