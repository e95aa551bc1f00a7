import { inflateSync } from "node:zlib";

/** An indirect object of a PDF: its dictionary as written, and the bytes of its stream, unpacked. */
export interface PdfObject {
  readonly head: string;
  readonly stream: string;
}

/**
 * The indirect objects of a PDF by number. Covers what a browser prints: objects in the clear, streams packed with
 * FlateDecode or not at all; streams packed otherwise (photographs, fonts) come as empty text.
 */
export function pdfObjects(bytes: Uint8Array): Map<number, PdfObject> {
  const text = Buffer.from(bytes).toString("latin1");
  if (!text.startsWith("%PDF-")) throw new Error("not a PDF");
  const objects = new Map<number, PdfObject>();
  for (const match of text.matchAll(/(?:^|[\r\n])(\d+) 0 obj\b/g)) {
    const start = match.index + match[0].length;
    const end = text.indexOf("endobj", start);
    const streamAt = text.indexOf("stream", start);
    const hasStream = streamAt >= 0 && streamAt < end;
    const head = text.slice(start, hasStream ? streamAt : end);
    objects.set(Number(match[1]), { head, stream: hasStream ? unpacked(text, head, streamAt) : "" });
  }
  return objects;
}

function unpacked(text: string, head: string, streamAt: number): string {
  const start = streamAt + "stream".length + (text.startsWith("\r\n", streamAt + "stream".length) ? 2 : 1);
  const length = /\/Length (\d+)(?! 0 R)/.exec(head)?.[1];
  if (length === undefined) throw new Error("a stream without its length");
  const raw = text.slice(start, start + Number(length));
  const filter = /\/Filter ?(\[?\/\w+)/.exec(head)?.[1];
  if (filter === undefined) return raw;
  if (filter === "/FlateDecode") return inflateSync(Buffer.from(raw, "latin1")).toString("latin1");
  return "";
}
