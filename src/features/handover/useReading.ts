/**
 * Reading as a page keeps it: one text after another goes in, what becomes complete comes out, sentences about what
 * went wrong stay until something new is read. The decoder is fetched when the first picture is looked at.
 */
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { words } from '../../words/words.ts';
import { pictureOfFile } from './camera.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { readRideFile } from '../../core/transfer/rideFile.ts';
import { type Arrival, NOTHING_READ, type ReadSoFar, readText } from './reading.ts';
import { sentenceOf } from '../../words/problems.ts';
import type { ReadRidesAway } from './services.ts';

const say = words('handover');

/** Longer texts of rides are read away from the page (characters). */
const READ_HERE = 200_000;

/** Reading, for a component. */
export interface UsedReading {
  readonly reading: ReadSoFar;
  readonly sentences: readonly string[];
  readonly busy: boolean;
  /** How far a long text has been read (0 to 1); null while none is. */
  readonly share: number | null;
  /** Stops reading the long text. */
  readonly stop: () => void;
  /** Takes in a text that came by any way. */
  readonly take: (text: string) => void;
  readonly takeFiles: (files: readonly File[]) => void;
}

/** What is to be said about an arrival, once it has been dealt with; null for nothing. */
export type Arrive = (arrival: Arrival) => string | null | Promise<string>;

/** Uses a reading; what arrives is handed on, and a sentence that comes back is shown. */
export function useReading(onArrival: Arrive, readAway: ReadRidesAway): UsedReading {
  const [reading, setReading] = useState(NOTHING_READ);
  const [sentences, tell] = useState<readonly string[]>([]);
  const [waiting, setWaiting] = useState(0);
  const [share, setShare] = useState<number | null>(null);
  const stopping = useRef<AbortController | null>(null);
  const now = useRef(NOTHING_READ);
  const line = useRef<Promise<unknown>>(Promise.resolve());
  const arrive = useRef(onArrival);
  arrive.current = onArrival;
  /** One after the other, so that two texts at once cannot lose each other. */
  const inLine = useCallback((doing: () => Promise<void>): void => {
    setWaiting((n) => n + 1);
    line.current = line.current
      .then(doing)
      .catch(() => tell([say('reader-failed')]))
      .finally(() => setWaiting((n) => n - 1));
  }, []);
  const takeNow = useCallback(
    async (text: string): Promise<string[]> => {
      const { signal } = (stopping.current = new AbortController());
      const after = await readText(now.current, text, (rides) =>
        rides.length > READ_HERE ? readAway(rides, setShare, signal) : readRideFile(rides),
      ).finally(() => setShare(null));
      if (signal.aborted) return [say('reader-stopped')];
      now.current = after.reading;
      setReading(after.reading);
      const told: string[] = [];
      for (const arrival of after.arrivals) told.push(...(await sentencesFor(arrival, arrive.current)));
      return told;
    },
    [readAway],
  );
  const take = useCallback(
    (text: string): void =>
      inLine(async () => {
        const told = await takeNow(text);
        if (told.length > 0) tell(told);
      }),
    [inLine, takeNow],
  );
  const takeFiles = useCallback(
    (files: readonly File[]): void =>
      inLine(async () => {
        const told: string[] = [];
        for (const file of files) {
          const text = await textOfFile(file);
          told.push(...(text.ok ? await takeNow(text.text) : [text.sentence]));
        }
        tell(told);
      }),
    [inLine, takeNow],
  );
  const stop = useStop(stopping);
  return { reading, sentences, busy: waiting > 0, share, stop, take, takeFiles };
}

type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly sentence: string };

/** The text in a file: its own, or that of the code in a picture. */
async function textOfFile(file: File): Promise<FileText> {
  if (!file.type.startsWith('image/')) {
    // Of a file that is far too big nothing is read.
    if (file.size > LIMITS.rideFile.characters.most)
      return { ok: false, sentence: say('unreadable-too-big') };
    return { ok: true, text: await file.text() };
  }
  const picture = await pictureOfFile(file);
  try {
    const { decodePicture } = await import('./decode.ts');
    const text = picture === null ? null : decodePicture(picture);
    return text === null
      ? { ok: false, sentence: say('reader-noCode', { name: file.name.slice(0, 60) }) }
      : { ok: true, text };
  } catch {
    return { ok: false, sentence: say('reader-noReader') };
  }
}

async function sentencesFor(arrival: Arrival, onArrival: Arrive): Promise<string[]> {
  if (arrival.kind === 'unreadable') return [say(`unreadable-${arrival.code}`)];
  if (arrival.kind === 'plan-problems')
    return [say('reader-wrongPlan'), ...arrival.problems.slice(0, 5).map(sentenceOf)];
  const told = await onArrival(arrival);
  return told === null ? [] : [told];
}

/** Stops what is being read, also when the page is left. */
function useStop(stopping: { readonly current: AbortController | null }): () => void {
  const stop = useCallback(() => stopping.current?.abort(), [stopping]);
  useEffect(() => stop, [stop]);
  return stop;
}
