import { memo, useEffect, useRef, type KeyboardEvent, type SyntheticEvent } from "react";
import type { Piece } from "../../core/index";
import { stationKeys } from "../screen/stationKeys";
import { take } from "../store/between";
import { selectStation } from "../store/select";
import { point, useApp } from "../store/store";
import { words } from "../words/interface";
import type { RodLayout } from "./layout";
import type { RodRow } from "./rows";

interface Props {
  readonly piece: Piece;
  readonly rows: readonly RodRow[];
  readonly layout: RodLayout;
}

/** The station table under the rod, a column a station: pointed at, pressed and gone along by keys. The station in hand is marked without drawing the table anew. */
export const StationTable = memo(function StationTable({ piece, rows, layout }: Props) {
  const box = useRef<HTMLDivElement>(null);
  useColumnInHand(box);
  return (
    <div
      className="station-table"
      ref={box}
      tabIndex={0}
      role="region"
      aria-label={words.table.caption}
      onKeyDown={keysAcross(piece.stations.length)}
      onPointerMove={(event) => event.pointerType === "mouse" && point(columnOf(event))}
      onPointerLeave={() => point(null)}
      onClick={(event) => take(columnOf(event))}
    >
      <table style={{ width: layout.left + layout.column * piece.stations.length }} data-fits={layout.fits || undefined} data-dense={layout.dense || undefined}>
        <caption className="unseen">{words.table.caption}</caption>
        <colgroup>
          <col style={{ width: layout.left }} />
          <col span={piece.stations.length} style={{ width: layout.column }} />
        </colgroup>
        <thead>
          <tr>
            <th scope="col">{words.table.station}</th>
            {piece.stations.map((station, i) => (
              <th key={i} scope="col" data-column={i}>
                {layout.fits ? (
                  station.label
                ) : (
                  <button type="button" className="station" tabIndex={-1}>
                    {station.label}
                  </button>
                )}
                <Mark mark={station.mark} />
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, cells }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.map((cell, i) => (
                <td key={i} data-column={i}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
});

/** The station of the column an event comes from; null beside the columns. */
function columnOf({ target }: SyntheticEvent): number | null {
  const column = target instanceof Element ? target.closest<HTMLElement>("[data-column]")?.dataset.column : undefined;
  return column === undefined ? null : Number(column);
}

/** The keys that go along the stations, but those up and down: they scroll the page. */
function keysAcross(count: number) {
  const keys = stationKeys(count);
  return (event: KeyboardEvent) => {
    if (!/Up$|Down$/.test(event.key)) keys(event);
  };
}

function Mark({ mark }: { mark: Piece["stations"][number]["mark"] }) {
  if (mark !== "added" && mark !== "critical") return null;
  return <span className="unseen"> {words.table[mark]}</span>;
}

/** Marks the cells of the station in hand and brings them into sight. */
function useColumnInHand(box: React.RefObject<HTMLDivElement | null>) {
  const station = useApp(selectStation);
  const held = useApp((state) => state.held);
  useEffect(() => {
    const cells = station === null ? [] : [...(box.current?.querySelectorAll<HTMLElement>(`[data-column="${station}"]`) ?? [])];
    for (const cell of cells) cell.dataset.inHand = "true";
    return () => {
      for (const cell of cells) delete cell.dataset.inHand;
    };
  });
  useEffect(() => {
    const cell = box.current?.querySelector<HTMLElement>(`[data-column="${held}"]`);
    if (!cell || !box.current) return;
    box.current.scrollLeft = cell.offsetLeft - box.current.clientWidth / 2;
  }, [box, held]);
}
