type Look = () => void;

/** Those that look at what a hand drags, in the order of their turns. */
const waiting = new Set<Look>();

let request = 0;
let odd = false;

function next(): void {
  request = requestAnimationFrame(next);
  odd = !odd;
  const [look] = waiting;
  if (!look || odd) return;
  waiting.delete(look);
  waiting.add(look);
  look();
}

/**
 * Has `look` called again and again, in turn with all others that are: one of them at every second frame, so that they do not hold up
 * the drawing. Returns how to end it.
 */
export function inTurn(look: Look): () => void {
  waiting.add(look);
  request ||= requestAnimationFrame(next);
  return () => {
    waiting.delete(look);
    if (waiting.size) return;
    cancelAnimationFrame(request);
    request = 0;
  };
}
