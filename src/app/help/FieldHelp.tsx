import { useEffect, useMemo } from "react";
import { developJob } from "../../core/index";
import { miniature } from "../../drawing/miniature/miniature";
import { ItemView } from "../board/ItemView";
import { viewBox } from "../../output/svg/viewBox";
import { useFormat } from "../quantity/useFormat";
import "../theme/help.css";
import { FIELD_HELP } from "../words/help/fieldHelp";
import { helpWords } from "../words/help/helpWords";
import { helpId, type Helped } from "./helped";
import type { HelpRow } from "./helpRow";
import { sampleJob } from "./samples";

/** The window of the drawing, sheet mm; a sheet mm is three CSS pixels. */
const window = { width: 42, height: 35 };
const px = 3;

/** What the field in hand means, in a sentence or two and a small drawing; before there is one, how to ask. */
export function FieldHelp({ field }: { field: Helped | null }) {
  const { trade } = useFormat();
  const row = field ? FIELD_HELP[field.name] : undefined;
  useEffect(() => {
    // What is worked on stays in sight when the explanation takes its room.
    if (document.activeElement?.closest(".description")) document.activeElement.scrollIntoView({ block: "nearest" });
  }, []);
  return (
    <aside className="field-help" aria-label={helpWords.title}>
      {field && row ? (
        <>
          <HelpDrawing row={row} />
          <p id={helpId}>
            <strong>{field.label}</strong> {typeof row.says === "string" ? row.says : row.says(trade)}
          </p>
        </>
      ) : (
        <p>{helpWords.invitation}</p>
      )}
    </aside>
  );
}

function HelpDrawing({ row }: { row: HelpRow }) {
  const items = useMemo(() => {
    const outcome = developJob(sampleJob(row.sample));
    return outcome.ok ? miniature(outcome.development, row, window.width, window.height) : [];
  }, [row]);
  return (
    <svg className="help-drawing" aria-hidden="true" width={window.width * px} height={window.height * px} viewBox={viewBox({ left: 0, right: window.width, bottom: 0, top: window.height })}>
      {items.map((item, i) => (
        <ItemView key={i} item={item} />
      ))}
    </svg>
  );
}
