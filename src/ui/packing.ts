/** Deflating and inflating by the browser, for levels, plans and results on their way between devices. */
import type { Deflate, Inflate } from '../core/transfer/pack.ts';

const RAW = 'deflate-raw';

/** Deflates; where the browser cannot, gives the bytes back as they are and the packet stays plain. */
export const deflate: Deflate = async (bytes) => {
  if (typeof CompressionStream === 'undefined') return bytes;
  return through(bytes, new CompressionStream(RAW), Number.POSITIVE_INFINITY);
};

/** Inflates; rejects what is no deflated text, and with a `RangeError` what comes to more than is allowed. */
export const inflate: Inflate = (bytes, mostBytes) => through(bytes, new DecompressionStream(RAW), mostBytes);

/** Bytes through a stream; rejects once more than `mostBytes` come out: a small text can unpack to gigabytes. */
async function through(
  bytes: Uint8Array,
  stream: CompressionStream | DecompressionStream,
  mostBytes: number,
): Promise<Uint8Array> {
  const writer = stream.writable.getWriter();
  // A fault shows at the other end too; here it would only be reported a second time.
  const written = writer
    .write(new Uint8Array(bytes))
    .then(() => writer.close())
    .catch(() => undefined);
  const reader = (stream.readable as ReadableStream<Uint8Array>).getReader();
  const pieces: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > mostBytes) {
      await reader.cancel();
      throw new RangeError('more than is allowed');
    }
    pieces.push(value);
  }
  await written;
  const out = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    out.set(piece, at);
    at += piece.length;
  }
  return out;
}
