import { useRef, type PointerEvent } from "react";
import type { Pictorial } from "../../drawing/pictorial/pictorial";
import type { Sight } from "../../drawing/pictorial/pictorialSight";
import { pictorialStationAt } from "../../drawing/pictorial/pictorialStationAt";
import { viewBox } from "../../output/svg/viewBox";
import { RunView } from "../board/RunView";
import { runsByClause } from "../board/runs";
import { sheetPoint } from "../board/view";
import type { Size } from "../screen/useSize";
import { take } from "../store/between";
import { point } from "../store/store";
import { dragged } from "./turned";

/** CSS pixels a press may stray and still be a click. */
const slack = 4;

interface Props {
  readonly drawn: Pictorial;
  /** In CSS pixels, and in sheet mm. */
  readonly size: Size;
  readonly sheet: Size;
  readonly sight: Sight;
  readonly turn: (sight: Sight) => void;
}

interface Drag {
  readonly x: number;
  readonly y: number;
  readonly sight: Sight;
  moved: boolean;
}

/** The picture: dragged to turn it, pointed at to take a station in hand. */
export function PictorialView({ drawn, size, sheet, sight, turn }: Props) {
  const drag = useRef<Drag | null>(null);
  const view = { left: 0, right: sheet.width, bottom: 0, top: sheet.height };
  const stationUnder = (event: PointerEvent<SVGSVGElement>) => pictorialStationAt(drawn, sheetPoint(view, size, event));

  const onPointerMove = (event: PointerEvent<SVGSVGElement>) => {
    const held = drag.current;
    if (!held) {
      if (event.pointerType === "mouse") point(stationUnder(event));
      return;
    }
    const right = event.clientX - held.x, down = event.clientY - held.y;
    held.moved ||= Math.hypot(right, down) > slack;
    if (held.moved) turn(dragged(held.sight, right, down));
  };

  return (
    <svg
      className="pictorial"
      aria-hidden="true"
      viewBox={viewBox(view)}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        drag.current = { x: event.clientX, y: event.clientY, sight, moved: false };
      }}
      onPointerMove={onPointerMove}
      onPointerUp={(event) => {
        if (drag.current && !drag.current.moved) take(stationUnder(event));
        drag.current = null;
      }}
      onPointerCancel={() => (drag.current = null)}
      onPointerLeave={() => point(null)}
    >
      {runsByClause(drawn.items).map((run) => (
        <RunView key={run.key} run={run} />
      ))}
    </svg>
  );
}
