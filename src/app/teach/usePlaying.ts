import { useEffect } from "react";
import { move, play } from "./lead";
import type { Lesson } from "./useLesson";
import { stationsOf, useTeaching, type Speed } from "./teaching";

/** Milliseconds a step and a station stay at the usual speed, and how many times as long at the others. */
const stay = { step: 7000, station: 1500 };
const times: Readonly<Record<Speed, number>> = { slow: 2, usual: 1, quick: 0.5 };

/** Goes on by itself while playing, and stops at the end. */
export function usePlaying(lesson: Lesson | null): void {
  const playing = useTeaching((state) => state.playing);
  const speed = useTeaching((state) => state.speed);
  const each = useTeaching((state) => state.each);
  const inStations = lesson !== null && stationsOf(lesson.steps, lesson.index, each) > 0;
  const place = `${lesson?.index} ${lesson?.station}`;
  useEffect(() => {
    if (!playing) return;
    const timer = setTimeout(() => {
      if (!move(1)) play(false);
    }, (inStations ? stay.station : stay.step) * times[speed]);
    return () => clearTimeout(timer);
  }, [playing, speed, inStations, place]);
}

const ways: Readonly<Record<string, 1 | -1>> = { PageDown: 1, PageUp: -1 };

/** Page Down and Page Up, which a presenter's remote sends, go on and back wherever the focus is but in a text field. */
export function useLeadingKeys(): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const by = ways[event.key];
      if (by === undefined || event.ctrlKey || event.metaKey || event.altKey || event.shiftKey) return;
      if (event.target instanceof Element && event.target.closest("input:not([type=checkbox]), textarea, dialog")) return;
      event.preventDefault();
      event.stopPropagation();
      useTeaching.setState({ playing: false });
      move(by);
    };
    window.addEventListener("keydown", onKey, { capture: true });
    return () => window.removeEventListener("keydown", onKey, { capture: true });
  }, []);
}
