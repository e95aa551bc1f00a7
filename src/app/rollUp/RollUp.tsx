import { memo, useDeferredValue, useMemo, useRef, useState } from "react";
import type { Piece } from "../../core/index";
import { pictorial } from "../../drawing/pictorial/pictorial";
import { pictorialSheet } from "../../drawing/pictorial/pictorialSheet";
import { isometric, type Sight } from "../../drawing/pictorial/pictorialSight";
import { useInTurn } from "../board/useInTurn";
import { useUnhurried } from "../board/useUnhurried";
import { useSize, type Size } from "../screen/useSize";
import { selectJob, selectPiece, selectStation } from "../store/select";
import { useApp } from "../store/store";
import "../theme/rollUp.css";
import { rollUpWords } from "../words/rollUp";
import { PictorialView } from "./PictorialView";
import { RollUpControls } from "./RollUpControls";
import { turnKeys } from "./turnKeys";
import { useRolling } from "./useRolling";

/** The finished piece in a pictorial view, turned at will, and how the flat pattern becomes it; a moment behind the drawing. `px`: CSS pixels a sheet mm. */
export function RollUp({ px }: { px: number }) {
  const piece = useUnhurried(selectPiece);
  return piece ? <RollUpOf piece={piece} px={px} /> : null;
}

const RollUpOf = memo(function RollUpOf({ piece, px }: { piece: Piece; px: number }) {
  const projection = useApp((state) => selectJob(state).drawing.projection);
  const rolling = useRolling();
  const [turned, turn] = useState<Sight | null>(null);
  const box = useRef<HTMLDivElement>(null);
  const size = useSize(box);
  const sight = turned ?? isometric(projection);
  const toIsometric = () => turn(null);
  const sheet = useMemo(() => pictorialSheet(piece, projection), [piece, projection]);
  return (
    <section className="roll-up" aria-label={rollUpWords.view} onKeyDown={turnKeys(sight, turn, toIsometric)}>
      <div className="roll-up-view" ref={box} role="img" aria-label={rollUpWords.picture} tabIndex={0}>
        {size && size.width > 0 && size.height > 0 && <Picture sheet={sheet} size={size} px={px} fraction={rolling.fraction} sight={sight} turn={turn} />}
      </div>
      <RollUpControls rolling={rolling} sight={sight} turn={turn} isometric={toIsometric} />
    </section>
  );
});

interface PictureProps {
  readonly sheet: ReturnType<typeof pictorialSheet>;
  readonly size: Size;
  readonly px: number;
  readonly fraction: number;
  readonly sight: Sight;
  readonly turn: (sight: Sight) => void;
}

function Picture({ sheet: latest, size, px, fraction, sight, turn }: PictureProps) {
  const sheet = useInTurn(latest);
  const station = useDeferredValue(useApp(selectStation));
  const width = size.width / px, height = size.height / px;
  const drawn = useMemo(() => pictorial(sheet, { fraction, sight, width, height, station }), [sheet, fraction, sight, width, height, station]);
  return <PictorialView drawn={drawn} size={size} sheet={{ width, height }} sight={sight} turn={turn} />;
}
