import { words } from "../words/interface";

/** A file name from a title: signs that file systems refuse become hyphens, and it is never empty. */
export function fileName(title: string, extension: string): string {
  const plain = [...title].map((sign) => (sign < " " || '<>:"/\\|?*'.includes(sign) ? "-" : sign)).join("");
  const stem = plain.replace(/\s+/g, " ").replace(/^[.\s-]+|[.\s-]+$/g, "").slice(0, 80).trim();
  return `${stem || words.untitled}.${extension}`;
}
