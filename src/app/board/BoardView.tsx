import { lazy, Suspense, useMemo, useRef, type MouseEvent } from "react";
import { board } from "../../drawing/board";
import { stationAt } from "../../drawing/stationAt";
import { useFormat } from "../quantity/useFormat";
import { viewBox } from "../../output/svg/viewBox";
import { stationKeys } from "../screen/stationKeys";
import { useSize, type Size } from "../screen/useSize";
import { selectDevelopment, selectStation } from "../store/select";
import { hold, point, useApp } from "../store/store";
import { words } from "../words/interface";
import { BoardCorner } from "../rollUp/BoardCorner";
import { pxPerMm } from "./pxPerMm";
import { sheetPoint, viewOf } from "./view";
import { RunView } from "./RunView";
import { runsByClause } from "./runs";

const StationLayer = lazy(() => import("./StationLayer").then((module) => ({ default: module.StationLayer })));

/** The page: views and pattern in projection, at the scale that fits the window. */
export function BoardView() {
  const box = useRef<HTMLElement>(null);
  const size = useSize(box);
  const count = useApp((state) => state.development.pieces[0]?.stations.length ?? 0);
  return (
    <section className="board" aria-label={words.board} ref={box} tabIndex={0} onKeyDown={stationKeys(count)}>
      {size && size.width > 0 && size.height > 0 && <Sheet size={size} />}
    </section>
  );
}

function Sheet({ size }: { size: Size }) {
  const development = useApp(selectDevelopment);
  const format = useFormat();
  const px = pxPerMm(size.width, size.height);
  const width = size.width / px;
  const height = size.height / px;
  const drawn = useMemo(() => board(development, { width, height, figures: format }), [development, width, height, format]);
  const runs = useMemo(() => runsByClause(drawn.items), [drawn]);
  const view = useMemo(() => viewOf(drawn.bounds, width, height), [drawn, width, height]);
  const inHand = useApp((state) => selectStation(state) !== null);
  const stationUnder = (event: MouseEvent<SVGSVGElement>) => stationAt(drawn, development, sheetPoint(view, size, event));

  return (
    <>
      <svg
        className="drawing"
        role="img"
        aria-labelledby="board-title board-description"
        viewBox={viewBox(view)}
        onPointerMove={(event) => point(stationUnder(event))}
        onPointerLeave={() => point(null)}
        onClick={(event) => hold(stationUnder(event))}
      >
        <title id="board-title">{words.boardTitle(development.job.title || words.untitled)}</title>
        <desc id="board-description">{words.boardDescription}</desc>
        {runs.map((run, i) => (
          <RunView key={i} run={run} />
        ))}
        {inHand && (
          <Suspense fallback={null}>
            <StationLayer board={drawn} development={development} figures={format} />
          </Suspense>
        )}
      </svg>
      <BoardCorner board={drawn} view={view} size={size} px={px} />
    </>
  );
}
