import { useEffect, type RefObject } from "react";
import { useSnapping } from "../../handles/snapping";
import { useFormat } from "../../quantity/useFormat";
import { useRollUpPlace } from "../../rollUp/place";
import { Readout } from "../../rod/Readout";
import { selectPiece } from "../../store/select";
import { usePurpose } from "../../store/purpose";
import "../../theme/boardFoot.css";
import { boardWords } from "../../words/board";
import { useCamera } from "../camera";
import { SmoothDetails } from "../smooth/SmoothDetails";
import { useUnhurried } from "../useUnhurried";
import { useSmooth } from "../smooth/shown";
import { followKeys } from "./boardKeys";
import { followHands } from "./hands";
import { closer, fit, further, lookAt } from "./moves";
import { followPointing } from "./pointing";
import { ProjectedChoice } from "./ProjectedChoice";
import { useFullScreen } from "./useFullScreen";

interface Props {
  readonly board: RefObject<HTMLElement | null>;
  readonly paper: RefObject<HTMLElement | null>;
}

const views = ["front", "top", "side", "pattern"] as const;

/** The verbs of the board along its foot; with them come the hands and keys that move it. */
export function BoardFoot({ board, paper }: Props) {
  useFollowing(board, paper);
  const whole = useCamera((state) => state.camera === null);
  const smooth = useSmooth((state) => state.shown);
  const snapping = useSnapping((state) => state.on);
  const hasCorner = useRollUpPlace((place) => place.onBoard);
  const px = useCamera((state) => state.shown?.px ?? 3);
  // A lesson fills the screen with its words.
  const teaching = usePurpose((state) => state.purpose === "teach");
  const [full, toggleFull] = useFullScreen(board);
  const format = useFormat();
  return (
    <>
      {smooth && !hasCorner && <SmoothDetails px={px} />}
      {full && <FullReadout />}
      <div className="board-verbs">
        <div role="group" aria-label={boardWords.moving} title={boardWords.keys}>
          <Verb word={boardWords.fit} act={fit} disabled={whole} />
          <Verb word={boardWords.closer} act={closer} />
          <Verb word={boardWords.further} act={further} disabled={whole} />
        </div>
        <div role="group" aria-label={boardWords.views}>
          {views.map((view) => (
            <Verb key={view} word={format.trade.short[view]} label={boardWords.toView(format.trade.short[view])} act={() => lookAt(view)} />
          ))}
        </div>
        <ProjectedChoice />
        <Verb word={boardWords.snap} title={boardWords.snapHelp} pressed={snapping} act={() => useSnapping.setState({ on: !snapping })} />
        <Verb word={boardWords.smooth} pressed={smooth} act={() => useSmooth.setState({ shown: !smooth })} />
        {!teaching && <Verb word={full ? boardWords.leaveFull : boardWords.full} act={toggleFull} />}
      </div>
    </>
  );
}

/** The rod's figures, where the rod is out of sight. */
function FullReadout() {
  const piece = useUnhurried(selectPiece);
  const format = useFormat();
  return piece && <Readout piece={piece} format={format} />;
}

function useFollowing(board: Props["board"], paper: Props["paper"]): void {
  useEffect(() => {
    if (!board.current || !paper.current) return;
    const endings = [followHands(board.current, paper.current), followPointing(paper.current), followKeys(board.current)];
    return () => endings.forEach((end) => end());
  }, [board, paper]);
}

interface VerbProps {
  readonly word: string;
  readonly label?: string;
  readonly title?: string;
  readonly pressed?: boolean;
  readonly disabled?: boolean;
  readonly act: () => void;
}

function Verb({ word, label, title, pressed, disabled, act }: VerbProps) {
  return (
    <button type="button" className="verb" aria-label={label} title={title} aria-pressed={pressed} disabled={disabled} onClick={act}>
      {word}
    </button>
  );
}
