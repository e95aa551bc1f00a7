import { words } from "../words/interface";

/** Names that one system keeps for its devices. */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/** A file name from a title: signs that file systems refuse become hyphens, and it is never empty nor a device's. */
export function fileName(title: string, extension: string): string {
  const plain = [...title].map((sign) => (sign < " " || '<>:"/\\|?*'.includes(sign) ? "-" : sign)).join("");
  const stem = plain.replace(/\s+/g, " ").replace(/^[.\s-]+|[.\s-]+$/g, "").slice(0, 80).trim();
  return `${DEVICE.test(stem) ? `${stem}-` : stem || words.untitled}.${extension}`;
}
