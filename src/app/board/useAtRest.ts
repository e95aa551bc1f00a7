import { useState } from "react";
import { useInMotion } from "./inMotion";

/** A value, or while a hand drags a handle or a number the one from before: for what is not looked at meanwhile and takes long to follow. */
export function useAtRest<Value>(value: Value): Value {
  const moving = useInMotion(({ by }) => by !== null);
  const [rested, setRested] = useState(value);
  if (!moving && rested !== value) setRested(value);
  return moving ? rested : value;
}
