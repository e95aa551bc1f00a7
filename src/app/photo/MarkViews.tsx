import { useFormat } from "../quantity/useFormat";
import { photoWords } from "../words/photo";
import { placeable, takePoint, usePhoto } from "./photo";
import { pointName } from "./pointName";

/** CSS pixels of a mark's cross and of its letters. */
const arm = 13;
const gap = 3;
const letters = 14;

/** The marks as crosses, as large at every scale; each takes the focus and the arrow keys. */
export function MarkViews({ scale }: { scale: number }) {
  const photo = usePhoto();
  const { trade } = useFormat();
  return (
    <>
      {placeable(photo).map((id, i) => {
        const place = photo.places[id];
        if (!place) return null;
        const name = photoWords.marked(i + 1, pointName(id, photo, trade), place.x.toFixed(0), place.y.toFixed(0));
        const cross = `M${-arm} 0H${-gap}M${gap} 0H${arm}M0 ${-arm}V${-gap}M0 ${gap}V${arm}`;
        return (
          <g
            key={id} data-mark={id} className="photo-mark" data-in-hand={photo.inHand === id || (photo.inHand === null && photo.last === id) || undefined}
            role="button" tabIndex={0} aria-label={name} onFocus={() => takePoint(id)}
            transform={`translate(${place.x} ${place.y}) scale(${1 / scale})`}
          >
            <circle r={arm} className="photo-reach" />
            <path d={cross} className="photo-halo" />
            <path d={cross} className="photo-cross" />
            <text x={arm * 0.6} y={-arm * 0.5} fontSize={letters}>{i + 1}</text>
          </g>
        );
      })}
    </>
  );
}
