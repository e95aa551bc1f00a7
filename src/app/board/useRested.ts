import { useGlimpse, type Select } from "./useUnhurried";

/** What `select` finds in the app; while a hand drags a handle or a number, that from before. */
export function useRested<Value>(select: Select<Value>): Value {
  return useGlimpse(select, undefined, never);
}

const never = () => () => undefined;
