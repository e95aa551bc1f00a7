import { useEffect, useRef, type PointerEvent } from "react";
import type { Vec2 } from "../../core/index";
import type { Size } from "../screen/useSize";
import { placePoint, takePoint, usePhoto } from "./photo";
import { moved, pictureAt, scaled, type PictureView } from "./pictureView";

// Hands on the picture. A mark is dragged; the mouse presses to place the point in hand and drags the picture; one finger carries the
// point in hand with the magnifier over it, or, with none in hand, moves the picture; two fingers move and scale it.

interface Of {
  readonly view: PictureView;
  readonly size: Size;
  readonly picture: Size;
  /** From the view as it then is: two fingers move between two drawings. */
  readonly change: (to: (view: PictureView) => PictureView) => void;
  /** Pixel place to be magnified. */
  readonly setUnder: (place: Vec2 | null) => void;
}

/** CSS pixels a press may stray and still be a press. */
const slack = 4;
const wheelRate = 0.003;

interface Hand {
  readonly down: Vec2;
  at: Vec2;
  strayed: boolean;
  /** A mark that is dragged, from where it stood. */
  readonly drags: { readonly id: string; readonly from: Vec2 } | null;
  /** A finger that carries the point in hand. */
  readonly carries: string | null;
}

/** Handlers of the picture's SVG. */
export function useMarkingHands(of: Of) {
  const now = useRef(of);
  useEffect(() => {
    now.current = of;
  });
  const hands = useRef(new Map<number, Hand>());
  const svg = useRef<SVGSVGElement>(null);
  useEffect(() => {
    const element = svg.current;
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      const { picture, size, change } = now.current;
      const about = placeOf(event, event.currentTarget as Element);
      change((view) => scaled(view, picture, size, about, Math.exp(-Math.max(-150, Math.min(150, event.deltaY)) * wheelRate)));
    };
    element?.addEventListener("wheel", onWheel, { passive: false });
    return () => element?.removeEventListener("wheel", onWheel);
  });

  const onPointerDown = (event: PointerEvent<SVGSVGElement>) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const at = placeOf(event, event.currentTarget);
    const { inHand, places } = usePhoto.getState();
    const id = (event.target as Element).closest("[data-mark]")?.getAttribute("data-mark") ?? null;
    const from = id === null ? undefined : places[id];
    const drags = id !== null && from ? { id, from } : null;
    const finger = event.pointerType !== "mouse";
    const carries = !drags && finger && hands.current.size === 0 ? inHand : null;
    if (drags) takePoint(drags.id);
    hands.current.set(event.pointerId, { down: at, at, strayed: false, drags, carries });
    if (finger) of.setUnder(pictureAt(of.view, of.size, at));
  };

  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const at = placeOf(event, event.currentTarget);
    const { view, size, picture, change, setUnder } = of;
    const hand = hands.current.get(event.pointerId);
    if (!hand) return setUnder(pictureAt(view, size, at));
    const [other] = [...hands.current].flatMap(([id, one]) => (id === event.pointerId ? [] : [one]));
    const by = { x: at.x - hand.at.x, y: at.y - hand.at.y };
    hand.strayed ||= Math.hypot(at.x - hand.down.x, at.y - hand.down.y) > slack;
    if (!hand.strayed && !hand.carries) return;
    hand.at = at;
    if (other) {
      hand.strayed = other.strayed = true;
      const apart = (place: Vec2) => Math.max(1, Math.hypot(place.x - other.at.x, place.y - other.at.y));
      const before = { x: at.x - by.x, y: at.y - by.y };
      const about = { x: (at.x + other.at.x) / 2, y: (at.y + other.at.y) / 2 };
      setUnder(null);
      change((now) => scaled(moved(now, picture, by.x / 2, by.y / 2), picture, size, about, apart(at) / apart(before)));
    } else if (hand.drags) {
      const { id, from } = hand.drags;
      const to = { x: from.x + (at.x - hand.down.x) / view.scale, y: from.y + (at.y - hand.down.y) / view.scale };
      placePoint(id, to);
      setUnder(to);
    } else if (hand.carries) setUnder(pictureAt(view, size, at));
    else {
      setUnder(null);
      change((now) => moved(now, picture, by.x, by.y));
    }
  };

  const onPointerUp = (event: PointerEvent<SVGSVGElement>) => {
    const hand = hands.current.get(event.pointerId);
    hands.current.delete(event.pointerId);
    if (event.pointerType !== "mouse") of.setUnder(null);
    if (!hand || event.type === "pointercancel" || hand.drags) return;
    const { inHand } = usePhoto.getState();
    // A finger that was joined by another only moved the picture.
    const places = hand.carries ? hands.current.size === 0 && !(hand.strayed && pinched.current) : !hand.strayed;
    pinched.current = hands.current.size > 0;
    if (places && inHand !== null) placePoint(inHand, pictureAt(of.view, of.size, placeOf(event, event.currentTarget)));
  };
  const pinched = useRef(false);

  return { ref: svg, onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp, onPointerLeave: () => { if (hands.current.size === 0) of.setUnder(null); } };
}

/** CSS pixels from the upper left of the element. */
function placeOf({ clientX, clientY }: { clientX: number; clientY: number }, element: Element): Vec2 {
  const { left, top } = element.getBoundingClientRect();
  return { x: clientX - left, y: clientY - top };
}
