import { useEffect, useState } from "react";
import { useInMotion } from "./inMotion";
import { inTurn } from "./inTurn";

/** A value, or while a hand drags the one from a turn before: so that what is worked out in two steps takes two turns for them. */
export function useInTurn<Value>(value: Value): Value {
  const moving = useInMotion(({ by }) => by !== null);
  const [shown, show] = useState({ value });
  if (!moving && shown.value !== value) show({ value });
  useEffect(() => {
    return moving && shown.value !== value ? inTurn(() => show({ value })) : undefined;
  }, [moving, shown, value]);
  return moving ? shown.value : value;
}
