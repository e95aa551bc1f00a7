import type { KeyboardEvent } from "react";
import type { Sight } from "../../drawing/pictorialSight";
import { turnedStep, type Way } from "./turned";

const keys: Readonly<Record<string, Way>> = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };

/** Arrow keys turn the view, but for those that move a slider; i sets it isometric. */
export function turnKeys(sight: Sight, turn: (sight: Sight) => void, isometric: () => void) {
  return (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const way = event.target instanceof HTMLInputElement ? undefined : keys[event.key];
    if (way) turn(turnedStep(sight, way));
    else if (event.key.toLowerCase() === "i") isometric();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
}
