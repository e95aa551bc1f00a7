// Which sentence of a page stands where in its bands, so that none is lost?

import { LETTERING, textWidth } from "../lettering";
import { shortened, wrapText } from "../wrapText";

/** Room for lines of words. */
export interface Area {
  /** Of a line, mm. */
  readonly width: number;
  readonly lines: number;
}

export interface Said {
  readonly check: string;
  readonly correction: string;
  readonly heading: string;
  readonly sheet: string;
}

/** In one line, mm: the room kept for a heading, how long it and the correction may be, and the longest number of a sheet. */
const HEADING = 110, LONGEST = 165, SHEET = 45;

/**
 * The fewest lines of `width` mm that take, with the areas, what the pages of a document say, whatever the number of the sheet. It does
 * not ask for more than these have if each stands alone.
 */
export function fewestLines(areas: readonly Area[], width: number, { check, correction, heading }: Omit<Said, "sheet">): number {
  const long = textWidth(heading, LETTERING) > HEADING ? shortHeading(heading) : filler(HEADING);
  const sentences = [check, long, shortened(correction, LONGEST, LETTERING), filler(SHEET)];
  const most = sentences.reduce((sum, sentence) => sum + wrapText(sentence, width, LETTERING).length, 0);
  for (let lines = 0; lines < most; lines++) if (placed([...areas, { width, lines }], sentences)) return lines;
  return most;
}

/** The lines of each area. Where the whole does not fit, the heading is shortened first, then the correction, whose end is the printer's name. */
export function placedSentences(areas: readonly Area[], { check, correction, heading, sheet }: Said): string[][] {
  const short = shortHeading(heading);
  const tries = [[check, heading, correction, sheet], [check, short, correction, sheet], [check, short, shortened(correction, LONGEST, LETTERING), sheet]];
  for (const sentences of tries) {
    const found = placed(areas, sentences.filter((sentence) => sentence !== ""));
    if (found) return found;
  }
  throw new RangeError(`no room for: ${check}`);
}

/** Each sentence whole in one area, the first in the narrowest that takes it, the others in the widest; null when one finds no room. */
function placed(areas: readonly Area[], sentences: readonly string[]): string[][] | null {
  const lines: string[][] = areas.map(() => []);
  const order = areas.map((_, i) => i).slice(0, -1).sort((a, b) => (areas[a]?.width ?? 0) - (areas[b]?.width ?? 0));
  const last = areas.length - 1;
  for (const [i, sentence] of sentences.entries()) {
    const tried = i === 0 ? [...order, last] : [...order.toReversed(), last];
    const at = tried.find((one) => {
      const area = areas[one];
      return area !== undefined && area.lines > 0 && fits(sentence, area.width) && (lines[one]?.length ?? 0) + wrapText(sentence, area.width, LETTERING).length <= area.lines;
    });
    if (at === undefined) return null;
    lines[at]?.push(...wrapText(sentence, areas[at]?.width ?? 0, LETTERING));
  }
  return lines;
}

/** The longest of its parts, which is a title, shortened: what part of the job it is stays whole. */
function shortHeading(heading: string): string {
  if (textWidth(heading, LETTERING) <= LONGEST) return heading;
  const parts = heading.split(PART);
  const longest = parts.reduce((best, part) => (part.length > best.length ? part : best), "");
  const rest = textWidth(heading, LETTERING) - textWidth(longest, LETTERING);
  return parts.map((part) => (part === longest ? shortened(part, LONGEST - rest, LETTERING) : part)).join(PART);
}

/** Between the parts of a heading. */
const PART = " · ";

/** Whether no word is longer than a line. */
function fits(sentence: string, width: number): boolean {
  return sentence.split(" ").every((word) => textWidth(word, LETTERING) <= width);
}

/** Words of an ordinary length, `width` mm long in one line. */
function filler(width: number): string {
  let text = "";
  while (textWidth(`${text} sample`, LETTERING) <= width) text += text === "" ? "sample" : " sample";
  return text;
}
