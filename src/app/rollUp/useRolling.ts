import { useEffect, useState } from "react";
import { useMedia } from "../screen/useMedia";

/** Milliseconds from the flat sheet to the pipe. */
const duration = 4000;

export interface Rolling {
  /** How far the sheet is rolled up, 0 to 1. */
  readonly fraction: number;
  readonly playing: boolean;
  /** Whether motion is unwelcome, so that `play` goes to the end at once. */
  readonly still: boolean;
  readonly set: (fraction: number) => void;
  /** Goes on to the finished pipe, from the flat sheet when it is one already. */
  readonly play: () => void;
  readonly pause: () => void;
}

/** The rolling of the sheet: set by hand, or played with a gentle start and end. */
export function useRolling(): Rolling {
  const [fraction, setFraction] = useState(1);
  const [playing, setPlaying] = useState(false);
  const still = useMedia("(prefers-reduced-motion: reduce)");

  useEffect(() => {
    if (!playing) return;
    let last: number | null = null;
    let frame = requestAnimationFrame(function step(now) {
      const passed = last === null ? 0 : now - last;
      last = now;
      setFraction((before) => later(before, passed / duration));
      frame = requestAnimationFrame(step);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing]);

  const arrived = playing && fraction === 1;
  useEffect(() => {
    if (arrived) setPlaying(false);
  }, [arrived]);

  return {
    fraction, playing, still,
    set: (to) => {
      setPlaying(false);
      setFraction(to);
    },
    play: () => {
      if (still) setFraction(fraction === 1 ? 0 : 1);
      else {
        if (fraction === 1) setFraction(0);
        setPlaying(true);
      }
    },
    pause: () => setPlaying(false),
  };
}

/** The fraction after another part of the time: half a cosine wave over the whole. */
function later(fraction: number, part: number): number {
  const time = Math.acos(1 - 2 * fraction) / Math.PI + part;
  return time >= 1 ? 1 : (1 - Math.cos(Math.PI * time)) / 2;
}
