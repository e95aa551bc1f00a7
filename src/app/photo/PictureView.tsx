import { useRef, useState, type KeyboardEvent } from "react";
import type { Vec2 } from "../../core/index";
import { useSize } from "../screen/useSize";
import { photoWords } from "../words/photo";
import { DrawnFrame } from "./DrawnFrame";
import { Magnifier } from "./Magnifier";
import type { DrawnSize, Marked } from "./markedDrawing";
import { MarkViews } from "./MarkViews";
import { placePoint, usePhoto, type Picture } from "./photo";
import { moved, scaled, viewBoxOf, wholeView, type PictureView as View } from "./pictureView";
import { useMarkingHands } from "./useMarkingHands";

const closer = 1.5;
/** CSS pixels a key moves the picture. */
const stride = 60;

const arrows: Readonly<Record<string, Vec2>> = { ArrowLeft: { x: -1, y: 0 }, ArrowRight: { x: 1, y: 0 }, ArrowUp: { x: 0, y: -1 }, ArrowDown: { x: 0, y: 1 } };

/** The picture with its marks: looked at more closely, moved about, marked by hand and by keys. */
export function PictureView({ picture, found, size: drawn }: { picture: Picture; found: Marked["found"]; size: DrawnSize }) {
  const box = useRef<HTMLDivElement>(null);
  const window = useSize(box);
  const [asked, setView] = useState<View | null>(null);
  const [under, setUnder] = useState<Vec2 | null>(null);
  const size = window ?? { width: 1, height: 1 };
  const view = asked ?? wholeView(picture, size);
  const middle = { x: size.width / 2, y: size.height / 2 };
  const change = (to: (view: View) => View) => setView((now) => to(now ?? wholeView(picture, size)));
  const zoom = (factor: number) => change((now) => scaled(now, picture, size, middle, factor));
  const hands = useMarkingHands({ view, size, picture, change, setUnder });

  const onKeyDown = (event: KeyboardEvent) => {
    const arrow = arrows[event.key];
    const act: (() => void) | undefined = arrow ? () => nudge(arrow, event.shiftKey, () => change((now) => moved(now, picture, -stride * arrow.x, -stride * arrow.y)))
      : event.key === "+" || event.key === "=" ? () => zoom(closer)
      : event.key === "-" ? () => zoom(1 / closer)
      : event.key === "0" ? () => setView(null)
      : event.key === "Enter" ? () => placeAt(view.middle)
      : undefined;
    if (!act) return;
    event.preventDefault();
    act();
  };

  return (
    <>
      <div className="photo-window" ref={box}>
        {window && window.width > 0 && (
          <svg className="photo-svg" role="group" aria-label={photoWords.picture} aria-describedby="photo-help" tabIndex={0} viewBox={viewBoxOf(view, size)} onKeyDown={onKeyDown} {...hands}>
            <image href={picture.url} width={picture.width} height={picture.height} />
            {found.kind === "found" && <DrawnFrame rectification={found.rectification} size={drawn} scale={view.scale} />}
            <MarkViews scale={view.scale} />
          </svg>
        )}
        {window && under && <Magnifier picture={picture} at={under} view={view} size={size} />}
      </div>
      <div className="photo-moving" role="group" aria-label={photoWords.moving}>
        <button type="button" className="verb" onClick={() => setView(null)}>{photoWords.whole}</button>
        <button type="button" className="verb" onClick={() => zoom(closer)}>{photoWords.closer}</button>
        <button type="button" className="verb" onClick={() => zoom(1 / closer)}>{photoWords.further}</button>
      </div>
      <p id="photo-help" className="found">{photoWords.pictureHelp}</p>
    </>
  );
}

/** Moves the point last placed, or the placed one in hand; without one, the picture. */
function nudge({ x, y }: Vec2, far: boolean, otherwise: () => void): void {
  const { inHand, last, places } = usePhoto.getState();
  const id = inHand !== null && places[inHand] ? inHand : last;
  const place = id === null ? undefined : places[id];
  if (id === null || !place) return otherwise();
  const by = far ? 10 : 1;
  placePoint(id, { x: place.x + by * x, y: place.y + by * y });
}

/** Places the point in hand where it has no place yet. */
function placeAt(place: Vec2): void {
  const { inHand, places } = usePhoto.getState();
  if (inHand !== null && !places[inHand]) placePoint(inHand, place);
}
