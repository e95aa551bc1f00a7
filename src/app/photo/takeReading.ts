import type { ReadLine } from "../../core/index";
import { placeKey, type ReadRow } from "../check/places";
import { changeSheet } from "../check/sheets";
import type { Check } from "../check/useCheck";
import type { Format } from "../quantity/format";
import { useReadingOff, type Taken } from "./readingOff";

// Readings put into the table from the picture; what was typed there is kept unless asked, and each step can be taken back.

/** mm, and inches in mm, to which a place in a picture is written. */
const fineness = { mm: 0.1, inch: 0.127 } as const;

/** A height on the paper (mm) as it is put into a field. */
export function readText(mm: number, format: Format): string {
  const step = fineness[format.units];
  return format.field(Math.round(mm / step) * step, "length");
}

/** What a step of reading would put where. */
interface Wanted {
  readonly row: ReadRow;
  readonly text: string;
}

/** Puts readings of a line into their fields; those that hold something typed are passed over unless `replace`. The fields passed over. */
export function takeReadings(check: Check, line: ReadLine, wanted: readonly Wanted[], replace: boolean): Wanted[] {
  const { readings } = check.sheet;
  const passed = replace ? [] : wanted.filter(({ row }) => isTyped(readings[placeKey({ line, at: row.at })], placeKey({ line, at: row.at })));
  const taken = wanted.filter((one) => !passed.includes(one)).map(({ row, text }): Taken => {
    const key = placeKey({ line, at: row.at });
    return { key, before: readings[key] ?? "", after: text };
  });
  put(taken);
  return passed;
}

/** Puts one reading into the field of a key, over what is there. */
export function takeReading(check: Check, key: string, text: string): void {
  put([{ key, before: check.sheet.readings[key] ?? "", after: text }]);
}

/** Whether the field of a row holds what was read off the picture. */
export function isFromPicture({ sheet: { readings } }: Check, line: ReadLine, { at }: ReadRow): boolean {
  const key = placeKey({ line, at });
  return (readings[key] ?? "").trim() !== "" && !isTyped(readings[key], key);
}

/** Takes back the last step, where its fields still hold what it put there; the key of its first field. */
export function takeBack(): string | null {
  const { taken } = useReadingOff.getState();
  const last = taken.at(-1);
  if (!last) return null;
  changeSheet((sheet) => {
    const back = last.filter(({ key, after }) => sheet.readings[key] === after).map(({ key, before }) => [key, before]);
    return { ...sheet, readings: { ...sheet.readings, ...(Object.fromEntries(back) as Record<string, string>) } };
  });
  useReadingOff.setState({ taken: taken.slice(0, -1) });
  return last[0]?.key ?? null;
}

function put(taken: readonly Taken[]): void {
  if (taken.length === 0) return;
  changeSheet((sheet) => ({ ...sheet, readings: { ...sheet.readings, ...Object.fromEntries(taken.map(({ key, after }) => [key, after])) } }));
  useReadingOff.setState((state) => ({ taken: [...state.taken, taken] }));
}

/** Whether a field holds something that did not come from the picture. */
function isTyped(text: string | undefined, key: string): boolean {
  if (text === undefined || text.trim() === "") return false;
  const own = useReadingOff.getState().taken.flat().filter((one) => one.key === key).at(-1);
  return own?.after !== text;
}
