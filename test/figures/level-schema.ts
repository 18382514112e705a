/**
 * Writes the shape of a level as JSON Schema, so that editors can check and complete level files. Run it with
 * `npx tsx test/figures/level-schema.ts` after a change of the schema; a test says when it was forgotten.
 */
import { realpathSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as z from 'zod/mini';
import { levelSchema } from '../../src/core/level/schema.ts';

/** Where it lies. */
export const SCHEMA_FILE = fileURLToPath(new URL('../../levels/level.schema.json', import.meta.url));

/** What each part is for; the same name means the same wherever it stands. */
const MEANINGS: Readonly<Record<string, string>> = {
  schema: 'Version of this shape; always 1.',
  id: 'Name of the level in addresses and files: small letters, digits and dashes.',
  title: 'What riders read.',
  sentence: 'What it is about, in one sentence.',
  teaches: 'The lesson it belongs to.',
  audience: 'In which row of levels it stands.',
  rung: 'Its place in that row; 0 for a level of your own.',
  seed: 'Decides everything that is left to chance; the same seed gives the same road.',
  joinM: 'Over so many metres one piece passes into the next.',
  pieces: 'The road, piece after piece from the start.',
  kind: 'What kind of piece it is.',
  lengthM: 'Length along the ground in metres.',
  slopeRatio: 'Rise over run: 0.08 climbs 8 m in 100 m; in a descent positive falls.',
  waveM: 'One rise and fall takes about so many metres.',
  steepestRatio: 'Nothing in it is steeper than this (rise over run).',
  gentlestRatio: 'No pitch in it is gentler than this (rise over run).',
  pitchCount: 'So many pitches lie in it.',
  beforeM: 'Every pitch has so much road before it (metres).',
  stepM: 'The heights are so many metres apart.',
  heightsM: 'Heights relative to the start, in metres; no step steeper than 20 %.',
  stopLinesM: 'Places where riders must stop (metres from the start).',
  winds: 'Stretches with wind along the road.',
  windMps: 'Metres a second; head wind is positive.',
  surfaces: 'Stretches that roll worse than asphalt.',
  surface: 'What lies there.',
  hidden: 'Stretches on which one cannot see far.',
  sightM: 'So far ahead the road can be seen (metres).',
  fromM: 'Where it begins (metres from the start).',
  toM: 'Where it ends (metres from the start).',
  cues: 'Short remarks at places of the road: one that the game knows, or a text of your own.',
  cue: 'A remark of the game, by its name.',
  text: 'A remark of your own.',
  atM: 'Where it is said (metres from the start).',
  aids: 'Which help is shown.',
  roadAhead: 'The next 250 m of road.',
  nextStep: 'What to do next.',
  clickTrack: 'A click for every turn of the cranks that would be right.',
  pressureHint: 'How hard the legs press.',
  liveMarks: 'Marks while riding.',
  chainView: 'The chain from above.',
  weights: 'How much each mark counts for the total; 0 leaves it out.',
  cadence: 'Legs in their band.',
  foresight: 'The gear in time for the hill.',
  easing: 'Soft feet while the chain moves.',
  chainLine: 'A straight chain.',
  economy: 'No shift without a reason.',
  passMark: 'The total from which the level is passed, of 100.',
  light: 'The light of the picture.',
  place: 'The land the road leads through; chosen by the seed where it is left out. It is only seen.',
  air: 'What falls or drifts in the air; it is only seen.',
  company: 'Others beside the road, never in the way.',
  who: 'Who it is.',
  needs: 'The kind of bike it is about; without it any bike will do.',
  lang: 'The language of its title, sentence and remarks, such as de or pt-BR: for voices that read them aloud.',
  carries: 'What a child carries and tries not to spill; such a road is play and has no marks to pass.',
};

/** Words for a part that has another meaning inside another part. */
const WITHIN: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  aids: { cues: 'The remarks of the level.' },
  company: { atM: 'Where they are (metres from the start).' },
};

type Node = Record<string, unknown>;

/** Every property gets its meaning. Throws for one without, so that a new part is not left without words. */
function described(node: unknown, within = ''): unknown {
  if (Array.isArray(node)) return node.map((one) => described(one, within));
  if (typeof node !== 'object' || node === null) return node;
  const entries = Object.entries(node as Node).map(([key, value]): [string, unknown] => {
    if (key !== 'properties') return [key, described(value, within)];
    const parts = Object.entries(value as Node).map(([name, part]): [string, unknown] => {
      const description = WITHIN[within]?.[name] ?? MEANINGS[name];
      if (description === undefined) throw new Error(`"${name}" has no description yet`);
      return [name, { description, ...(described(part, name) as Node) }];
    });
    return [key, Object.fromEntries(parts)];
  });
  return Object.fromEntries(entries);
}

/** Its text. Parts with a usual value may be left out of a file, as the input of the parser. */
export function levelSchemaText(): string {
  const schema = described(z.toJSONSchema(levelSchema, { io: 'input', target: 'draft-2020-12' })) as Node;
  return `${JSON.stringify({ title: 'A level of Before the Hill', ...schema }, null, 2)}\n`;
}

const started = process.argv[1];
if (started !== undefined && realpathSync(started) === fileURLToPath(import.meta.url))
  writeFileSync(SCHEMA_FILE, levelSchemaText());
