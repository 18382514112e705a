/**
 * The doors of the game as one function: an input goes in as the pages would put it in, what comes out is looked
 * at. Throws whatever a door throws, and where a door lets in nonsense or refuses without a sentence.
 */
import { createGpxBytes } from '../../src/core/gpx/file.ts';
import { importRoad } from '../../src/core/gpx/road.ts';
import { courseOfLevel, levelHash } from '../../src/core/level/build.ts';
import type { ParseResult } from '../../src/core/level/parse.ts';
import { parseRecording } from '../../src/core/ride/recording.ts';
import { parseAddress } from '../../src/state/address.ts';
import { levelFromJson } from '../../src/features/bench/jsonText.ts';
import { levelOfText } from '../../src/features/bench/shareLink.ts';
import { NOTHING_READ, readText } from '../../src/features/handover/reading.ts';
import { recordingSentence } from '../../src/cli/common/print.ts';
import { sentenceOf } from '../../src/words/problems.ts';
import type { Storage } from '../../src/storage/index.ts';
import type { Hostile } from './inputs.ts';

/** Puts an input through its door; answers with what became of it, in a word. */
export async function throughDoor({ kind, text }: Hostile, storage: Storage): Promise<string> {
  switch (kind) {
    case 'level':
      return ofLevel(levelFromJson(text));
    case 'link':
      return ofLevel(await levelOfText(text));
    case 'gpx':
      return ofGpx(text);
    case 'recording': {
      const value = jsonOf(text);
      const parsed = parseRecording(value);
      return parsed.ok ? 'taken' : refused([recordingSentence(parsed)]);
    }
    case 'copy': {
      const value = jsonOf(text);
      if (value === undefined) return 'refused';
      const report = await storage.importAll(value, { evenIfChanged: true });
      // Whatever came in can be saved and is plain text afterwards.
      JSON.stringify(await storage.exportAll());
      return report.added + report.already + report.unsaved > 0 ? 'taken' : 'refused';
    }
    case 'plan':
    case 'rides':
    case 'codes': {
      const { arrivals } = await readText(NOTHING_READ, text);
      for (const arrival of arrivals)
        if (arrival.kind === 'plan-problems') refused(arrival.problems.map(sentenceOf));
      return arrivals.some(({ kind: one }) => one === 'plan' || one === 'rides') ? 'taken' : 'refused';
    }
    case 'address':
      return parseAddress(text).view;
  }
}

function jsonOf(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

function ofLevel(result: ParseResult | null): string {
  if (result === null) throw new Error('this computer cannot unpack');
  if (!result.ok) return refused(result.problems.map(sentenceOf));
  // What was let in can be ridden.
  if (courseOfLevel(result.level).slopeRatio.some((slope) => !Number.isFinite(slope)))
    throw new Error('a road that is none was let in');
  levelHash(result.level);
  return 'taken';
}

function ofGpx(text: string): string {
  const bytes = createGpxBytes((label) => new TextDecoder(label));
  const all = new TextEncoder().encode(text);
  for (let i = 0; i < all.length; i += 131_072) if (!bytes.push(all.subarray(i, i + 131_072))) break;
  const read = bytes.end();
  if (!read.ok) return refused(read.problems.map(sentenceOf));
  const road = importRoad(read.file);
  return road.ok ? 'taken' : refused(road.problems.map(sentenceOf));
}

/** A refusal tells a person something, in a handful of sentences. */
function refused(sentences: readonly string[]): string {
  const bad = sentences.filter((sentence) => !/^.{10,400}[.…?!]$/s.test(sentence));
  if (sentences.length === 0 || sentences.length > 9 || bad.length > 0)
    throw new Error(`refused with ${sentences.length} sentences, such as ${String(bad[0]).slice(0, 200)}`);
  return 'refused';
}
