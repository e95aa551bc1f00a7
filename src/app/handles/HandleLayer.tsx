import { useEffect, useMemo, useState } from "react";
import { handles } from "../../drawing/handles/handles";
import { useInMotion } from "../board/inMotion";
import { useAtRest } from "../board/useAtRest";
import { useCamera, type Shown } from "../board/camera";
import { windowPoint } from "../board/view";
import { useFormat } from "../quantity/useFormat";
import { selectClause, selectSpelled } from "../store/select";
import { useApp } from "../store/store";
import "../theme/handles.css";
import { handleWords } from "../words/handles";
import { fieldTokens } from "./fieldTokens";
import { FigureLayer } from "./FigureLayer";
import { handleLabel } from "./handleText";
import { HandleView } from "./HandleView";
import { rehearse } from "./rehearsal";
import { rovingKeys } from "./rovingKeys";
import { useDragging, type Placed } from "./useDragging";

/** The arrow keys step the handle itself. */
const handleKeys = rovingKeys(".grip", { PageDown: 1, PageUp: -1 });

/** What can be taken hold of and typed on the paper, over the drawing. */
export function HandleLayer() {
  const shown = useCamera((state) => state.shown);
  return shown && <Hands shown={shown} />;
}

function Hands({ shown }: { shown: Shown }) {
  const spelled = useApp(selectSpelled);
  const format = useFormat();
  const inHand = useApp(selectClause);
  const lately = useLately(inHand);
  const { development, drawn, view, size } = shown;
  useEffect(() => rehearse(shown), [shown]);
  // A drag changes no field's name.
  const job = useAtRest(development.job);
  const tokens = useMemo(() => fieldTokens(job, spelled), [job, spelled]);
  const all = useMemo(
    () => handles(drawn, development).map((handle): Placed => ({ handle, place: windowPoint(view, size, handle.at), label: handleLabel(handle, tokens, development.job) })),
    [drawn, development, view, size, tokens],
  );
  const moving = useInMotion(({ by }) => by !== null);
  const { dragged, on } = useDragging(all.filter(({ handle: { clause } }) => clause === inHand || clause === lately));
  const [last, stopHere] = useState<string | null>(null);
  const stop = stopOf(all, last, inHand);
  return (
    <>
      <FigureLayer shown={shown} tokens={tokens} />
      <div className="handles" role="group" aria-label={handleWords.group} aria-description={handleWords.help} onKeyDown={handleKeys} {...on}>
        {all.map((placed) => (
          <HandleView
            key={placed.handle.id}
            {...placed}
            moving={moving}
            room={roomOf(placed, all)}
            format={format}
            stop={placed === stop}
            stopHere={stopHere}
            state={placed.handle.clause === inHand ? "in hand" : placed.handle.clause === lately ? "faint" : "away"}
            beside={dragged?.id === placed.handle.id ? dragged.beside : null}
          />
        ))}
      </div>
    </>
  );
}

/** The handle the Tab key stops at: the one last held, unless another clause has been taken in hand. */
function stopOf(all: readonly Placed[], last: string | null, inHand: string | null): Placed | undefined {
  const held = all.find(({ handle }) => handle.id === last);
  if (held && (inHand === null || held.handle.clause === inHand)) return held;
  return all.find(({ handle }) => handle.clause === inHand) ?? held ?? all[0];
}

/** How far off the nearest handle of the same clause is, in CSS pixels along an edge of the window. */
function roomOf({ handle: { id, clause }, place }: Placed, all: readonly Placed[]): number {
  const others = all.filter(({ handle }) => handle.clause === clause && handle.id !== id);
  return Math.round(Math.min(100, ...others.map((other) => Math.max(Math.abs(other.place.x - place.x), Math.abs(other.place.y - place.y)))));
}

/** The clause whose handles stay on the board though the pointer has left it, until another is taken or the bare paper is pressed. */
function useLately(inHand: string | null): string | null {
  const [lately, setLately] = useState(inHand);
  if (inHand !== null && inHand !== lately) setLately(inHand);
  useEffect(() => {
    const onDown = ({ target }: PointerEvent) => {
      if (target instanceof Element && target.closest(".drawing") && !target.closest(".reach")) setLately(null);
    };
    document.addEventListener("pointerdown", onDown);
    return () => document.removeEventListener("pointerdown", onDown);
  }, []);
  return lately;
}
