import { fileName } from "./fileName";

export interface CutFile {
  readonly title: string;
  /** The piece or plate, "parts" for all in one, "part list". */
  readonly piece: string;
  /** Of the blank, mm; null where several are in the file. */
  readonly size: { readonly width: number; readonly height: number } | null;
  /** In what it differs from another file of the same thing: "splines". */
  readonly variant?: string;
  readonly extension: string;
}

/** Letters that no accent explains. */
const PLAIN: Readonly<Record<string, string>> = { ß: "ss", ø: "o", Ø: "O", æ: "ae", Æ: "AE", œ: "oe", Œ: "OE", ł: "l", Ł: "L", đ: "d", Đ: "D", ð: "d", þ: "th", "×": "x", "⌀": "dia" };

/**
 * The name of a file that goes to a machine: job, piece and size in plain ASCII, "Lean-to vent, pipe, 283x220.dxf". Of a title without
 * any letter of the alphabet only the rest is left.
 */
export function cutFileName({ title, piece, size, variant = "", extension }: CutFile): string {
  const parts = [plain(title), plain(piece), ...(size ? [`${Math.ceil(size.width)}x${Math.ceil(size.height)}`] : []), plain(variant)];
  return fileName(parts.filter((part) => part !== "").join(", "), extension);
}

function plain(text: string): string {
  const letters = [...text].map((sign) => PLAIN[sign] ?? sign).join("").normalize("NFKD").replace(/\p{Mn}/gu, "");
  return letters.replace(/[^ -~]+/g, "-").replace(/^[-\s.,]+|[-\s.,]+$/g, "").slice(0, 60);
}
