/**
 * From bytes, in as many pieces as the shell likes, to the points of a GPX file. Joins the question of the
 * encoding with the reader; the shell brings the decoder, because the core has none.
 */
import { encodingOf, HEAD_BYTES, type OpenDecoder, type TextStream } from './encoding.ts';
import { createGpxReader } from './reader.ts';
import { type GpxResult, refused } from './types.ts';

/** Takes bytes as they come. */
interface GpxBytes {
  /** False once the file is refused; the rest of it need not be read then. */
  push(bytes: Uint8Array): boolean;
  end(): GpxResult;
}

/** Starts reading a file from its bytes. */
export function createGpxBytes(openDecoder: OpenDecoder): GpxBytes {
  const reader = createGpxReader();
  let head = new Uint8Array(0);
  let stream: TextStream | null = null;
  let refusal: ReturnType<typeof refused> | null = null;
  const begin = (): void => {
    const encoding = encodingOf(head.subarray(0, HEAD_BYTES));
    if (encoding.kind !== 'text') {
      refusal = encoding.kind === 'packed' ? refused('packed') : refused('not-xml', { is: encoding.is });
      return;
    }
    try {
      stream = openDecoder(encoding.label);
    } catch {
      refusal = refused('encoding', { label: encoding.label });
      return;
    }
    reader.push(stream.decode(head, { stream: true }));
  };
  return {
    push(bytes) {
      if (refusal !== null) return false;
      if (stream !== null) return reader.push(stream.decode(bytes, { stream: true }));
      head = joined(head, bytes);
      if (head.length >= HEAD_BYTES) begin();
      return refusal === null;
    },
    end() {
      if (stream === null && refusal === null) begin();
      if (refusal !== null) return refusal;
      reader.push(stream?.decode() ?? '');
      return reader.end();
    },
  };
}

/** Reads a whole file at once. */
export function readGpx(bytes: Uint8Array, openDecoder: OpenDecoder): GpxResult {
  const file = createGpxBytes(openDecoder);
  file.push(bytes);
  return file.end();
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array<ArrayBuffer> {
  const both = new Uint8Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
