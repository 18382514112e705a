/**
 * Hostile inputs for every door, from a seed: sound things of ours, then spoilt the way accidents and people spoil
 * them. The same seed and number give the same input. No expectation lives here.
 */
import { deflateRawSync } from 'node:zlib';
import { READY_PLANS } from '../../src/core/group/readyPlans.ts';
import { hashJson } from '../../src/core/math/hash.ts';
import { deriveSeed, type Random, seededRandom } from '../../src/core/math/random.ts';
import { toFrames } from '../../src/core/transfer/frames.ts';
import { packPlan, packRecords } from '../../src/core/transfer/pack.ts';
import { writeRideFile } from '../../src/core/transfer/rideFile.ts';
import { levelToBytes, packBytes } from '../../src/core/transfer/share.ts';
import { plainClimb } from '../core/gpx/files.ts';
import { madeUpRecord, recordingOf } from '../core/group/rides.ts';
import { BUNDLED, levelById } from '../core/ride/worlds.ts';

/** Where an input goes. */
export const KINDS = [
  'level',
  'link',
  'gpx',
  'recording',
  'copy',
  'plan',
  'rides',
  'codes',
  'address',
] as const;
export type Kind = (typeof KINDS)[number];

/** One input. */
export interface Hostile {
  readonly kind: Kind;
  /** What was done to a sound one. */
  readonly how: string;
  readonly text: string;
}

const level = levelById('one-pitch-announced');
const recording = recordingOf(level, 0.6, 3);
const records = Array.from({ length: 6 }, (_, i) =>
  madeUpRecord({ deviceId: 't1', seq: i + 1, nickname: 'red-fox', attempt: 1 }, seededRandom(i)),
);
const handOver = { planId: 'tuesday', deviceId: 't1', lastSeq: 6, withdrawn: ['t1.2'], records };
const plan = READY_PLANS[0];
if (plan === undefined) throw new Error('there is no ready plan');
const deflate = (bytes: Uint8Array): Uint8Array => new Uint8Array(deflateRawSync(bytes));

/** A kept ride, also what a copy brings. */
export function keptRide(number: number): Record<string, unknown> {
  const { levelId, levelHash, seed } = recording;
  return {
    schema: 1,
    id: `ride-${number}`,
    savedAtMs: 1_795_000_000_000 + number,
    levelId,
    levelTitle: level.title,
    levelHash,
    seed,
    bikeId: recording.bike.id,
    riderId: recording.rider.id,
    kind: 'ride',
    total: number % 100,
    marks: { cadence: 50, foresight: 40, easing: null, chainLine: 100, economy: 1 },
    passed: false,
    recording,
  };
}

/** A copy with its fingerprint. */
export function copyOf(parts: Record<string, unknown>): Record<string, unknown> {
  const rest = { schema: 1, exportedAtMs: 1, results: [], leftOut: [], complete: true, ...parts };
  return { ...rest, checksum: safeHash(rest) };
}

function safeHash(value: unknown): string {
  try {
    return hashJson(value);
  } catch {
    return '0'.repeat(16);
  }
}

const soundCopy = copyOf({
  rides: [1, 2, 3].map(keptRide),
  levels: [{ schema: 1, id: level.id, savedAtMs: 4, deleted: false, level }],
  settings: { schema: 1, savedAtMs: 3, version: 1, value: { units: 'metric' } },
  records: [{ kind: 'clinic', id: 'a', schema: 1, savedAtMs: 5, data: { some: ['thing'] } }],
});
const CODES = [
  (toFrames(await packPlan(plan, deflate)) ?? []).join('\n'),
  (toFrames(await packRecords(handOver, deflate)) ?? []).join('\n'),
];
const SOUND: Readonly<Record<Kind, readonly string[]>> = {
  level: BUNDLED.slice(0, 6).map(({ text }) => text),
  link: BUNDLED.slice(0, 4).map((one) =>
    packBytes(deflate(levelToBytes(one.level)) as Uint8Array<ArrayBuffer>, 'deflated'),
  ),
  gpx: [plainClimb],
  recording: [JSON.stringify(recording)],
  copy: [JSON.stringify(soundCopy)],
  plan: READY_PLANS.map((one) => JSON.stringify(one)),
  rides: [writeRideFile(handOver), JSON.stringify(records)],
  codes: CODES,
  address: ['#bench/level.1d', '#ride/one-pitch-announced', '#join/B1', '#levels', '#clinic/s/tuesday'],
};

