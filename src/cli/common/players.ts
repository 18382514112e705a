/**
 * Who can ride from the command line: the named virtual riders, and anybody whose commands are in a file.
 * A new kind of rider is one more line in `PLAYERS`.
 */
import type { MarkingGround } from '../../core/coach/ground.ts';
import {
  commandsByTick,
  parseRecording,
  RECORDING_SCHEMA,
  type RideSetup,
} from '../../core/ride/recording.ts';
import { policyDriver } from '../../core/planner/driver.ts';
import { NAMED_HABITS, type NamedRider, virtualRider } from '../../core/virtual/riders.ts';
import type { Controller } from '../../core/ride/run.ts';
import type { TimedCommand } from '../../core/ride/types.ts';
import { readJson } from './files.ts';
import { BadInput } from './badInput.ts';
import { recordingSentence } from './print.ts';

/** Makes somebody who rides here. */
type Player = (ground: MarkingGround, seed: number) => Controller;

const named = Object.keys(NAMED_HABITS) as NamedRider[];

/** Riders that are asked for by name. */
export const PLAYERS: Readonly<Record<string, Player>> = {
  ...Object.fromEntries(
    named.map((name): [string, Player] => [
      name,
      ({ world }, seed) => virtualRider(world, NAMED_HABITS[name], seed),
    ]),
  ),
  reference: ({ world, policy }) => policyDriver(world, policy),
};

/**
 * Commands from a file: a recording, the printed answer of `ride --json`, or just a list of
 * `{ "tick": …, "command": … }` in order of time. What the file says about the ride is known only of a whole recording.
 */
export function commandsFromFile(path: string, setup: RideSetup) {
  const value = unwrapRecording(readJson(path));
  if (Array.isArray(value)) {
    const envelope = {
      schema: RECORDING_SCHEMA,
      ...setup,
      ticks: 0,
      commands: value as unknown,
      checkpoints: [],
    };
    const parsed = parseRecording(envelope);
    if (!parsed.ok) throw new BadInput(`"${path}" holds no list of commands. ${recordingSentence(parsed)}`);
    return { commands: parsed.recording.commands, recorded: null };
  }
  const parsed = parseRecording(value);
  if (!parsed.ok) throw new BadInput(`"${path}" cannot be ridden. ${recordingSentence(parsed)}`);
  const { commands, seed, autoEase } = parsed.recording;
  return { commands, recorded: { seed, autoEase } };
}

/** A recording may lie inside what `ride --json` printed. */
export function unwrapRecording(value: unknown): unknown {
  if (value === null || typeof value !== 'object' || Array.isArray(value)) return value;
  return 'recording' in value && !('commands' in value) ? value.recording : value;
}

/** Gives the commands of a file at their ticks and nothing else. */
export function playCommands(commands: readonly TimedCommand[]): Controller {
  const at = commandsByTick(commands);
  return (state) => at(state.tick);
}
