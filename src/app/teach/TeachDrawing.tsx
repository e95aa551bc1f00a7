import { memo, useLayoutEffect, useMemo } from "react";
import type { Development } from "../../core/index";
import type { Board } from "../../drawing/board/board";
import type { Item } from "../../drawing/display";
import { drawnAt } from "../../drawing/steps/drawnAt";
import { steps as stepsOf } from "../../drawing/steps/steps";
import { stepWords } from "../../drawing/steps/stepWords";
import { ItemView } from "../board/ItemView";
import { StationLayer } from "../board/StationLayer";
import type { Format } from "../quantity/format";
import { selectHeld } from "../store/select";
import { useApp } from "../store/store";
import { useTeachPart } from "./part";
import { drawnStation, useTeaching } from "./teaching";
import "../theme/teach.css";

interface Props {
  readonly board: Board;
  readonly development: Development;
  readonly format: Format;
}

/** The drawing as far as the lesson has come, over its construction; what is new is in ink and draws itself. */
export const TeachDrawing = memo(function TeachDrawing({ board, development, format }: Props) {
  const way = useTeaching((state) => state.way);
  const name = useTeaching((state) => state.step);
  const each = useTeaching((state) => state.each);
  const held = useApp(selectHeld);
  const steps = useMemo(() => stepsOf(board, development, { way, figures: format, words: stepWords(format.trade) }), [board, development, way, format]);
  useLayoutEffect(() => useTeaching.setState({ steps }), [steps]);
  // Beside a class set the drawing is whole.
  const whole = useTeachPart((state) => state.part !== "steps");
  const index = whole ? steps.length - 1 : Math.max(0, steps.findIndex((step) => step.name === name));
  const station = drawnStation(steps, { index, station: held }, each && !whole);
  const { construction, items, fresh } = useMemo(() => drawnAt(board, steps, index, station), [board, steps, index, station]);
  const parts = (all: readonly Item[]) => [all.filter((item) => !fresh.has(item)), all.filter((item) => fresh.has(item))] as const;
  const [oldLines, newLines] = parts(construction);
  const [oldItems, newItems] = parts(items);
  const place = `${steps[index]?.name}.${station}`;
  // A station in hand tells its true length: not before that has been found.
  const found = index >= steps.findIndex((step) => step.name === "carry");
  return (
    <>
      {found && <StationLayer board={board} development={development} figures={format} part="under" />}
      <g className="teach-construction">
        <Items items={oldLines} />
      </g>
      <g key={`lines.${place}`} className="fresh">
        <Items items={newLines} />
      </g>
      <g>
        <Items items={oldItems} />
      </g>
      <g key={`items.${place}`} className="fresh">
        <Items items={newItems} />
      </g>
      {found && <StationLayer board={board} development={development} figures={format} part="over" />}
    </>
  );
});

function Items({ items }: { items: readonly Item[] }) {
  return items.map((item, i) => <ItemView key={i} item={item} />);
}
