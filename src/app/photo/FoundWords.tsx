import { LENS_POINTS } from "../../core/index";
import { placeKey } from "../check/places";
import type { Check } from "../check/useCheck";
import { useFormat } from "../quantity/useFormat";
import { FaultSentence } from "../screen/FaultSentence";
import { photoWords } from "../words/photo";
import type { Marked } from "./markedDrawing";
import { usePhoto } from "./photo";
import { pointName } from "./pointName";
import { readText, takeReading } from "./takeReading";

/** What the marks come to: what is wanting, what is wrong, or how well they fix the drawing. */
export function FoundWords({ marked: { found }, check }: { marked: Marked; check: Check }) {
  const format = useFormat();
  const photo = usePhoto();
  if (found.kind === "wanting") return <p className="found" role="status">{photoWords.wanting(found.points, found.base)}</p>;
  if (found.kind === "refused") return <p className="fault" role="alert"><FaultSentence fault={{ kind: "problem", problem: found.problem }} /></p>;
  const length = (mm: number) => `${readText(mm, format)} ${format.unit}`;
  const [worst] = Object.entries(found.residuals).sort(([, a], [, b]) => b - a);
  return (
    <div className="found" role="status">
      <p>
        {found.judged && worst ? photoWords.residual(length(worst[1]), pointName(worst[0], photo, format.trade)) : photoWords.exact}{" "}
        {photoWords.unsure(length(found.rectification.unsure))}{" "}
        {found.rectification.lens === null ? photoWords.noLens(LENS_POINTS) : photoWords.lens}
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