const BIDI = '\u202e\u2066\u200f\u061c';
/** Values as they stand in JSON text; a word stands for one that is made when it is wanted. */
const VALUES: readonly (readonly [string, (random: Random) => string])[] = [
  ['null', () => 'null'],
  ['huge number', () => '9'.repeat(400)],
  ['1e400', () => '1e400'],
  ['-1e308', () => '-1e308'],
  ['tiny number', () => '5e-324'],
  ['fraction', () => '0.1000000000000000055511151231257827'],
  ['not a number', () => '"NaN"'],
  ['minus', () => '-0'],
  ['empty text', () => '""'],
  ['half a sign', () => '"\\ud800 \\udfff\\u0000"'],
  ['turned text', () => JSON.stringify(BIDI.repeat(50))],
  ['megabyte text', () => JSON.stringify('x'.repeat(1_000_000))],
  ['deep list', (random) => nested('[', ']', 50 + Math.floor(random() * 50_000))],
  ['deep object', (random) => nested('{"a":', '}', 50 + Math.floor(random() * 20_000), '1')],
  ['long list', (random) => `[${'0,'.repeat(Math.floor(random() * 200_000))}0]`],
  ['long list of objects', (random) => `[${'{"atM":1},'.repeat(Math.floor(random() * 60_000))}{}]`],
  ['unknown keys', (random) => `{${keysText(Math.floor(random() * 60_000))}"z":1}`],
  ['proto', () => '{"__proto__":{"x":1},"constructor":{"prototype":{"y":1}}}'],
  ['names of the language', () => '{"toString":1,"valueOf":null,"hasOwnProperty":0,"then":{}}'],
  ['word', () => '"constructor"'],
  ['true', () => 'true'],
];

function nested(open: string, close: string, count: number, inside = ''): string {
  return open.repeat(count) + inside + close.repeat(count);
}

function keysText(count: number): string {
  return Array.from({ length: count }, (_, i) => `"k${i}":1,`).join('');
}

function pick<T>(random: Random, list: readonly T[]): T {
  return list[Math.floor(random() * list.length)] as T;
}

/** Puts a value in place of one of those in a JSON text. */
function withValue(text: string, random: Random): readonly [string, string] {
  const [how, make] = pick(random, VALUES);
  const places = [
    ...text.slice(0, 20_000).matchAll(/:\s*("(?:[^"\\]|\\.)*"|-?\d[\d.e+-]*|true|false|null|\[\]|\{)/g),
  ];
  const place = places[Math.floor(random() * places.length)];
  if (place === undefined) return [how, make(random)];
  const found = place[1] as string;
  const from = place.index + place[0].length - found.length;
  // An object is not closed again: what stood in it goes into the new one's neighbour.
  const made = found === '{' ? `${make(random)},"more":{` : make(random);
  return [how, text.slice(0, from) + made + text.slice(from + found.length)];
}

type Spoil = (text: string, random: Random) => readonly [string, string];
const at = (text: string, random: Random): number => Math.floor(random() * (text.length + 1));
const SPOILS: readonly Spoil[] = [
  withValue,
  withValue,
  withValue,
  (text, random) => {
    const signs = [...text];
    for (let n = 1 + random() * 8; n > 0; n -= 1) {
      const i = Math.floor(random() * signs.length);
      signs[i] = String.fromCharCode((signs[i] ?? ' ').charCodeAt(0) ^ (1 << Math.floor(random() * 8)));
    }
    return ['bits', signs.join('')];
  },
  (text, random) => ['cut off', text.slice(0, at(text, random))],
  (text, random) => ['beginning lost', text.slice(at(text, random))],
  (text, random) => {
    const from = at(text, random);
    return ['a part twice', text.slice(0, from) + text.slice(Math.max(0, from - 500))];
  },
  (text, random) => {
    const i = at(text, random);
    return ['turning signs', text.slice(0, i) + BIDI + text.slice(i)];
  },
  (text, random) => {
    const i = at(text, random);
    return ['half a sign', `${text.slice(0, i)}\ud83d\u0000${text.slice(i)}`];
  },
  (text) => ['marked', `\uFEFF${text}`],
  (text, random) => [
    'key twice',
    text.replace(/"([a-zA-Z]+)":/, (all) => `${all}${pick(random, ['1', '"x"', '[]'])},${all}`),
  ],
  (text, random) => ['many keys', text.replace('{', `{${keysText(Math.floor(random() * 60_000))}`)],
  (text) => ['proto keys', text.replace('{', '{"__proto__":{"ok":true},"constructor":1,')],
  (text, random) => [
    'over and over',
    text.repeat(1 + Math.floor(random() * Math.max(1, 2_000_000 / (text.length + 1)))),
  ],
  (_, random) => [
    'noise',
    Array.from({ length: at(' '.repeat(5_000), random) }, () => String.fromCharCode(random() * 65_536)).join(
      '',
    ),
  ],
  (text, random) => [
    'blanks',
    pick(random, [' ', '\n', '\t\r\n']).repeat(at(' '.repeat(1_000_000), random)) + text.slice(0, 1),
  ],
  () => ['nothing', ''],
  () => ['a page', '<!doctype html><html><script>document.title = "x"</script></html>'],
];

