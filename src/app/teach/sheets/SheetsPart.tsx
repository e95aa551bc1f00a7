import { LESSON_KINDS, type LessonKind } from "../../../drawing/lesson/lessonKinds";
import { useFormat } from "../../quantity/useFormat";
import { sheetsWords as said } from "../../words/sheets";
import { LaidSheets } from "./LaidSheets";
import { MakeSheets } from "./MakeSheets";
import { SchoolFields } from "./SchoolFields";
import { chooseSheets, useSheets } from "./sheetChoices";
import { SheetsSentence } from "./SheetsSentence";
import { SheetText } from "./SheetText";
import { useLessons } from "./useLessons";
import "../../theme/sheets.css";

/** The sheets for a class: what to make, on what, with which words and whose block; what will come out, and the verb that makes it. */
export function SheetsPart() {
  const laid = useLessons();
  return (
    <div className="class-sheets">
      <h2>{said.title}</h2>
      <p className="sheets-lead">{said.lead}</p>
      <Kinds />
      <SheetsSentence />
      <SchoolFields />
      <SheetText />
      <MakeSheets laid={laid} />
      <LaidSheets laid={laid} />
    </div>
  );
}

function Kinds() {
  const { trade } = useFormat();
  const chosen = useSheets((choices) => choices.kinds);
  const names = said.kinds(trade);
  const toggle = (kind: LessonKind) => chooseSheets({ kinds: chosen.includes(kind) ? chosen.filter((one) => one !== kind) : [...chosen, kind] });
  return (
    <fieldset>
      <legend>{said.kindsOf}</legend>
      {LESSON_KINDS.map((kind) => (
        <label key={kind}>
          <input type="checkbox" checked={chosen.includes(kind)} onChange={() => toggle(kind)} />
          {names[kind]}
        </label>
      ))}
    </fieldset>
  );
}
