import { fail, type Result, succeed } from '../result.ts';

export type InflateFault = 'damaged' | 'tooLarge';

function streamOf(bytes: Uint8Array<ArrayBuffer>): ReadableStream<Uint8Array<ArrayBuffer>> {
  return new ReadableStream({
    start(controller) {
      controller.enqueue(bytes);
      controller.close();
    },
  });
}

/** A text compressed as zlib does (RFC 1950), with a checksum by which damage is noticed. */
export async function deflateText(text: string): Promise<Uint8Array> {
  const packed = streamOf(new TextEncoder().encode(text)).pipeThrough(new CompressionStream('deflate'));
  return new Uint8Array(await new Response(packed).arrayBuffer());
}

/** All that a stream gives, up to `most` bytes; beyond that it is stopped and null comes back. */
async function collect(stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array[] | null> {
  const reader = stream.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    length += part.value.length;
    parts.push(part.value);
    if (length > most) {
      await reader.cancel();
      return null;
    }
  }
  return parts;
}

/** The text in compressed bytes. A few bytes may stand for gigabytes, so it stops as soon as `most` bytes have come out. */
export async function inflateText(bytes: Uint8Array<ArrayBuffer>, most: number): Promise<Result<string, InflateFault>> {
  try {
    const parts = await collect(streamOf(bytes).pipeThrough(new DecompressionStream('deflate')), most);
    if (!parts) return fail('tooLarge');
    const decoder = new TextDecoder('utf-8', { fatal: true });
    return succeed(parts.map((part) => decoder.decode(part, { stream: true })).join('') + decoder.decode());
  } catch {
    return fail('damaged');
  }
}
