import { pictureHeader } from "./pictureHeader";

// Why a file cannot be opened as a picture, before it is decoded.

export const LIMIT = {
  /** Pixels of a picture: 40 megapixels. */
  pixels: 40e6,
  /** Bytes of a file. */
  bytes: 120e6,
  /** Bytes in which the header of a picture lies. */
  header: 1 << 22,
} as const;

export type PictureFault =
  | { readonly kind: "empty" | "not-a-picture" | "heif" | "pdf" | "damaged" | "too-small" | "not-here" }
  | { readonly kind: "too-large"; readonly megabytes: number }
  | { readonly kind: "too-many-pixels"; readonly megapixels: number };

/** Pixels of a side below which nothing can be read off. */
const LEAST_SIDE = 100;

/** What is wrong with a file, by its size and its first bytes; null where it may be decoded. */
export function pictureFault(size: number, first: Uint8Array): PictureFault | null {
  if (size === 0) return { kind: "empty" };
  const header = pictureHeader(first);
  if (!header) return { kind: otherKind(first) };
  const { width, height } = header;
  // More than the limit in any case, however little.
  if (width * height > LIMIT.pixels) return { kind: "too-many-pixels", megapixels: Math.max(LIMIT.pixels / 1e6 + 1, Math.round((width * height) / 1e6)) };
  if (size > LIMIT.bytes) return { kind: "too-large", megabytes: Math.ceil(size / 1e6) };
  if (width === 0 || height === 0) return { kind: "damaged" };
  return Math.min(width, height) < LEAST_SIDE ? { kind: "too-small" } : null;
}

/** What is often taken for a picture that can be opened: telephones' files (ISO/IEC 23008-12, brands of its file type box) and scans. From memory. */
function otherKind(first: Uint8Array): "not-a-picture" | "heif" | "pdf" {
  const text = String.fromCharCode(...first.subarray(0, 12));
  if (text.startsWith("%PDF-")) return "pdf";
  return /^[^]{4}ftyp(hei[cfmsx]|hev[cmsx]|mif1|msf1)/.test(text) ? "heif" : "not-a-picture";
}
