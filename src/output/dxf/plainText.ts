// Lettering in signs every reader of the format knows: plain ASCII, its own codes for ⌀ ° ±, numbered codes for the rest.

const CODES: Readonly<Record<string, string>> = {
  "⌀": "%%c", "Ø": "%%c", "°": "%%d", "±": "%%p", "×": "x", "·": "-", "–": "-", "—": "-", "−": "-", "π": "pi", "″": "\"", "′": "'", "“": "\"", "”": "\"", "‘": "'", "’": "'",
  "…": "...", "½": "1/2", "¼": "1/4", "¾": "3/4", "⁄": "/", "^": "^ ", ß: "ss",
};

/** The text in ASCII; letters with accents lose them, signs without a likeness become \U+ and their four-digit code. */
export function plainText(text: string): string {
  return [...text].map((sign) => CODES[sign] ?? [...sign.normalize("NFKD")].map(plainSign).join("")).join("");
}

function plainSign(sign: string): string {
  if (/\p{Mn}/u.test(sign)) return "";
  if (sign >= " " && sign <= "~") return sign;
  if (sign < " ") return " ";
  return CODES[sign] ?? Array.from({ length: sign.length }, (_, i) => `\\U+${sign.charCodeAt(i).toString(16).toUpperCase().padStart(4, "0")}`).join("");
}
