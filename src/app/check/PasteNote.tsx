import { useFormat } from "../quantity/useFormat";
import { useSettings } from "../store/settings";
import { checkWords } from "../words/check";
import type { Pasted, PasteWish } from "./pasted";

interface Props {
  readonly laid: Pasted;
  /** Takes the same text otherwise. */
  readonly again: (wish: Partial<PasteWish>) => void;
  readonly takeBack: () => void;
}

/** How what was pasted was taken, and the verbs that take it otherwise. */
export function PasteNote({ laid: { texts, surplus, heading, leftOut, named, mark }, again, takeBack }: Props) {
  const format = useFormat();
  const comma = useSettings((settings) => settings.comma);
  const said = checkWords.paste;
  const verb = (label: string, act: () => void) => <button type="button" className="verb" onClick={act}>{label}</button>;
  return (
    <div className="paste-note">
      <div role="status" className="found">
        <p>
          {said.taken(Object.keys(texts).length)} {heading.length > 0 && said.heading(heading)} {leftOut.length > 0 && said.leftOut(leftOut)}{" "}
          {named && said.named[named.by](named.first, named.last)}{" "}
          {mark && (mark.either || !comma) && said.mark(mark.sign, mark.as, mark.example, format.field(mark.read, "count"))}
        </p>
      </div>
      {surplus.length > 0 && <p className="fault" role="alert">{checkWords.surplus(surplus)}</p>}
      <p className="check-verbs">
        {named?.either && verb(said.otherwise[named.by], () => again({ by: named.by === "name" ? "order" : "name" }))}
        {mark?.either && verb(said.turn(mark.sign, mark.as), () => again({ mark: mark.as === "decimal" ? "thousands" : "decimal" }))}
        {verb(said.back, takeBack)}
      </p>
    </div>
  );
}
