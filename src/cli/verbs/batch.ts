/**
 * `batch`: many rides at once for whoever studies them: levels × bikes × riders × players × seeds, one row each. What a
 * road, a bike and a rider have in common is worked out once; the rows come in the order of the question, however many
 * processes share the work.
 */
import { groundOfJob, type MarkingGround } from '../../core/coach/ground.ts';
import { marksOf, tenths } from '../../core/group/records/record.ts';
import { BIGGEST_SEED } from '../../core/math/random.ts';
import type { Level } from '../../core/level/schema.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import type { Bike, Rider } from '../../core/model/types.ts';
import { type Controller, rideThrough } from '../../core/ride/run.ts';
import { countEvents } from '../../core/ride/trace.ts';
import { habitsForSkill, virtualRider } from '../../core/virtual/riders.ts';
import { type Args, needed } from '../common/args.ts';
import { BadInput, noSuch } from '../common/badInput.ts';
import { levelFromFile, named } from '../common/choose.ts';
import { bundledLevelFiles, openLines } from '../common/files.ts';
import { PLAYERS } from '../common/players.ts';
import { countedOrNo } from '../common/print.ts';
import type { Verb } from '../common/verb.ts';

/** One ride as a row; the names are the columns. */
export type BatchRow = ReturnType<typeof rowsOfGroup>[number];

interface BatchGroup {
  readonly level: Level;
  readonly bike: Bike;
  readonly rider: Rider;
  readonly rides: readonly { readonly player: string; readonly seed: number }[];
}

/** More rides than this in one go are a slip of the hand. */
const MOST_RIDES = 1_000_000;
const ENDINGS = { csv: '.csv', ndjson: '.ndjson' } as const;
type Shape = keyof typeof ENDINGS;

export const batch: Verb = {
  usage:
    '--levels FILE,FILE|bundled --bikes ID,ID --riders ID,ID --players late,early,skill:0.5 --seeds 1-20 [--shape csv|ndjson] [--out FILE]',
  summary: 'rides every level on every bike with every rider and seed, one row a ride, on all cores',
  flags: {
    levels: 'text',
    bikes: 'text',
    riders: 'text',
    players: 'text',
    seeds: 'text',
    shape: 'text',
    out: 'text',
    part: 'text',
  },
  takesFiles: false,
  run(args) {
    const groups = groupsOf(args);
    const part = args.values.get('part');
    if (part === undefined) return batchAnswer(args, groups.flatMap(rowsOfGroup));
    const rows = partOf(groups, ...shareOf(part)).flatMap(rowsOfGroup);
    return { json: rows, text: '' };
  },
};

/** The rows as they were asked for: in a file, or on the way out. */
export function batchAnswer(args: Args, rows: readonly BatchRow[]): ReturnType<Verb['run']> {
  const shape = shapeOf(args);
  const lines =
    shape === 'csv'
      ? [Object.keys(rows[0] ?? {}).join(','), ...rows.map((row) => Object.values(row).map(cell).join(','))]
      : rows.map((row) => JSON.stringify(row));
  const path = args.values.get('out');
  if (path === undefined) return { json: rows, text: lines.join('\n') };
  const file = openLines(path, ENDINGS[shape]);
  for (const line of lines) file.line(line);
  file.close();
  const said = `${countedOrNo(rows.length, 'ride')} in "${path}".`;
  return { json: { rides: rows.length, out: path }, text: said };
}

export function groupsOf(args: Args): BatchGroup[] {
  shapeOf(args);
  const files = listOf(args, 'levels', 'levels: files with commas between them, or "bundled"');
  const levels = (files.join() === 'bundled' ? bundledLevelFiles() : files).map(levelFromFile);
  const bikes = listOf(args, 'bikes', 'bikes').map((id) => named('bike', id, BIKES));
  const riders = listOf(args, 'riders', 'riders').map((id) => named('rider', id, RIDERS));
  const players = listOf(args, 'players', `who rides: ${Object.keys(PLAYERS).join(', ')}, or skill:0.5`);
  for (const player of players) controllerOf(player);
  const seeds = seedsOf(needed(args, 'seeds', 'seeds, like 7, 1-20 or 1,2,5'));
  const rides = players.flatMap((player) => seeds.map((seed) => ({ player, seed })));
  const groups = levels.flatMap((level) =>
    bikes.flatMap((bike) => riders.map((rider) => ({ level, bike, rider, rides }))),
  );
  if (groups.length * rides.length > MOST_RIDES)
    throw new BadInput(`These are more than ${MOST_RIDES} rides. Ask for fewer at once.`);
  return groups;
}

