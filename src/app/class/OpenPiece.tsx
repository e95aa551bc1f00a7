import { useState } from "react";
import type { Variant } from "../../core/index";
import { classWords as said } from "../words/class";
import { leavePiece, openCode } from "./openVariant";
import type { CodeFault } from "./codeFault";
import { packVariant } from "./packedVariant";
import { placeHere, usePlace } from "./programPlace";
import type { Student } from "./studentsOf";
import { variantJob } from "./variantJob";
import { writeVariantLink } from "./variantLink";

/** Rows shown at first: a class. */
const SHOWN = 40;

/** A student's piece brought back by its code, from the sheet or from the list. */
export function OpenPiece({ students, found, isPiece }: { students: readonly Student[]; found: readonly Variant[]; /** Whether a piece opened here is on the board. */ isPiece: boolean }) {
  const [typed, setTyped] = useState("");
  const [fault, setFault] = useState<CodeFault | null>(null);
  const open = (code: string) => void openCode(code).then(setFault);
  return (
    <fieldset className="ranges">
      <legend>{said.open}</legend>
      <form
        className="open-code"
        onSubmit={(event) => {
          event.preventDefault();
          open(typed);
        }}
      >
        <label>
          {said.code} <input className="reading" data-help="code" autoComplete="off" autoCapitalize="characters" spellCheck={false} value={typed} aria-invalid={fault ? true : undefined} onChange={(event) => setTyped(event.target.value)} />
        </label>
        <button type="submit" className="verb">{said.openCode}</button>
        {isPiece && <button type="button" className="verb" onClick={() => void leavePiece()}>{said.leave}</button>}
      </form>
      {fault && <p className="fault" role="alert">{said.codeFault[fault]}</p>}
      {found.length > 0 && <Pieces students={students} found={found} open={open} />}
    </fieldset>
  );
}

function Pieces({ students, found, open }: { students: readonly Student[]; found: readonly Variant[]; open: (code: string) => void }) {
  const { typed } = usePlace();
  const [told, tell] = useState("");
  const shown = Math.min(students.length, found.length, SHOWN);
  const named = students.some(({ name }) => name !== "");
  const copy = (variant: Variant) => void copyLink(typed.trim() || placeHere(), variant).then(() => tell(said.linkCopied), () => tell(said.linkRefused));
  return (
    <>
      <table className="pieces">
        <caption className="unseen">{said.table.caption}</caption>
        <thead>
          <tr>
            <th scope="col">{said.table.number}</th>
            <th scope="col">{named ? said.table.who : said.table.code}</th>
            <th><span className="told" aria-live="polite">{told}</span></th>
          </tr>
        </thead>
        <tbody>
          {students.slice(0, shown).map(({ name }, i) => {
            const variant = found[i];
            const who = name || said.student(i + 1);
            return variant && (
              <tr key={i}>
                <td>{i + 1}</td>
                <td className="piece">
                  {named && <span className="who">{name}</span>}
                  <span className="code">{variant.code}</span>
                </td>
                <td>
                  <button type="button" className="verb" aria-label={said.openOf(who)} onClick={() => open(variant.code)}>{said.table.open}</button>
                  <button type="button" className="verb" aria-label={said.linkOf(who)} onClick={() => copy(variant)}>{said.table.link}</button>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {students.length > shown && <p className="found">{said.more(students.length - shown)}</p>}
    </>
  );
}

/** Puts the address that opens the piece for checking on the clipboard. */
async function copyLink(place: string, variant: Variant): Promise<void> {
  await navigator.clipboard.writeText(writeVariantLink(place, { code: variant.code, packed: await packVariant(variantJob(variant)) }));
}
