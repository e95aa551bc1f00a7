// Lettering as PDF operators, in the embedded face.

import type { PdfFont } from "pdfkit";
import type { TextItem } from "../../drawing/display";
import { CAP_HEIGHT } from "../../drawing/lettering";
import { numberText } from "./numberText";

/** Width of the paper kept clear round letters, both sides together, mm. */
const CLEAR = 1.2;

/** The letters, with the paper kept clear round them where the item asks for it. */
export function textOperators({ at, text, height, align, turn, clear }: TextItem, font: PdfFont): string {
  const size = height / CAP_HEIGHT;
  const [glyphs, places] = font.encode(writable(text, font));
  const width = (places.reduce((sum, { advanceWidth }) => sum + advanceWidth, 0) * size) / 1000;
  const shift = align === "start" ? 0 : align === "middle" ? -width / 2 : -width;
  const cos = Math.cos(turn), sin = Math.sin(turn);
  const matrix = [cos, sin, -sin, cos, at.x + shift * cos, at.y + shift * sin].map(numberText).join(" ");
  const letters = `/${font.id} ${numberText(size)} Tf ${matrix} Tm <${glyphs.join("")}> Tj`;
  const cleared = clear ? `q 1 G ${numberText(CLEAR)} w [] 0 d 1 j BT 1 Tr ${letters} ET Q ` : "";
  return `${cleared}BT ${letters} ET`;
}

/** The text in the letters the face has: accents it lacks are dropped, other signs become question marks. */
export function writable(text: string, { font }: Pick<PdfFont, "font">): string {
  const has = (sign: string) => font.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0);
  return [...text.normalize("NFC")].map((sign) => {
    if (has(sign)) return sign;
    const plain = [...sign.normalize("NFKD")].filter((part) => !/\p{M}/u.test(part));
    return plain.length > 0 && plain.every(has) ? plain.join("") : "?";
  }).join("");
}
