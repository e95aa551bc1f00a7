import { useMemo } from "react";
import type { Board } from "../../drawing/board/board";
import { drawnPaper } from "../../drawing/compared/drawnPaper";
import { useCheck } from "../check/useCheck";
import { useLaid } from "./laid";

/** The rectified picture under the pattern, at true scale. */
export function PhotoLayer({ board }: { board: Board }) {
  const check = useCheck();
  const laid = useLaid((state) => state.picture);
  const opacity = useLaid((state) => state.opacity);
  const parts = useMemo(() => (check && laid ? drawnPaper(board, check.piece, check.readings) : []), [board, check, laid]);
  if (!laid) return null;
  const { left, right, bottom, top } = laid.region;
  return (
    <g className="photo-layer" opacity={opacity}>
      {parts.map(({ from, to, origin, across, up }, i) => {
        // Beyond its ends the paper is shown where it lies in one piece.
        const [first, last] = parts.length > 1 ? [from, to] : [left, right];
        return (
          <g key={i} transform={`matrix(${across.x} ${-across.y} ${up.x} ${-up.y} ${origin.x} ${-origin.y})`}>
            <svg x={first} y={bottom} width={last - first} height={top - bottom} viewBox={`${first} ${bottom} ${last - first} ${top - bottom}`} overflow="hidden">
              {/* The picture's rows run down, the paper's height up. */}
              <image href={laid.url} x={left} y={-top} width={right - left} height={top - bottom} transform="scale(1 -1)" preserveAspectRatio="none" />
            </svg>
          </g>
        );
      })}
    </g>
  );
}
