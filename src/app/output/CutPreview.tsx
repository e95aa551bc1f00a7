import { useMemo } from "react";
import { boundsOf } from "../../drawing/bounds";
import { growBox } from "../../drawing/box";
import { viewBox } from "../../output/svg/viewBox";
import { ItemsView } from "../board/ItemView";
import { useFormat } from "../quantity/useFormat";
import { useFabrication } from "../shop/useFabrication";
import { outputWords } from "../words/output";
import { useOutput } from "./choices";
import { cutItems } from "./cutItems";

/** The cut lines of all parts in small, as the files have them. */
export function CutPreview() {
  const fabrication = useFabrication();
  const format = useFormat();
  const apart = useOutput((choices) => choices.parts === "apart");
  const count = fabrication.parts.length;
  const items = useMemo(() => cutItems(fabrication, format), [fabrication, format]);
  const box = growBox(boundsOf(items), 3);
  const size = `${format.length(box.right - box.left)} × ${format.length(box.top - box.bottom)} ${format.unit}`;
  return (
    <section className="outcome" aria-label={outputWords.allParts}>
      <p>{apart && count > 1 ? outputWords.outcome.apart(count) : outputWords.outcome.cut(count, size)}</p>
      <div className="previews">
        <svg className="page-preview" viewBox={viewBox(box)} role="img" aria-label={outputWords.allParts}>
          <ItemsView items={items} />
        </svg>
      </div>
    </section>
  );
}
