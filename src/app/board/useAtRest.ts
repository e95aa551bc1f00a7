import { useState } from "react";
import { useHeldShown } from "./heldShown";

/** A value, or while a handle is dragged the one from before: for what is not looked at meanwhile and takes long to follow. */
export function useAtRest<Value>(value: Value): Value {
  const moving = useHeldShown(({ held }) => held !== null);
  const [rested, setRested] = useState(value);
  if (!moving && rested !== value) setRested(value);
  return moving ? rested : value;
}
