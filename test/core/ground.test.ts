/**
 * The one way from a level to marks gives what its parts give one by one, and the door offers all that other
 * programs were promised. The example on the contributor's page is run as it stands there.
 */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { spawnSync } from 'node:child_process';
import { afterAll, describe, expect, it } from 'vitest';
import { groundInSteps } from '../../src/core/coach/ground.ts';
import * as core from '../../src/core/index.ts';
import { LEVELS } from './coach/riding.ts';
import { repository } from '../house/files.ts';

const level = LEVELS.find(({ id }) => id === 'one-pitch-announced')!;
const bike = core.bikeById('kids-24-1x8')!;
const rider = core.riderById('child-9')!;
const job = { level, seed: level.seed, bike, rider, autoEase: false };
const ground = core.groundOf(level, bike.id, rider.id);
const late = core.rideThrough(
  ground.world,
  core.virtualRider(ground.world, core.NAMED_HABITS.late, level.seed),
);
const recording = late.recording(core.setupOfJob(job));

describe('a ground', () => {
  const world = core.buildRideWorld(core.courseOfLevel(level), bike, rider);
  const policy = core.planRoad(world);
  const reference = core.referenceRide(world, policy).trace;
  const { weights, passMark } = level;

  it('has the world, the reference and the judgement that its parts give one by one', () => {
    expect(ground.world).toEqual(world);
    expect(ground.reference).toEqual(reference);
    const { trace } = late;
    expect(ground.judge(trace)).toEqual(
      core.judgeRide({ world, trace, reference, policy, weights, passMark, level }),
    );
    expect(ground.judge(trace).total).toBeLessThan(ground.judge(reference).total);
  });

  it('marks a recording like the ride it was made of, and rides it again bit for bit', () => {
    const marked = core.markRecording(level, recording);
    expect([marked.same, marked.firstDifferentTick]).toEqual([true, null]);
    expect(marked.report).toEqual(ground.judge(late.trace));
    expect(marked.ride.recording(recording).checkpoints).toEqual(recording.checkpoints);
  });

  it('says at which tick a recording is another ride', () => {
    const checkpoints = recording.checkpoints.map((print, i) => (i === 1 ? '0'.repeat(16) : print));
    const marked = core.markOn(ground, { ...recording, checkpoints });
    expect([marked.same, marked.firstDifferentTick]).toEqual([false, 1200]);
  });

  it('can be judged with another pass mark without being laid anew', () => {
    const { total } = ground.judge(reference);
    expect(ground.judge(reference, total - 0.1).passed).toBe(true);
    expect(ground.judge(reference, total + 0.1).passed).toBe(false);
  });

  it('is laid in steps that tell growing shares, and the recording of its reference rides again', () => {
    const steps = groundInSteps(job);
    const shares: number[] = [];
    let next = steps.next();
    for (; next.done !== true; next = steps.next()) shares.push(next.value);
    expect(shares.length).toBeGreaterThan(0);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(core.replayRecording(next.value.world, next.value.referenceRecording).same).toBe(true);
  });

  it('is none for a bike or rider that nobody knows', () => {
    expect(() => core.groundOf(level, 'no-bike', rider.id)).toThrow('no no-bike or child-9');
    expect(() => core.groundOf(level, bike.id, 'nobody')).toThrow('no kids-24-1x8 or nobody');
  });
});

describe('the door', () => {
  const folder = mkdtempSync(join(tmpdir(), 'example-'));
  afterAll(() => rmSync(folder, { recursive: true }));

  it('marks a recording in the lines of the contributor page, at most ten', () => {
    const page = readFileSync(join(repository, 'DEVELOPERS.md'), 'utf8');
    const example = /```ts\n([\s\S]*?)```/.exec(page)?.[1] ?? '';
    expect(example.trimEnd().split('\n').length).toBeLessThanOrEqual(10);
    const script = example.replace(
      "'./src/core/index.ts'",
      JSON.stringify(join(repository, 'src/core/index.ts')),
    );
    expect(script).not.toBe(example);
    writeFileSync(join(folder, 'example.mts'), script);
    writeFileSync(join(folder, 'ride.json'), JSON.stringify(recording));
    const tsx = join(repository, 'node_modules/tsx/dist/cli.mjs');
    const args = [
      tsx,
      join(folder, 'example.mts'),
      join(repository, `levels/${level.id}.json`),
      join(folder, 'ride.json'),
    ];
    const run = spawnSync(process.execPath, args, { encoding: 'utf8', timeout: 300_000 });
    expect(run.stderr).toBe('');
    expect(run.stdout.trim()).toBe(`true ${ground.judge(late.trace).total}`);
  });
});
