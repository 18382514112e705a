/**
 * Reads a GPX file in slices, tells how far it is, and keeps the road until the next file. Knows no worker; where
 * answers go and how to pause is handed in.
 */
import type { RoadAnswers } from '../core/gpx/choose.ts';
import { createGpxBytes } from '../core/gpx/file.ts';
import { levelFromRoad } from '../core/gpx/level.ts';
import { recordedRide } from '../core/gpx/recorded.ts';
import { importRoad, type Road } from '../core/gpx/road.ts';
import { type GpxOutcome, summaryOf } from '../core/gpx/summary.ts';
import { type GpxFile, type GpxResult, refused } from '../core/gpx/types.ts';
import { LIMITS } from '../core/math/limits.ts';
import type { GpxAnswer, GpxRequest } from './gpxMessages.ts';

/** So much is read before a pause (bytes). */
const SLICE_BYTES = 128 * 1024;

/** Opens the desk. */
export function openGpxDesk(
  post: (answer: GpxAnswer) => void,
  pause: () => Promise<void>,
): (request: GpxRequest) => void {
  let reading = 0;
  let file: GpxFile | null = null;
  let road: Road | null = null;
  const forget = (): void => {
    file = null;
    road = null;
  };
  const make = (answers: RoadAnswers): GpxOutcome => {
    if (file === null) return { kind: 'cancelled' };
    const made = importRoad(file, answers);
    road = made.ok ? made.road : null;
    return made.ok
      ? { kind: 'road', road: summaryOf(made.road) }
      : { kind: 'refused', problems: made.problems };
  };
  const read = async (id: number, source: Blob): Promise<GpxOutcome> => {
    reading = id;
    forget();
    const result = await readSlices(source, (share) => post({ kind: 'progress', id, share }), {
      pause,
      wanted: () => reading === id,
    });
    if (result === null) return { kind: 'cancelled' };
    if (!result.ok) return { kind: 'refused', problems: result.problems };
    file = result.file;
    return make({});
  };
  return (request) => {
    const { id } = request;
    switch (request.kind) {
      case 'read':
        void read(id, request.file)
          .catch((): GpxOutcome => unreadable())
          .then((outcome) => post({ kind: 'outcome', id, outcome }));
        return;
      case 'answer':
        post({ kind: 'outcome', id, outcome: make(request.answers) });
        return;
      case 'cut':
        post({ kind: 'level', id, level: road === null ? gone() : levelFromRoad(road, request.wishes) });
        return;
      case 'recorded':
        post({ kind: 'samples', id, samples: road === null ? null : recordedRide(road, request.stretch) });
        return;
      case 'cancel':
        if (reading === id) reading = 0;
        forget();
    }
  };
}

/** Reads to the end, to a refusal, or until nobody wants it any more (null). */
async function readSlices(
  source: Blob,
  tell: (share: number) => void,
  { pause, wanted }: { readonly pause: () => Promise<void>; readonly wanted: () => boolean },
): Promise<GpxResult | null> {
  const bytes = createGpxBytes((label) => new TextDecoder(label));
  // Of longer files no more is read; the reader has long refused them by then.
  const size = Math.min(source.size, LIMITS.gpx.bytes.most);
  for (let at = 0; at < size; at += SLICE_BYTES) {
    const slice = source.slice(at, Math.min(size, at + SLICE_BYTES));
    const goesOn = bytes.push(new Uint8Array(await slice.arrayBuffer()));
    tell(Math.min(1, (at + SLICE_BYTES) / size));
    await pause();
    if (!wanted()) return null;
    if (!goesOn) break;
  }
  return bytes.end();
}

function unreadable(): GpxOutcome {
  return { kind: 'refused', problems: refused('unreadable').problems };
}

function gone() {
  return refused('no-road');
}
