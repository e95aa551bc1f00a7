import type { Vec2 } from "../../core/index";
import type { Size } from "../screen/useSize";
import type { Picture } from "./photo";
import type { PictureView } from "./pictureView";

/** CSS pixels of its side, and of a pixel at least. */
const side = 150;
const least = 3;
/** How many times larger than the picture. */
const times = 4;

/** What lies under the hand, enlarged, in the corner away from it. */
export function Magnifier({ picture, at, view, size }: { picture: Picture; at: Vec2; view: PictureView; size: Size }) {
  const scale = Math.max(least, times * view.scale);
  const span = side / scale;
  const right = (at.x - view.middle.x) * view.scale < 0;
  const lower = size.height > 2.5 * side && (at.y - view.middle.y) * view.scale < 0;
  return (
    <svg
      className="photo-magnifier" aria-hidden="true" width={side} height={side} viewBox={`${at.x - span / 2} ${at.y - span / 2} ${span} ${span}`}
      style={{ [right ? "right" : "left"]: 0, [lower ? "bottom" : "top"]: 0 }}
    >
      <image href={picture.url} width={picture.width} height={picture.height} />
      <path d={`M${at.x - span / 2} ${at.y}H${at.x + span / 2}M${at.x} ${at.y - span / 2}V${at.y + span / 2}`} strokeWidth={1 / scale} />
    </svg>
  );
}
