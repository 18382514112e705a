/** Opens a copy that is taken back and tells its pieces by the handful: in a worker, or on this thread where there is none. */
import { openImport } from '../../storage/exchange.ts';
import type { OpenedImport } from '../../storage/types.ts';
import { telling } from '../../worker/rpc.ts';

/** A copy, and whether it is taken although it was changed after it was saved. */
export interface CopyQuestion {
  readonly file: Blob;
  readonly evenIfChanged: boolean;
}

const HANDFUL = 100;

/** Some of a copy, or null where the file is none, and how much of it is told by then (0 to 1). */
interface SomeOfCopy {
  readonly share: number;
  readonly some: OpenedImport | null;
}

async function* openCopy({ file, evenIfChanged }: CopyQuestion): AsyncGenerator<SomeOfCopy> {
  let value: unknown;
  try {
    value = JSON.parse(await file.text());
  } catch {
    yield { share: 1, some: null };
    return;
  }
  const { pieces, refused, clubStore } = openImport(value, evenIfChanged);
  yield { share: 0, some: { pieces: [], refused, clubStore } };
  for (let at = 0; at < pieces.length; at += HANDFUL) {
    const share = Math.min(1, (at + HANDFUL) / pieces.length);
    yield { share, some: { pieces: pieces.slice(at, at + HANDFUL), refused: [], clubStore: null } };
  }
}

export const copyService = { openCopy: telling(openCopy) };
export type CopyService = typeof copyService;
