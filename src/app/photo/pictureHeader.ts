// What picture is this, and how large, before anything of it is decoded? JPEG (ITU-T T.81), PNG (W3C recommendation) and WebP (RFC 9649),
// their first bytes from memory.

export interface PictureHeader {
  readonly type: "image/jpeg" | "image/png" | "image/webp";
  /** Pixels, as stored; 0 where the bytes end before they are said. */
  readonly width: number;
  readonly height: number;
}

/** The header of a picture by the first bytes of its file; null for any other kind of file. */
export function pictureHeader(bytes: Uint8Array): PictureHeader | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const says = (at: number, text: string) => [...text].every((letter, i) => bytes[at + i] === letter.charCodeAt(0));
  try {
    if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return jpeg(view);
    if (says(0, "\x89PNG\r\n\x1a\n")) return { type: "image/png", width: view.getUint32(16), height: view.getUint32(20) };
    if (says(0, "RIFF") && says(8, "WEBP")) return webp(view, says);
    return null;
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    // The file ends within its header.
    return { type: bytes[0] === 0xff ? "image/jpeg" : bytes[0] === 0x89 ? "image/png" : "image/webp", width: 0, height: 0 };
  }
}

/** Marker segments one after the other, up to the frame header. */
function jpeg(view: DataView): PictureHeader {
  for (let at = 2; ; ) {
    if (view.getUint8(at) !== 0xff) return { type: "image/jpeg", width: 0, height: 0 };
    const marker = view.getUint8(at + 1);
    if (marker === 0xff) at += 1;
    else if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) {
      return { type: "image/jpeg", width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    } else at += marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8) ? 2 : 2 + view.getUint16(at + 2);
  }
}

/** Lossy, lossless and extended form. */
function webp(view: DataView, says: (at: number, text: string) => boolean): PictureHeader {
  const type = "image/webp";
  const three = (at: number) => view.getUint16(at, true) + 65536 * view.getUint8(at + 2);
  if (says(12, "VP8 ")) return { type, width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  if (says(12, "VP8L")) {
    const bits = view.getUint32(21, true);
    return { type, width: 1 + (bits & 0x3fff), height: 1 + ((bits >>> 14) & 0x3fff) };
  }
  if (says(12, "VP8X")) return { type, width: 1 + three(24), height: 1 + three(27) };
  return { type, width: 0, height: 0 };
}
