const ends = ["pointerup", "pointercancel"] as const;
let pressed = false;

window.addEventListener("pointerdown", () => (pressed = true), { capture: true });
for (const end of ends) window.addEventListener(end, () => (pressed = false), { capture: true });

/**
 * Acts at once; but while a button or a finger presses the page, when that is over and its click has been taken: a verb that comes or goes
 * just when another is pressed would move that one away from under the pointer.
 */
export function afterPress(act: () => void): void {
  if (!pressed) return act();
  const over = () => {
    for (const end of ends) window.removeEventListener(end, over);
    setTimeout(act);
  };
  for (const end of ends) window.addEventListener(end, over);
}
