import { useEffect, useRef, useState } from "react";
import { useHeldShown } from "./heldShown";

/** Milliseconds between two looks. */
const pause = 200;

/** A value, or while a handle is dragged the one of a moment ago: for what is seen beside the drawing and takes long to draw. */
export function useNowAndThen<Value>(value: Value): Value {
  const moving = useHeldShown(({ held }) => held !== null);
  const [shown, show] = useState(value);
  const latest = useRef(value);
  useEffect(() => {
    latest.current = value;
  });
  useEffect(() => {
    if (!moving) return;
    const timer = setInterval(() => show(latest.current), pause);
    return () => clearInterval(timer);
  }, [moving]);
  if (!moving && shown !== value) show(value);
  return moving ? shown : value;
}
