/** Help on the road: who decides about it, and that it is told in words. */
import { describe, expect, it } from 'vitest';
import { createGuide } from '../../src/core/coach/guide.ts';
import { courseOfLevel } from '../../src/core/level/build.ts';
import { checkLevel } from '../../src/core/level/generate.ts';
import { bikeById, riderById } from '../../src/core/model/presets.ts';
import { referenceRide } from '../../src/core/planner/reference.ts';
import { planRoad } from '../../src/core/planner/plan.ts';
import { frameOf } from '../../src/core/ride/frame.ts';
import { startRide } from '../../src/core/ride/run.ts';
import { buildRideWorld } from '../../src/core/ride/world.ts';
import type { HudHelp, HudStep } from '../../src/game/hud/help.ts';
import { readChoices } from '../../src/core/settings/kept.ts';
import {
  AIDS,
  defaultSettings,
  KEY_ACTIONS,
  type KeyAction,
  type Keys,
} from '../../src/core/settings/settings.ts';
import { aidsFor, createRideHelp } from '../../src/app/ride/aids.ts';
import { levelById } from '../core/ride/worlds.ts';

const level = levelById('one-pitch-announced');
const keys = Object.fromEntries(KEY_ACTIONS.map((action, i) => [action, [`Key${i}`]])) as unknown as Keys;

describe('which help is shown', () => {
  it('is what the level says, and what the player switched on', () => {
    expect(aidsFor(level, { aidsOn: [] })).toEqual(level.aids);
    expect(level.aids.liveMarks).toBe(false);
    expect(aidsFor(level, { aidsOn: ['liveMarks'] })).toEqual({ ...level.aids, liveMarks: true });
  });

  it('is none in a check ride, whatever is switched on', () => {
    const aids = aidsFor(checkLevel(7, 'everyone'), { aidsOn: AIDS });
    expect(Object.values(aids).filter(Boolean)).toEqual([]);
  });

  it('comes back from what is kept, without what nobody knows', () => {
    const settings = { ...defaultSettings(keys), aidsOn: ['cues', 'rocket', 7] };
    expect(readChoices({ settings }, keys)?.settings.aidsOn).toEqual(['cues']);
    expect(readChoices({ settings: { ...settings, aidsOn: 'cues' } }, keys)?.settings.aidsOn).toEqual([]);
  });
});

describe('what help says', () => {
  const world = buildRideWorld(courseOfLevel(level), bikeById('town-1x9')!, riderById('adult-new')!);
  const reference = referenceRide(world, planRoad(world)).trace;
  const ride = startRide(world);
  const steps: (HudStep | null)[] = [];
  const marks: Parameters<HudHelp['setMarks']>[0][] = [];
  const wanted: (readonly KeyAction[])[] = [];
  const look = { settings: defaultSettings(keys), reducedMotion: false, language: 'en', showPads: false };
  const shown = {
    setStep: (step: HudStep | null) => steps.push(step),
    setMarks: (some: (typeof marks)[number]) => marks.push(some),
    beat: () => undefined,
  };
  let known: typeof reference | null = null;
  const help = createRideHelp(
    ride,
    createGuide(world, () => known),
    level,
  );
  const on = (m: number, aids: typeof level.aids): void => {
    while (ride.state().distanceM < m && ride.state().phase !== 'finished') {
      ride.step([]);
      help.frame(
        frameOf(world, ride.state()),
        aids,
        { help: shown, want: (actions) => wanted.push(actions) },
        look,
      );
    }
  };

  it('nothing while the best ride is unknown, then easier before the pitch, first soon and then now', () => {
    const all = { ...level.aids, nextStep: true, liveMarks: true };
    on(60, all);
    expect(steps.filter((step) => step !== null)).toEqual([]);
    known = reference;
    on(world.course.pitches[0]!.footM + 20, all);
    const told = steps.flatMap((step) => (step === null ? [] : [step.now ? 'now' : 'soon']));
    expect(told.indexOf('soon')).toBeGreaterThanOrEqual(0);
    expect(told.indexOf('now')).toBeGreaterThan(told.indexOf('soon'));
    const last = steps.findLast((step) => step !== null);
    expect(last).toMatchObject({ move: 'rear-easier', now: true });
    expect(last?.action).toMatch(/^Easier/);
    // The key of this device and, for thumbs, the pad; the pad only once it is due.
    expect(last?.keys).toEqual(['0']);
    expect(wanted[0]).toEqual([]);
    expect(wanted.at(-1)).toEqual(['ease', 'rear-easier']);
    // One chainring has no chain line to judge.
    expect(marks.at(-1)?.map(({ value }) => value === null)).toEqual([false, true]);
  });

  it('nothing at all where it is switched off', () => {
    steps.length = 0;
    marks.length = 0;
    on(world.course.lengthM, { ...level.aids, nextStep: false, liveMarks: false });
    expect(steps.length).toBeGreaterThan(10);
    expect([...steps, ...marks].filter((one) => one !== null)).toEqual([]);
    expect(wanted.at(-1)).toEqual([]);
  });

  it('no number where a child rides by a face, unless it is wished for', () => {
    const forChildren = { ...level, audience: 'children' } as const;
    const told = (childNumbers: boolean): string[] => {
      const again = startRide(world);
      const help = createRideHelp(
        again,
        createGuide(world, () => reference),
        forChildren,
      );
      const said: string[] = [];
      const taken = {
        ...shown,
        setStep: (step: HudStep | null) => step && said.push(`${step.action} ${step.when}`),
      };
      const settings = { ...look.settings, childNumbers };
      while (again.now.phase !== 'finished') {
        again.step([]);
        help.frame(
          frameOf(world, again.now),
          level.aids,
          { help: taken, want: () => undefined },
          { ...look, settings },
        );
      }
      return [...new Set(said)];
    };
    expect(told(false)).toContain('Easier soon');
    expect(told(false).filter((text) => /\d/.test(text))).toEqual([]);
    expect(told(true).some((text) => /\d/.test(text))).toBe(true);
  });
});
