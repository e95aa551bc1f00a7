import { useMemo, useState, type CSSProperties } from "react";
import type { Box } from "../../drawing/box";
import { dimensionFigures, type DimensionFigure } from "../../drawing/dimension/dimensionFigures";
import type { Shown } from "../board/camera";
import { useAtRest } from "../board/useAtRest";
import { useInMotion } from "../board/inMotion";
import { windowPoint } from "../board/view";
import { NumberField } from "../description/NumberField";
import type { NumberToken } from "../describe/token";
import type { Size } from "../screen/useSize";
import { takeClause } from "../store/store";
import { handleWords } from "../words/handles";
import { goToClause, goToField, keyOf, type FieldTokens } from "./fieldTokens";
import { rovingKeys } from "./rovingKeys";

interface Props {
  readonly shown: Shown;
  readonly tokens: FieldTokens;
}

/** The figures of the dimensions: one that states a field of the job is typed where it stands. They follow a drag at its end, and are out of reach while it is a handle's. */
export function FigureLayer({ shown, tokens }: Props) {
  const dragging = useInMotion(({ by }) => by === "handle");
  const { drawn, view, size } = useAtRest(shown);
  const figures = useMemo(() => dimensionFigures(drawn.items), [drawn]);
  const [typed, setTyped] = useState<string | null>(null);
  const [last, stopHere] = useState(0);
  const stop = Math.min(last, figures.length - 1);
  return (
    <div className="figures" role="group" hidden={dragging} aria-label={handleWords.figures} aria-description={handleWords.figuresHelp} onKeyDown={figureKeys}>
      {figures.map((figure, i) => {
        const key = figure.field === null ? null : keyOf(figure.clause, figure.field);
        const found = key === null ? undefined : tokens.get(key)?.token;
        const token = found?.kind === "number" ? found : null;
        const style = placeOf(figure.box, view, size);
        if (token && typed === token.key) return <Typing key={i} token={token} style={style} done={() => setTyped(null)} />;
        return <FigureButton key={i} figure={figure} token={token} fieldKey={key} style={style} type={setTyped} stop={i === stop} stopHere={() => stopHere(i)} />;
      })}
    </div>
  );
}

interface ButtonProps {
  readonly figure: DimensionFigure;
  readonly token: NumberToken | null;
  readonly fieldKey: string | null;
  readonly style: CSSProperties;
  readonly type: (key: string) => void;
  /** Whether the Tab key stops at this figure of the group; `stopHere` makes it so. */
  readonly stop: boolean;
  readonly stopHere: () => void;
}

const figureKeys = rovingKeys(".figure", { ArrowRight: 1, ArrowDown: 1, ArrowLeft: -1, ArrowUp: -1 });

function FigureButton({ figure, token, fieldKey, style, type, stop, stopHere }: ButtonProps) {
  const label = token ? handleWords.type(token.label, figure.text) : handleWords.derived(figure.text);
  const act = () => {
    takeClause(figure.clause);
    if (token) type(token.key);
    else if (fieldKey !== null) goToField(fieldKey);
    else goToClause(figure.clause);
  };
  return <button type="button" className="figure" tabIndex={stop ? 0 : -1} onFocus={stopHere} data-typeable={token ? true : undefined} style={style} aria-label={label} title={token ? undefined : label} onClick={act} />;
}

/** The field at the figure: Enter and leaving it make the change, Escape gives it up; a refused figure stays to be mended. */
function Typing({ token, style, done }: { token: NumberToken; style: CSSProperties; done: () => void }) {
  return (
    <div
      className="figure-typing"
      style={style}
      ref={(box) => box?.querySelector("input")?.focus()}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key === "Enter" || event.key === "Escape") done();
      }}
      onBlur={done}
    >
      <NumberField token={token} />
    </div>
  );
}

/** Over the figure, and large enough for a finger's tip. */
function placeOf(box: Box, view: Box, size: Size): CSSProperties {
  const from = windowPoint(view, size, { x: box.left, y: box.top });
  const to = windowPoint(view, size, { x: box.right, y: box.bottom });
  return { left: (from.x + to.x) / 2, top: (from.y + to.y) / 2, width: Math.max(24, to.x - from.x), height: Math.max(24, to.y - from.y) };
}
