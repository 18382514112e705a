/**
 * `replay`: rides a recording again and compares fingerprints, so that anybody can check that a ride is
 * what it says it is.
 */
import { groundOfJob, markOn } from '../../core/coach/ground.ts';
import type { Level } from '../../core/level/schema.ts';
import { isOnLevel, jobOfRecording } from '../../core/ride/job.ts';
import { parseRecording, PHYSICS_VERSION, physicsOf, type Recording } from '../../core/ride/recording.ts';
import { type Args, needed } from '../common/args.ts';
import { levelFromFile } from '../common/choose.ts';
import { bundledLevelFiles, readJson } from '../common/files.ts';
import { startTally } from '../common/headless.ts';
import { unwrapRecording } from '../common/players.ts';
import { BadInput } from '../common/badInput.ts';
import type { Verb } from '../common/verb.ts';
import { report } from './ride.ts';
import { markLine, markSentence, recordingSentence } from '../common/print.ts';

export const replay: Verb = {
  usage: '--recording FILE [--level FILE]',
  summary: 'rides a recording again and compares every fingerprint',
  flags: { recording: 'text', level: 'text' },
  takesFiles: false,
  run(args) {
    const path = needed(args, 'recording', 'the file of a recording');
    const parsed = parseRecording(unwrapRecording(readJson(path)));
    if (!parsed.ok) throw new BadInput(`"${path}" cannot be ridden again. ${recordingSentence(parsed)}`);
    const { recording } = parsed;
    if (physicsOf(recording) !== PHYSICS_VERSION)
      throw new BadInput(
        `"${path}" cannot be ridden again: it was ridden by version ${physicsOf(recording)} of the physics, and the legs have changed since.`,
      );
    const level = findLevel(args, recording);
    const { bike, rider, seed } = recording;
    const ground = groundOfJob(jobOfRecording(level, recording));
    const { world } = ground;
    const tally = startTally();
    const marked = markOn(ground, recording, level.passMark, tally.note);
    const { ride, same, firstDifferentTick, report: judged } = marked;
    const summary = tally.summary(world, ride.state());
    const marks = markLine(judged);
    const setup = { levelId: level.id, bikeId: bike.id, riderId: rider.id, seed };
    const counts = { ticks: recording.ticks, checkpoints: recording.checkpoints.length };
    const verdict = same
      ? `All ${counts.checkpoints} fingerprints are the same.`
      : `The fingerprints differ, first at tick ${firstDifferentTick}; this is not the ride that was recorded.`;
    const answer = {
      json: {
        same,
        firstDifferentTick,
        ...counts,
        ...setup,
        lengthM: world.course.lengthM,
        ...marks,
        ...summary,
      },
      text: `${report(summary, world)}\n${markSentence(marks)}\n${verdict}`,
    };
    return same ? answer : { ...answer, complaint: verdict };
  },
};

/** The level a recording was ridden on: the one that is named, else the bundled one with its fingerprint. */
function findLevel(args: Args, recording: Recording): Level {
  const named = args.values.get('level');
  if (named !== undefined) {
    const level = levelFromFile(named);
    if (isOnLevel(recording, level)) return level;
    throw new BadInput(
      `"${named}" is not the road this ride was recorded on ("${recording.levelId}"), or it was changed since.`,
    );
  }
  const bundled = bundledLevelFiles().map(levelFromFile);
  const level = bundled.find((candidate) => isOnLevel(recording, candidate));
  if (level !== undefined) return level;
  throw new BadInput(
    `The level "${recording.levelId}" of this ride does not come with the game as it was ridden. Name its file with --level.`,
  );
}
