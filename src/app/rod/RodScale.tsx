import { memo, useRef, type PointerEvent, type RefObject } from "react";
import type { Piece } from "../../core/index";
import { afterTouch } from "../screen/later";
import { stationKeys } from "../screen/stationKeys";
import { holdBetween, pointBetween, useBetween, useGirthInHand } from "../store/between";
import { selectStation } from "../store/select";
import { hold, point, useApp } from "../store/store";
import { girthAtTick, nearestTick, type RodLayout } from "./layout";

const GaugeBars = afterTouch(async () => (await import("./GaugeBars")).GaugeBars);

const top = 26;
const depth = 26;
export const rodHeight = 64;

interface Props {
  /** Its width is the width laid out for. */
  readonly box: RefObject<HTMLDivElement | null>;
  readonly piece: Piece;
  readonly layout: RodLayout;
  readonly width: number;
  /** What it is called, and what it tells. */
  readonly name: string;
  readonly valueText: string;
}

/** The rod itself: swept with pointer or keys, it takes a station in hand. */
export function RodScale({ box, piece, layout, width, name, valueText }: Props) {
  const inHand = useApp(selectStation);
  const sweeping = useRef(false);
  const count = piece.stations.length;
  const girth = useGirthInHand();
  const xOf = (event: PointerEvent) => event.clientX - event.currentTarget.getBoundingClientRect().left;
  const take = (event: PointerEvent) => {
    const between = event.altKey || useBetween.getState().fine;
    if (sweeping.current) return between ? holdBetween(girthAtTick(layout, piece, xOf(event))) : hold(nearestTick(layout.ticks, xOf(event)));
    if (event.pointerType !== "mouse") return;
    pointBetween(between ? girthAtTick(layout, piece, xOf(event)) : null);
    if (!between) point(nearestTick(layout.ticks, xOf(event)));
  };
  const first = layout.ticks[0] ?? 0;
  const last = layout.ticks[count - 1] ?? width;
  return (
    <div
      className="rod-scale"
      ref={box}
      role="slider"
      tabIndex={0}
      aria-label={name}
      aria-valuemin={0}
      aria-valuemax={count - 1}
      aria-valuenow={inHand ?? 0}
      aria-valuetext={valueText}
      onKeyDown={stationKeys(count)}
      onPointerDown={(event) => {
        sweeping.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        take(event);
      }}
      onPointerMove={take}
      onPointerUp={() => (sweeping.current = false)}
      onPointerCancel={() => (sweeping.current = false)}
      onPointerLeave={() => {
        point(null);
        pointBetween(null);
      }}
    >
      <svg width={width} height={rodHeight} aria-hidden="true">
        <rect className="rod-body" x={first - 14} y={top} width={last - first + 28} height={depth} />
        <GaugeBars piece={piece} first={first} last={last} base={top} />
        <Ticks piece={piece} layout={layout} />
        {girth !== null && <line className="between" x1={first + (girth / piece.form.girth) * (last - first)} x2={first + (girth / piece.form.girth) * (last - first)} y1={top - 6} y2={top + depth} />}
        {girth === null && inHand !== null && <Hand x={layout.ticks[inHand] ?? 0} label={piece.stations[inHand]?.label ?? ""} foot={layout.fits ? layout.left + (inHand + 0.5) * layout.column : null} />}
      </svg>
    </div>
  );
}

const Ticks = memo(function Ticks({ piece, layout }: { piece: Piece; layout: RodLayout }) {
  return piece.stations.map((station, i) => {
    const x = layout.ticks[i] ?? 0;
    const numbered = layout.numbered[i] ?? false;
    return (
      <g key={i} className={`tick tick-${station.mark}`}>
        <line x1={x} x2={x} y1={top} y2={top + (numbered ? 8 : 5)} />
        {numbered && (
          <text x={x} y={top + 21} textAnchor="middle">
            {station.label}
          </text>
        )}
        {layout.fits && <path className="leader" d={`M${x} ${top + depth}V${top + depth + 2}L${layout.left + (i + 0.5) * layout.column} ${rodHeight - 3}`} />}
      </g>
    );
  });
});

function Hand({ x, label, foot }: { x: number; label: string; foot: number | null }) {
  return (
    <g className="hand">
      <rect x={x - 13} y={top} width={26} height={depth} />
      <text x={x} y={top + 18} textAnchor="middle">
        {label}
      </text>
      {foot !== null && <path d={`M${x} ${top + depth}V${top + depth + 2}L${foot} ${rodHeight - 1}`} />}
    </g>
  );
}
