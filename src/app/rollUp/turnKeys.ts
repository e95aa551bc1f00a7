import type { KeyboardEvent } from "react";
import type { Sight } from "../../drawing/pictorial/pictorialSight";
import { turnedStep, type Way } from "./turned";

const keys: Readonly<Record<string, Way>> = { ArrowLeft: "left", ArrowRight: "right", ArrowUp: "up", ArrowDown: "down" };

/** Arrow keys turn the view, i sets it isometric; a slider keeps its own keys to itself. */
export function turnKeys(sight: Sight, turn: (sight: Sight) => void, isometric: () => void) {
  const take = (event: KeyboardEvent, to: Sight | null) => {
    event.preventDefault();
    event.stopPropagation();
    if (to) turn(to);
    else isometric();
  };
  return (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const way = keys[event.key];
    const ofSlider = event.target instanceof HTMLInputElement && event.key.toLowerCase() !== "i";
    if (ofSlider) event.stopPropagation();
    else if (way) take(event, turnedStep(sight, way));
    else if (event.key.toLowerCase() === "i") take(event, null);
  };
}
