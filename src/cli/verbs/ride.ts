/**
 * `ride`: rides a level without a screen, with a virtual rider or with commands from a file, and prints
 * what came of it together with the recording.
 */
import { resolve } from 'node:path';
import { groundOfJob } from '../../core/coach/ground.ts';
import { type RideJob, setupOfJob } from '../../core/ride/job.ts';
import { numbersOfMovement } from '../../core/model/transmission.ts';
import type { RideSetup } from '../../core/ride/recording.ts';
import type { RideWorld } from '../../core/ride/types.ts';
import { type Args, needed, numberOf } from '../common/args.ts';
import { bikeFrom, levelFromFile, riderFrom } from '../common/choose.ts';
import { type LineFile, openLines } from '../common/files.ts';
import { type RideSummary, rideHeadless } from '../common/headless.ts';
import { commandsFromFile, PLAYERS, playCommands } from '../common/players.ts';
import { countedOrNo, fixed, markLine, markSentence, table } from '../common/print.ts';
import { BadInput, noSuch } from '../common/badInput.ts';
import type { Verb } from '../common/verb.ts';

const SEED = { low: 0, high: 4_294_967_295, what: 'the seed (0 to 4294967295)', whole: true };
const TRACE_ENDING = '.ndjson';

export const ride: Verb = {
  usage: `--level FILE --bike ID --rider ID --player ${Object.keys(PLAYERS).join('|')}|FILE [--seed N] [--trace OUT.ndjson]`,
  summary: 'rides a level without a screen and prints the ride',
  flags: { level: 'text', bike: 'text', rider: 'text', player: 'text', seed: 'text', trace: 'text' },
  takesFiles: false,
  run(args) {
    const { ground, setup, controller, player } = prepare(args);
    const { world } = ground;
    const trace = openTrace(args);
    const { ride: ridden, summary } = rideHeadless(world, controller, trace);
    trace?.close();
    const marks = markLine(ground.judge(ridden.trace));
    return {
      json: {
        levelId: setup.levelId,
        bikeId: setup.bike.id,
        riderId: setup.rider.id,
        player,
        seed: setup.seed,
        lengthM: world.course.lengthM,
        ...marks,
        ...summary,
        recording: ridden.recording(setup),
      },
      text: `${report(summary, world)}\n${markSentence(marks)}`,
    };
  },
};

/** A ride that is ready to begin. */
function prepare(args: Args) {
  const level = levelFromFile(needed(args, 'level', 'the file of a level'));
  const bike = bikeFrom(args);
  const rider = riderFrom(args);
  const who = `who rides: ${Object.keys(PLAYERS).join(', ')}, or a file of commands`;
  const player = needed(args, 'player', who);
  const seed = numberOf(args, 'seed', SEED, level.seed);
  const job: RideJob = { level, seed, bike, rider, autoEase: false };
  const known = Object.hasOwn(PLAYERS, player) ? PLAYERS[player] : undefined;
  if (known !== undefined) {
    const ground = groundOfJob(job);
    return { ground, setup: setupOfJob(job), controller: known(ground, seed), player };
  }
  const file = readPlayerFile(player, setupOfJob(job));
  // A recording brings its own road unless another is asked for.
  const own = { seed: args.values.has('seed') ? seed : (file.recorded?.seed ?? seed) };
  const asRidden = { ...job, ...own, autoEase: file.recorded?.autoEase ?? false };
  const controller = playCommands(file.commands);
  return { ground: groundOfJob(asRidden), setup: setupOfJob(asRidden), controller, player };
}

function readPlayerFile(player: string, setup: RideSetup): ReturnType<typeof commandsFromFile> {
  if (/^[a-z][a-z-]*$/.test(player))
    throw noSuch('player', player, Object.keys(PLAYERS), ', or name a file of commands');
  return commandsFromFile(player, setup);
}

function openTrace(args: Args): LineFile | null {
  const path = args.values.get('trace');
  if (path === undefined) return null;
  const inputs = [args.values.get('level'), args.values.get('player')];
  if (inputs.some((input) => input !== undefined && resolve(input) === resolve(path)))
    throw new BadInput(`"${path}" is read in this ride, so the trace cannot go there.`);
  return openLines(path, TRACE_ENDING);
}

/** A ride in sentences and a table of its shifts. */
export function report(summary: RideSummary, world: RideWorld): string {
  const { shifts, footDowns, chainDrops, finishedS } = summary;
  const end = finishedS === null ? 'Never reached the end of' : `Finished after ${fixed(finishedS, 1)} s:`;
  const count = `${countedOrNo(shifts.length, 'shift')}, ${countedOrNo(footDowns, 'foot down', 'feet down')}, ${countedOrNo(chainDrops, 'dropped chain')}`;
  const sentence = `${end} ${fixed(world.course.lengthM, 0)} m, ${count}.`;
  if (shifts.length === 0) return sentence;
  const rows = shifts.map((shift) => [
    `${shift.derailleur} ${shift.direction}`,
    fixed(shift.startedAtM, 1),
    numbersOfMovement(world.machine, shift).join(' to '),
    fixed(shift.load, 2),
    fixed(shift.durationS, 2),
    fixed(shift.speedMps * 3.6, 1),
  ]);
  return `${table(['shift', 'at m', 'teeth', 'load', 'took s', 'km/h'], rows)}\n${sentence}`;
}
