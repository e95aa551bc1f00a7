import { useState, type ClipboardEvent } from "react";
import { useSettings } from "../store/settings";
import type { GridRow } from "./namedRows";
import { asLikely, pasted, type Pasted, type PasteWish } from "./pasted";
import { changeSheet } from "./sheets";

/** What was pasted last: the text, where, and what stood in its fields. */
interface LastPaste {
  readonly text: string;
  readonly from: string;
  readonly wish: PasteWish;
  readonly laid: Pasted;
  readonly before: Readonly<Record<string, string>>;
}

/** Columns pasted into the readings; what came of the last, to be taken otherwise or back. */
export function usePaste(blocks: readonly (readonly GridRow[])[], readings: Readonly<Record<string, string>>) {
  const comma = useSettings((settings) => settings.comma);
  const [last, setLast] = useState<LastPaste | null>(null);
  const lay = (text: string, from: string, wish: PasteWish, former: LastPaste | null): boolean => {
    const laid = pasted(text, blocks, from, wish);
    if (!laid) return false;
    const back = former ? putBack(former, readings) : {};
    const before = Object.fromEntries(Object.keys(laid.texts).map((key) => [key, back[key] ?? readings[key] ?? ""]));
    changeSheet((now) => ({ ...now, readings: { ...now.readings, ...back, ...laid.texts } }));
    setLast({ text, from, wish, laid, before });
    return true;
  };
  return {
    laid: last?.laid ?? null,
    onPaste: (event: ClipboardEvent<HTMLInputElement>, key: string) => {
      if (lay(event.clipboardData.getData("text"), key, { ...asLikely, comma }, null)) event.preventDefault();
      else setLast(null);
    },
    /** Lays the same text again, taken otherwise. */
    again: (wish: Partial<PasteWish>) => {
      if (last) lay(last.text, last.from, { ...last.wish, ...wish }, last);
    },
    takeBack: () => {
      if (last) changeSheet((now) => ({ ...now, readings: { ...now.readings, ...putBack(last, now.readings) } }));
      setLast(null);
    },
  };
}

/** What stood in the fields that still hold what was pasted. */
function putBack({ laid: { texts }, before }: LastPaste, readings: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(texts).flatMap(([key, text]) => (readings[key] === text ? [[key, before[key] ?? ""]] : [])));
}
