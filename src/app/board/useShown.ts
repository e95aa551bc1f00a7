import { useMemo } from "react";
import type { Development } from "../../core/index";
import { windowOn } from "../../drawing/board/anchor";
import { board, redrawn } from "../../drawing/board/board";
import { drawingWords } from "../../drawing/words";
import type { Format } from "../quantity/format";
import type { Size } from "../screen/useSize";
import { usePurpose } from "../store/purpose";
import { useSettings } from "../store/settings";
import { useAllowances } from "./allowances";
import { useCamera, type Shown } from "./camera";
import { useInMotion } from "./inMotion";
import { pxPerMm } from "./pxPerMm";
import { mmPerPx, viewKept, viewOf } from "./view";

/** How many times larger than usual the board is lettered while it is shown to a room. */
const largeLettering = 1.4;

/** The board as the camera sees it in a window of this size. Looked at more closely it is drawn anew: lines grow, lettering and widths stay. */
export function useShown(size: Size, development: Development, format: Format): Shown {
  const camera = useCamera((state) => state.camera);
  const lettering = useSettings((settings) => settings.lettering);
  const large = usePurpose((state) => state.large);
  const px = pxPerMm(size.width, size.height) * Math.max(lettering, large ? largeLettering : 1);
  const allowancesOf = useAllowances((state) => state.of);
  const allowances = useMemo(() => allowancesOf?.(development, format) ?? null, [allowancesOf, development, format]);
  const options = useMemo(() => ({ width: size.width / px, height: size.height / px, figures: format, words: drawingWords(format.trade), allowances }), [size, px, format, allowances]);
  const held = useInMotion((state) => state.held);
  const fit = useMemo(() => held?.fit ?? board(development, options), [development, options, held]);
  const zoom = camera?.zoom ?? 1;
  const drawn = useMemo(() => {
    if (held) return development === held.development ? held.drawn : redrawn(held.drawn, development, options);
    return zoom === 1 ? fit : board(development, { ...options, at: { scale: zoom * fit.scale, arrangement: fit.arrangement } });
  }, [development, options, fit, zoom, held]);
  return useMemo(() => {
    if (held) return { ...held, development, drawn, size, view: viewKept(held.view, held.size, size) };
    const whole = viewOf(fit.bounds, options.width, options.height);
    const mm = mmPerPx(whole, size);
    const view = camera ? windowOn(drawn, camera.anchor, camera.at, { width: size.width * mm, height: size.height * mm }) : whole;
    return { development, fit, drawn, whole, view, size, px, options };
  }, [development, fit, drawn, camera, options, size, px, held]);
}
