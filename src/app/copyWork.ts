/** Opens a copy that is taken back and gives its pieces by the handful: in a worker, or on this thread where there is none. */
import { openImport } from '../storage/exchange.ts';
import type { OpenedImport } from '../storage/types.ts';
import type { Made } from '../worker/longWork.ts';

/** A copy, and whether it is taken although it was changed after it was saved. */
export interface CopyQuestion {
  readonly file: Blob;
  readonly evenIfChanged: boolean;
}

/** Pieces in one handful. */
const HANDFUL = 100;

/** All of a copy; null where the file is none. */
export async function* openCopy({
  file,
  evenIfChanged,
}: CopyQuestion): AsyncGenerator<Made<OpenedImport | null>> {
  let value: unknown;
  try {
    value = JSON.parse(await file.text());
  } catch {
    yield { share: 1, value: null };
    return;
  }
  const { pieces, refused, clubStore } = openImport(value, evenIfChanged);
  yield { share: 0, value: { pieces: [], refused, clubStore } };
  for (let at = 0; at < pieces.length; at += HANDFUL) {
    const share = Math.min(1, (at + HANDFUL) / pieces.length);
    yield { share, value: { pieces: pieces.slice(at, at + HANDFUL), refused: [], clubStore: null } };
  }
}