/**
 * The share of the work of one process of several: whole groups where there are enough of them, as every group has a
 * road to plan; else some rides of every group.
 */
export function partOf(groups: readonly BatchGroup[], index: number, count: number): BatchGroup[] {
  if (groups.length >= count) return groups.filter((_, g) => g % count === index);
  return groups.map((group) => ({ ...group, rides: group.rides.filter((_, r) => r % count === index) }));
}

/** Rows of all parts in the order of the question. */
export function joinedRows(
  groups: readonly BatchGroup[],
  parts: readonly (readonly BatchRow[])[],
): BatchRow[] {
  const whole = groups.length >= parts.length;
  const next = parts.map(() => 0);
  return groups.flatMap(({ rides }, g) =>
    rides.map((_, r) => {
      const owner = (whole ? g : r) % parts.length;
      const at = next[owner] as number;
      next[owner] = at + 1;
      return (parts[owner] as readonly BatchRow[])[at] as BatchRow;
    }),
  );
}

/** `0/2`: the first of two processes. Written by the command line itself. */
function shareOf(text: string): [index: number, count: number] {
  const [index = Number.NaN, count = Number.NaN] = text.split('/').map(Number);
  if (!Number.isInteger(index) || !Number.isInteger(count) || index < 0 || index >= count)
    throw new BadInput(`"${text}" after --part is no share of the work.`);
  return [index, count];
}

export function rowsOfGroup({ level, bike, rider, rides }: BatchGroup) {
  const ground = groundOfJob({ level, seed: level.seed, bike, rider, autoEase: false });
  return rides.map(({ player, seed }) => ({
    levelId: level.id,
    bikeId: bike.id,
    riderId: rider.id,
    player,
    seed,
    ...rideOnce(ground, controllerOf(player)(ground, seed)),
  }));
}

function rideOnce(ground: MarkingGround, controller: Controller) {
  const { now, trace } = rideThrough(ground.world, controller);
  const report = ground.judge(trace);
  return {
    finishedS: now.phase === 'finished' ? now.tick * ground.world.tickS : null,
    footDowns: countEvents(trace, 'foot-down'),
    shifts: countEvents(trace, 'shift-done'),
    total: tenths(report.total),
    passed: report.passed,
    ...marksOf(report),
  };
}

/** Whoever rides under a name: a named rider, or one of a skill from 0 to 1. */
function controllerOf(player: string): (ground: MarkingGround, seed: number) => Controller {
  const known = Object.hasOwn(PLAYERS, player) ? PLAYERS[player] : undefined;
  if (known !== undefined) return known;
  const skill = /^skill:(0(?:\.\d+)?|1(?:\.0+)?)$/.exec(player)?.[1];
  if (skill === undefined)
    throw noSuch('player', player, Object.keys(PLAYERS), ', or a skill from skill:0 to skill:1');
  return ({ world }, seed) => virtualRider(world, habitsForSkill(Number(skill)), seed);
}

function listOf(args: Args, name: string, what: string): string[] {
  const list = needed(args, name, what)
    .split(',')
    .map((one) => one.trim())
    .filter((one) => one !== '');
  if (list.length === 0) throw new BadInput(`--${name} is empty; it names ${what}.`);
  return list;
}

/** `7`, `1-20`, `1,2,5-9`. */
function seedsOf(text: string): number[] {
  return text.split(',').flatMap((part) => {
    const match = /^\s*(\d{1,10})(?:\s*-\s*(\d{1,10}))?\s*$/.exec(part);
    const from = Number(match?.[1]);
    const to = Number(match?.[2] ?? match?.[1]);
    if (match === null || to < from || to > BIGGEST_SEED || to - from >= MOST_RIDES)
      throw new BadInput(`"${text}" after --seeds is no list of seeds; write 7, 1-20 or 1,2,5.`);
    return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  });
}

function shapeOf(args: Args): Shape {
  const shape = args.values.get('shape') ?? 'csv';
  if (shape !== 'csv' && shape !== 'ndjson')
    throw new BadInput(`"${shape}" after --shape is not known; choose csv or ndjson.`);
  return shape;
}

/** A cell of a table with commas; names hold neither commas nor quotes. */
function cell(value: string | number | boolean | null): string {
  return value === null ? '' : String(value);
}
