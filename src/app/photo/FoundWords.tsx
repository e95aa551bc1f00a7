import { LENS_POINTS, SURE } from "../../core/index";
import { placeKey } from "../check/places";
import type { Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import { FaultSentence } from "../screen/FaultSentence";
import { photoWords } from "../words/photo";
import type { DrawnSize, Marked } from "./markedDrawing";
import { usePhoto } from "./photo";
import { pointName } from "./pointName";
import { readText, takeReading } from "./takeReading";

/** What the marks come to: what is wanting, what is wrong, or how well they fix the drawing. */
export function FoundWords({ marked: { found, size }, check }: { marked: Marked & { readonly size: DrawnSize }; check: Check }) {
  const format = useFormat();
  const photo = usePhoto();
  if (found.kind === "wanting") return <p className="found" role="status">{photoWords.wanting(found.points, found.base)}</p>;
  if (found.kind === "refused") return <p className="fault" role="alert"><FaultSentence fault={{ kind: "problem", problem: found.problem }} /></p>;
  const length = (mm: number) => `${readText(mm, format)} ${format.unit}`;
  const { unsure, unsureAt, lens } = found.rectification;
  const [worst] = Object.entries(found.residuals).sort(([, a], [, b]) => b - a);
  return (
    <div className="found" role="status">
      <p>
        {found.judged && worst ? photoWords.residual(length(worst[1]), pointName(worst[0], photo, format.trade)) : photoWords.exact}{" "}
        {lens === null ? photoWords.noLens(LENS_POINTS) : photoWords.lens}
      </p>
      <p className={unsure > SURE ? "notice" : undefined}>
        {photoWords.unsure(`${format.length(unsure)} ${format.unit}`, photoWords.places[third(unsureAt.y, size.height)][third(unsureAt.x, size.width)])}{" "}
        {unsure > SURE && photoWords.more(`${format.length(SURE)} ${format.unit}`, Object.keys(found.residuals).length < LENS_POINTS)}
      </p>
      {found.length !== null && (
        <p>
          {photoWords.length(length(found.length), format.trade)}{" "}
          <button type="button" className="verb" onClick={() => takeReading(check, placeKey({ line: "stretchOut" }), readText(found.length ?? 0, format))}>
            {photoWords.takeLength(format.trade)}
          </button>
        </p>
      )}
    </div>
  );
}

/** In which third of its side a place lies. */
function third(place: number, side: number): 0 | 1 | 2 {
  return place < side / 3 ? 0 : place > (2 * side) / 3 ? 2 : 1;
}
