import { LIMITS, readJobText, writeJobText, type Job } from "../../core/index";

// A job in an address: its file, compressed (RFC 1951) and written in the letters an address may hold (RFC 4648, section 5).

/** The job as a part of an address. */
export async function packJob(job: Job): Promise<string> {
  const stream = streamOf(writeJobText(job)).pipeThrough(new CompressionStream("deflate-raw"));
  const bytes = new Uint8Array(await new Response(stream).arrayBuffer());
  const letters = btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(""));
  return letters.replaceAll("+", "-").replaceAll("/", "_").replaceAll("=", "");
}

/** The job of a part of an address; null when it holds none, or more than a job file may. */
export async function unpackJob(packed: string): Promise<Job | null> {
  try {
    const bytes = Uint8Array.from(atob(packed.replaceAll("-", "+").replaceAll("_", "/")), (letter) => letter.charCodeAt(0));
    const text = await textWithin(streamOf(bytes).pipeThrough(new DecompressionStream("deflate-raw")), LIMITS.file.max);
    const read = text === null ? null : readJobText(text);
    return read?.ok ? read.job : null;
  } catch {
    return null;
  }
}

function streamOf(data: string | Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> {
  const { body } = new Response(data);
  if (!body) throw new RangeError("nothing to stream");
  return body;
}

/** The text of a stream, null when it is longer than `most` bytes: what is packed small may unpack to anything. */
async function textWithin(stream: ReadableStream<Uint8Array>, most: number): Promise<string | null> {
  const reader = stream.getReader();
  const decoder = new TextDecoder();
  let text = "";
  for (let size = 0; ; ) {
    const { done, value } = await reader.read();
    if (done) return text + decoder.decode();
    size += value.byteLength;
    if (size > most) {
      await reader.cancel();
      return null;
    }
    text += decoder.decode(value, { stream: true });
  }
}
