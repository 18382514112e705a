/**
 * From bytes, in as many pieces as the shell likes, to the points of a GPX file. Joins the questions of packing and
 * encoding with the reader; the shell brings the decoder, because the core has none.
 */
import { encodingOf, HEAD_BYTES, type OpenDecoder, type TextStream } from './encoding.ts';
import { openPacked, type Packing } from './packed.ts';
import { createGpxReader } from './reader.ts';
import { type GpxResult, refused } from './types.ts';

interface GpxBytes {
  /** False once the file is refused; the rest of it need not be read then. */
  push(bytes: Uint8Array): boolean;
  end(): GpxResult;
}

/** So many packings inside one another are opened: an archive of packed files. */
const PACKED_DEEP = 2;

/** Starts reading a file from its bytes, which may be packed. */
export function createGpxBytes(openDecoder: OpenDecoder, unpacked = 0): GpxBytes {
  const start = (head: Uint8Array): GpxBytes => {
    const encoding = encodingOf(head.subarray(0, HEAD_BYTES));
    if (encoding.kind === 'text') return textBytes(openDecoder, encoding.label);
    if (encoding.kind === 'other') return refusing(refused('not-xml', { is: encoding.is }));
    if (encoding.packing === null || unpacked === PACKED_DEEP) return refusing(refused('packed'));
    return packedBytes(encoding.packing, createGpxBytes(openDecoder, unpacked + 1));
  };
  let head = new Uint8Array(0);
  let started: GpxBytes | null = null;
  return {
    push(bytes) {
      if (started !== null) return started.push(bytes);
      head = joined(head, bytes);
      if (head.length < HEAD_BYTES) return true;
      started = start(head);
      return started.push(head);
    },
    end() {
      if (started !== null) return started.end();
      const short = start(head);
      short.push(head);
      return short.end();
    },
  };
}

function textBytes(openDecoder: OpenDecoder, label: string): GpxBytes {
  const reader = createGpxReader();
  let stream: TextStream;
  try {
    stream = openDecoder(label);
  } catch {
    return refusing(refused('encoding', { label }));
  }
  return {
    push: (bytes) => reader.push(stream.decode(bytes, { stream: true })),
    end() {
      reader.push(stream.decode());
      return reader.end();
    },
  };
}

/** What comes out of a packed file goes to a reader of its own. */
function packedBytes(packing: Packing, inner: GpxBytes): GpxBytes {
  const unpacker = openPacked(packing, (bytes) => inner.push(bytes));
  return {
    push: (bytes) => unpacker.push(bytes),
    end() {
      const fault = unpacker.end();
      if (fault === 'packed-without' || fault === 'packed-several') return refused(fault);
      const read = inner.end();
      // Half a packed file may still hold a good part of a road.
      return fault !== null && !read.ok ? refused(fault) : read;
    },
  };
}

function refusing(refusal: ReturnType<typeof refused>): GpxBytes {
  return { push: () => false, end: () => refusal };
}

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
