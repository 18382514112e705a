/**
 * What has been read so far, from codes, links, pasted text and files, in any order and as often as one likes;
 * and what it turned out to be. Plain functions over plain data.
 */
import {
  type DamagedFrame,
  EMPTY_BOX,
  type FrameBox,
  messageState,
  takeFrame,
} from '../../core/transfer/frames.ts';
import { unpack } from '../../core/transfer/pack.ts';
import {
  type ClinicPlan,
  type ParsePlanResult,
  parsePlanText,
  type PlanRide,
} from '../../core/group/plan.ts';
import { cleanText } from '../../core/group/texts.ts';
import { type HandOver, isTooMuch, type ReadFile, readRideFile } from '../../core/transfer/rideFile.ts';
import { LIMITS } from '../../core/math/limits.ts';
import type { Problem } from '../../core/level/problems.ts';
import { inflate } from '../../ui/packing.ts';
import { framesIn, looksLikeFrames } from './message.ts';
import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { words } from '../../words/words.ts';
import { pictureOfFile } from './cameraBox.tsx';
import { sentenceOf } from '../../words/problems.ts';
import type { ReadRidesAway } from './services.ts';

/** What a text turned out to be. */
type Arrival =
  | { readonly kind: 'plan'; readonly plan: ClinicPlan }
  | { readonly kind: 'plan-problems'; readonly problems: readonly Problem[] }
  | { readonly kind: 'rides'; readonly read: ReadFile }
  | {
      readonly kind: 'unreadable';
      readonly code: 'not-a-packet' | 'newer-version' | 'damaged' | 'nothing' | 'too-big';
    };

/** Reads a text of rides; null where somebody stopped it. */
type ReadRides = (text: string) => ReadFile | Promise<ReadFile | null>;

/** Everything read so far. */
interface ReadSoFar {
  readonly box: FrameBox;
  /** Messages that have been opened, by id. */
  readonly opened: readonly string[];
}

export const NOTHING_READ: ReadSoFar = { box: EMPTY_BOX, opened: [] };

/** One message that is not complete yet. */
interface Open {
  readonly id: string;
  readonly count: number;
  readonly missing: readonly number[];
}

/** Takes in a text; answers with the reading after it and all that has become complete by it. */
export async function readText(
  before: ReadSoFar,
  text: string,
  readRides: ReadRides = readRideFile,
): Promise<{ readonly reading: ReadSoFar; readonly arrivals: readonly Arrival[] }> {
  if (isTooMuch(text)) return { reading: before, arrivals: [{ kind: 'unreadable', code: 'too-big' }] };
  if (!looksLikeFrames(text)) {
    const arrival = await readFile(text, readRides);
    return { reading: before, arrivals: arrival === null ? [] : [arrival] };
  }
  if (text.length > LIMITS.link.characters.most)
    return { reading: before, arrivals: [{ kind: 'unreadable', code: 'too-big' }] };
  const box = framesIn(text).reduce(takeFrame, before.box);
  const arrivals: Arrival[] = [];
  const opened = [...before.opened];
  for (const message of box.messages) {
    if (opened.includes(message.id)) continue;
    const state = messageState(message);
    if (state.kind === 'missing') continue;
    opened.push(message.id);
    arrivals.push(
      state.kind === 'complete' ? await openPacket(state.bytes) : { kind: 'unreadable', code: 'damaged' },
    );
  }
  return { reading: { box, opened }, arrivals };
}

/** Messages that still lack frames. */
export function openMessages({ box, opened }: ReadSoFar): Open[] {
  return box.messages.flatMap((message) => {
    const state = opened.includes(message.id) ? null : messageState(message);
    return state?.kind === 'missing' ? [{ id: message.id, count: state.count, missing: state.missing }] : [];
  });
}

/** Damaged frames for which no good one has come. */
export function openDamage({ box, opened }: ReadSoFar): DamagedFrame[] {
  return box.damaged.filter(({ code, messageId, number }) => {
    if (messageId === null || number === null || code !== 'checksum') return true;
    const parts = box.messages.find((message) => message.id === messageId)?.parts;
    return !opened.includes(messageId) && (parts === undefined || parts[number - 1] === null);
  });
}

/** The text of a file: a plan, or rides line by line; null where reading them was stopped. */
async function readFile(text: string, readRides: ReadRides): Promise<Arrival | null> {
  if (text.trim() === '') return { kind: 'unreadable', code: 'nothing' };
  if (looksLikePlan(text)) return ofPlan(parsePlanText(text));
  const read = await readRides(text);
  if (read === null) return null;
  const found = read.set.records.length + read.heard.length > 0;
  // Only what wants to be rides is named as damaged rides; any other text is simply the wrong file.
  const wants = /"(recordingHash|deviceId|clinic-rides)"/.test(text);
  return found || wants ? { kind: 'rides', read } : { kind: 'unreadable', code: 'not-a-packet' };
}

function looksLikePlan(text: string): boolean {
  const start = text.slice(0, 200_000);
  return /^[\uFEFF\s]*\{/.test(start) && start.includes('"rides"') && !start.includes('"deviceId"');
}

async function openPacket(bytes: Uint8Array): Promise<Arrival> {
  const packet = await unpack(bytes, inflate);
  switch (packet.kind) {
    case 'plan':
      return ofPlan(packet.result);
    case 'records':
      return { kind: 'rides', read: asRead(packet.handOver) };
    case 'unreadable':
      return packet;
  }
}

function ofPlan(result: ParsePlanResult): Arrival {
  if (!result.ok) return { kind: 'plan-problems', problems: result.problems };
  return { kind: 'plan', plan: { ...result.plan, rides: result.plan.rides.map(plainRide) } };
}

/** A level's own door lets any signs into its title; on a tablet that joins they must not turn a line round. */
function plainRide(ride: PlanRide): PlanRide {
  if (ride.kind !== 'own') return ride;
  const { level } = ride;
  const title = cleanText(level.title, 80) || level.id;
  const sentence = cleanText(level.sentence, 240) || title;
  return { kind: 'own', level: { ...level, title, sentence } };
}

function asRead({ deviceId, lastSeq, withdrawn, records }: HandOver): ReadFile {
  return { set: { records, damaged: [], withdrawn }, heard: [{ deviceId, lastSeq }] };
}

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

/**
 * Reading as a page keeps it: one text after another goes in, what arrives is handed on, and a sentence that comes back
 * is shown; sentences about what went wrong stay until something new is read. The decoder is fetched when the first
 * picture is looked at.
 */
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
