// A sentence in lines no longer than there is room.

import { textWidth } from "./lettering";

/** Lines of at most `width` mm at the given capital height, broken at spaces; a word that is longer stands alone, cut off with "…". */
export function wrapText(text: string, width: number, height: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter((part) => part !== "")) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line !== "" && textWidth(longer, height) > width) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return [...lines, ...(line === "" ? [] : [line])].map((one) => shortened(one, width, height));
}

/** The line, or as much of it as `width` mm takes, with "…" at its end. */
export function shortened(line: string, width: number, height: number): string {
  if (textWidth(line, height) <= width) return line;
  const letters = [...line];
  while (letters.length > 0 && textWidth(`${letters.join("")}…`, height) > width) letters.pop();
  return `${letters.join("")}…`;
}