/** What only one kind of input suffers. */
const OWN: Partial<Readonly<Record<Kind, readonly Spoil[]>>> = {
  link: [
    (_, random) => {
      const bomb = deflateRawSync(
        Buffer.alloc(1 + Math.floor(random() * 60_000_000), pick(random, [' ', '[', '0'])),
      );
      return ['a bomb', packBytes(new Uint8Array(bomb), 'deflated')];
    },
    (_, random) => {
      const [how, text] = withValue(JSON.stringify(level), random);
      const bytes = new TextEncoder().encode(text.slice(0, 600_000));
      return [`sealed, ${how}`, packBytes(new Uint8Array(deflateRawSync(bytes)), 'deflated')];
    },
    (_, random) => {
      const [how, text] = withValue(JSON.stringify(level), random);
      return [`plain, ${how}`, packBytes(new TextEncoder().encode(text.slice(0, 140_000)), 'plain')];
    },
  ],
  codes: [
    (_, random) => {
      const size = Math.floor(random() * 20_000_000);
      const body = deflateRawSync(Buffer.alloc(size, pick(random, [0, 0x5b, 0xff])));
      return ['a bomb', framesOf(Uint8Array.of(pick(random, [0x50, 0x52]), 2, ...body.subarray(0, 60_000)))];
    },
    (_, random) => {
      const bytes = Uint8Array.from({ length: Math.floor(random() * 4_000) }, () =>
        Math.floor(random() * 256),
      );
      return ['made-up bytes', framesOf(Uint8Array.of(pick(random, [0x50, 0x52]), 1, ...bytes))];
    },
    (_, random) => [
      'many messages',
      Array.from({ length: 80 }, () => framesOf(Uint8Array.of(random() * 256, 1, 2))).join('\n'),
    ],
  ],
  copy: [
    (_, random) => {
      const [how, text] = withValue(JSON.stringify(keptRide(1)), random);
      return [`sealed, ${how}`, resealed(`{"schema":1,"exportedAtMs":1,"rides":[${text}]}`)];
    },
    (_, random) => {
      const rides = [1, 2, 3].map((n) => ({ ...keptRide(n), total: random() * 100, levelTitle: BIDI }));
      return ['rides that differ', JSON.stringify(copyOf({ rides }))];
    },
    (_, random) => {
      const item = `{"kind":"clinic","id":"x${Math.floor(random() * 9)}","schema":1,"savedAtMs":5,"data":0},`;
      return [
        'many records',
        `{"schema":1,"records":[${item.repeat(Math.floor(random() * 20_000))}1],"checksum":"x"}`,
      ];
    },
  ],
  gpx: [
    (text, random) => ['deep elements', text.replace('<trk>', '<a>'.repeat(Math.floor(random() * 100_000)))],
    (text, random) => {
      const points = '<trkpt lat="46.1" lon="9.2"><ele>1e999</ele></trkpt>'.repeat(
        Math.floor(random() * 20_000),
      );
      return ['points on one spot', text.replace('</trkseg>', `${points}</trkseg>`)];
    },
    (text, random) => [
      'wild numbers',
      text.replaceAll(
        /lat="[^"]*"/g,
        () => `lat="${pick(random, ['NaN', '1e308', '-90.0001', '', '0x10', '47'])}"`,
      ),
    ],
    (text) => [
      'a type of its own',
      text.replace('<gpx', '<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><gpx'),
    ],
  ],
  rides: [
    (_, random) => ['many lines', '{"deviceId":"a","seq":1}\n'.repeat(Math.floor(random() * 40_000))],
    (text, random) => [
      'long line',
      `${text}{"deviceId":"${'x'.repeat(Math.floor(random() * 9_000_000))}"}\n`,
    ],
  ],
  address: [
    (_, random) => [
      'long address',
      `#${pick(random, ['bench', 'ride', 'join', 'collect', 'clinic', 'start', '__proto__'])}/${'A'.repeat(Math.floor(random() * 900_000))}`,
    ],
    (_, random) => ['percent', `#ride/${'%'.repeat(Math.floor(random() * 100_000))}`],
    (_, random) => ['slashes', `#levels${'/'.repeat(Math.floor(random() * 100_000))}`],
  ],
};

function framesOf(bytes: Uint8Array): string {
  return (toFrames(bytes) ?? []).join('\n');
}

/** A copy with the fingerprint it should have, where it can be read at all. */
function resealed(text: string): string {
  try {
    const file = JSON.parse(text) as Record<string, unknown>;
    return JSON.stringify({ ...file, checksum: safeHash(file) });
  } catch {
    return text;
  }
}

/** Input number `index` of a seed. */
export function hostileInput(seed: number, index: number, kinds: readonly Kind[] = KINDS): Hostile {
  const random = seededRandom(deriveSeed(seed, `hostile ${index}`));
  const kind = kinds[index % kinds.length] as Kind;
  const own = OWN[kind] ?? [];
  let text = pick(random, SOUND[kind]);
  const hows: string[] = [];
  for (let times = 1 + Math.floor(random() * 2); times > 0; times -= 1) {
    const spoil = own.length > 0 && random() < 0.35 ? pick(random, own) : pick(random, SPOILS);
    const [how, spoilt] = spoil(text, random);
    hows.push(how);
    text = spoilt.slice(0, 12_000_000);
  }
  return { kind, how: hows.join(' + '), text };
}
