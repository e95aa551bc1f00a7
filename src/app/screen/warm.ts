// What only a hand needs is fetched when the page is first touched, not with the page; then it is there before it is asked for.

const parts = [
  () => import("../description/editing"),
  () => import("../board/StationLayer"),
  () => import("./FaultWords"),
  () => import("../describe/changeCuts"),
  () => import("../describe/newCut"),
  () => import("../files/openFile"),
];

const signs = ["pointermove", "pointerdown", "keydown", "focusin"] as const;

/** Fetches the parts at the first sign of a hand. A part that cannot be fetched is asked for again when it is needed. */
export function warmAtFirstTouch(): void {
  const warm = () => {
    for (const sign of signs) window.removeEventListener(sign, warm);
    void Promise.allSettled(parts.map((part) => part()));
  };
  for (const sign of signs) window.addEventListener(sign, warm, { passive: true });
}
