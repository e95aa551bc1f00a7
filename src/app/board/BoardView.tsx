import { useLayoutEffect, useMemo, useRef, type MouseEvent } from "react";
import { stationAt } from "../../drawing/station/stationAt";
import { withoutEdgeNumbers } from "../../drawing/board/withoutEdgeNumbers";
import { useFormat } from "../quantity/useFormat";
import { viewBox } from "../../output/svg/viewBox";
import { later } from "../screen/later";
import { stationKeys } from "../screen/stationKeys";
import { useTouch } from "../screen/touch";
import { useSize, type Size } from "../screen/useSize";
import { take, useGirthInHand } from "../store/between";
import { selectDevelopment, selectStation } from "../store/select";
import { usePurpose } from "../store/purpose";
import { point, useApp } from "../store/store";
import { words } from "../words/interface";
import { useCamera } from "./camera";
import { useProjected } from "./projected";
import { useSmooth } from "./smooth/shown";
import { sheetPoint } from "./view";
import { useShown } from "./useShown";
import { RunView } from "./RunView";
import { runsReuser } from "./runsReuser";

// Fetched when first needed, at the earliest when the page is first touched.
const BoardFoot = later(async () => (await import("./moving/BoardFoot")).BoardFoot);
const ProjectionLayer = later(async () => (await import("./ProjectionLayer")).ProjectionLayer);
const SmoothLayer = later(async () => (await import("./smooth/SmoothLayer")).SmoothLayer);
const BoardCorner = later(async () => (await import("../rollUp/BoardCorner")).BoardCorner);
const HandleLayer = later(async () => (await import("../handles/HandleLayer")).HandleLayer);
const SymbolView = later(async () => (await import("./SymbolView")).SymbolView);
const CheckLayer = later(async () => (await import("../check/CheckLayer")).CheckLayer);
const TeachDrawing = later(async () => (await import("../teach/TeachDrawing")).TeachDrawing);
const StationLayer = later(async () => (await import("./StationLayer")).StationLayer);

const reusedRuns = runsReuser();

/** The page: views and pattern in projection, at the scale that fits the window. */
export function BoardView() {
  const board = useRef<HTMLElement>(null);
  const paper = useRef<HTMLDivElement>(null);
  const size = useSize(paper);
  const touched = useTouch((state) => state.touched);
  const developing = usePurpose((state) => state.purpose === "develop");
  const count = useApp((state) => state.development.pieces[0]?.stations.length ?? 0);
  return (
    <section className="board" aria-label={words.board} ref={board} tabIndex={0} onKeyDown={stationKeys(count)}>
      <div className="board-paper" ref={paper}>
        {size && size.width > 0 && size.height > 0 && <Sheet size={size} />}
        {touched && developing && <HandleLayer />}
      </div>
      <div className="board-foot">
        {touched && <BoardFoot board={board} paper={paper} />}
      </div>
    </section>
  );
}

function Sheet({ size }: { size: Size }) {
  const development = useApp(selectDevelopment);
  const format = useFormat();
  const shown = useShown(size, development, format);
  const { drawn, view, px } = shown;
  useLayoutEffect(() => useCamera.setState({ shown }), [shown]);
  const checking = usePurpose((state) => state.purpose === "check");
  const runs = useMemo(() => reusedRuns(checking ? withoutEdgeNumbers(drawn) : drawn.items), [drawn, checking]);
  const stationInHand = useApp((state) => selectStation(state) !== null);
  const inHand = useGirthInHand() !== null || stationInHand;
  const touched = useTouch((state) => state.touched);
  const near = useCamera((state) => state.camera !== null);
  const teaching = usePurpose((state) => state.purpose === "teach");
  const projected = useProjected((state) => state.whose !== "hand") && !teaching;
  const smooth = useSmooth((state) => state.shown);
  const stationUnder = (event: MouseEvent<SVGSVGElement>) => stationAt(drawn, development, sheetPoint(view, size, event));

  return (
    <>
      <svg
        className="drawing"
        data-projected={projected || teaching || inHand || undefined}
        data-near={near || undefined}
        role="img"
        aria-labelledby="board-title"
        aria-describedby="board-description"
        viewBox={viewBox(view)}
        onPointerMove={(event) => point(stationUnder(event))}
        onPointerLeave={() => point(null)}
        onClick={(event) => take(stationUnder(event))}
      >
        <title id="board-title">{words.boardTitle(development.job.title || words.untitled, format.trade)}</title>
        <desc id="board-description">{words.boardDescription(development.job.drawing.projection, format.trade)}</desc>
        {checking && <CheckLayer board={drawn} under />}
        {projected && <ProjectionLayer board={drawn} development={development} />}
        {inHand && !teaching && <StationLayer board={drawn} development={development} figures={format} part="under" />}
        {teaching ? <TeachDrawing board={drawn} development={development} format={format} /> : runs.map((run) => <RunView key={run.key} run={run} />)}
        {touched && !(near && smooth) && <SymbolView board={drawn} view={view} projection={development.job.drawing.projection} />}
        {checking && <CheckLayer board={drawn} />}
        {smooth && <SmoothLayer board={drawn} development={development} />}
        {inHand && !teaching && <StationLayer board={drawn} development={development} figures={format} part="over" />}
      </svg>
      {touched && <BoardCorner board={shown.fit} view={shown.whole} size={size} px={px} away={near} />}
    </>
  );
}
