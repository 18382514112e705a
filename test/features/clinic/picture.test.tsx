/** What a group looks at and what is left of a session, names and the one line after a ride. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { offerNicknames } from '../../../src/core/group/nicknames.ts';
import type { RoadPicture } from '../../../src/core/group/picture/group.ts';
import { levelHash } from '../../../src/core/level/build.ts';
import { checkLevel } from '../../../src/core/level/generate.ts';
import { ANIMAL_SHAPES } from '../../../src/features/clinic/animalShapes.ts';
import { AnimalPicture } from '../../../src/features/clinic/animal.tsx';
import { BOARDS } from '../../../src/features/clinic/findings.ts';
import { titleOfRoad } from '../../../src/features/clinic/session.ts';
import { rideRemark } from '../../../src/features/clinic/say.ts';
import type { ClinicProps } from '../../../src/features/clinic/services.ts';
import { nameOf } from '../../../src/words/group.ts';
import { after } from '../../../src/features/clinic/session.ts';
import { createFormat } from '../../../src/words/format.ts';
import { words } from '../../../src/words/words.ts';
import { NAMES, rideNext, sessionOfThree } from '../../app/clinicGiven.ts';
import { all, closeRoom, draw, goTo, nameless, one, openRoom, sessionOf, tap, type Room } from './room.tsx';

const say = words('clinic');

let room: Room;

beforeEach(async () => {
  room = await openRoom();
});

afterEach(() => closeRoom(room));

/** A worker that cannot count. */
class FailingWorker extends EventTarget {
  postMessage(question: { readonly id: number }): void {
    const data = { kind: 'failed', id: question.id, reason: 'broken on purpose' };
    queueMicrotask(() => this.dispatchEvent(new MessageEvent('message', { data })));
  }
  terminate(): void {}
}

it('a check ride of the plan is called as the plan calls it, in the language that is spoken', () => {
  const session = sessionOfThree();
  const rides = [{ kind: 'check', audience: 'children' }] as const;
  const level = checkLevel(7, 'children', 'group');
  const road = { levelHash: levelHash(level), levelId: level.id, seed: 7 } as RoadPicture;
  const props = { levels: [] } as unknown as ClinicProps;
  const title = titleOfRoad(road, { ...session, plan: { ...session.plan, rides } }, props);
  expect(title).toBe('Check ride for children');
});

describe('a picture that cannot be counted', () => {
  it('says so, instead of being counted for ever', async () => {
    closeRoom(room);
    room = await openRoom(() => new FailingWorker() as unknown as Worker);
    await room.desk.onSaveRound(sessionOfThree());
    goTo(room, 's/session-1/picture');
    await expect.poll(() => room.desk.state().notCounted).toBe(true);
    draw(room);
    expect(one(room, '.board-note').textContent).toBe(say('picture-failed'));
  });
});

describe('what a group looks at', () => {
  beforeEach(async () => {
    await room.desk.onSaveRound(sessionOfThree());
    for (let i = 0; i < 6; i += 1) {
      await rideNext(room.desk, i / 6);
      await room.desk.onSaveRound(after(sessionOf(room), { kind: 'next' }));
    }
    goTo(room, 's/session-1/picture');
    await expect.poll(() => room.desk.state().picture).not.toBeNull();
    draw(room);
  });

  it('has an answer to every question, and no names', async () => {
    for (const board of BOARDS.filter((name) => name !== 'table')) {
      await tap(room, `[data-choose="${board}"]`);
      expect((one(room, '.board-head h2').textContent ?? '').length).toBeGreaterThan(8);
      expect(nameless(room)).toEqual([]);
      for (const nickname of NAMES)
        expect(one(room, '.board-page').textContent).not.toContain(nameOf(nickname));
    }
    expect(all(room, '[data-choose="table"]')).toEqual([]);
    expect(one(room, '.board-head').textContent).toContain('6 rides by 3 riders');
  });

  it('shows children the question first', async () => {
    await act(() => all<HTMLInputElement>(room, '.board-bar input[type=checkbox]')[0]?.click());
    await tap(room, '[data-choose="change"]');
    expect(one(room, '.board-head h2').textContent).toBe(say('picture-question-change'));
    expect(all(room, '.change')).toEqual([]);
    await tap(room, '[data-show]');
    expect(all(room, '.change')).toHaveLength(1);
  });

  it('stays closed where everybody sees only their own marks', async () => {
    const { plan } = sessionOf(room);
    await room.desk.onSaveRound({ ...sessionOf(room), plan: { ...plan, shows: 'own-marks' } });
    goTo(room, 's/session-1/report');
    goTo(room, 's/session-1/picture');
    await expect.poll(() => room.desk.state().picture).not.toBeNull();
    expect(all(room, '.board')).toEqual([]);
    await tap(room, '[data-open]');
    expect(all(room, '.board')).toHaveLength(1);
  });

  it('prints no names unless they are asked for, and saves every ride', async () => {
    goTo(room, 's/session-1/report');
    await expect.poll(() => all(room, '.report-says').length).toBe(1);
    expect(one(room, '.report-sheet').textContent).not.toContain('Red fox');
    await act(() => all<HTMLInputElement>(room, '.report-tools input[type=checkbox]')[0]?.click());
    expect(one(room, '.report-sheet').textContent).toContain('Red fox');
    await tap(room, '[data-csv]');
    await tap(room, '[data-json]');
    expect(room.files.map(([name]) => name)).toEqual(['tuesday.csv', 'tuesday.json']);
    expect(room.files[0]?.[1].trim().split('\r\n')).toHaveLength(7);
    expect(JSON.parse(room.files[1]?.[1] ?? '')).toHaveLength(6);
  });

  it('is deleted only after asking, with everything of it', async () => {
    goTo(room, 's/session-1/report');
    await tap(room, '[data-delete]');
    expect(room.shelf.kept.size).toBe(7);
    await tap(room, '[data-delete-sure]');
    await expect.poll(() => room.shelf.kept.size).toBe(0);
    expect(room.place).toBe('');
  });
});

describe('names and remarks', () => {
  it('every animal has a picture and every colour and animal its word', () => {
    const offered = offerNicknames([], 10_000, 1);
    const animals = new Set(offered.map((nickname) => nickname.split('-')[1] ?? ''));
    expect(Object.keys(ANIMAL_SHAPES).toSorted()).toEqual([...animals].toSorted());
    for (const nickname of offered) expect(nameOf(nickname).toLowerCase()).toBe(nickname.replace('-', ' '));
    render(<AnimalPicture nickname="~Ada" />, room.root);
    expect(room.root.querySelector('text')?.textContent).toBe('A');
  });

  it('the line after a ride is about its worst pitch', async () => {
    await room.desk.onSaveRound(sessionOfThree());
    await rideNext(room.desk, 0);
    const record = room.desk.state().saved.records[0]!;
    const with2 = (
      credits: readonly (number | null)[],
      firstShiftBeforeFootM: number | null,
      timing: 'too-late' | 'too-early' | 'about-right',
    ) =>
      rideRemark(
        {
          ...record,
          pitches: credits.map((creditPercent) => ({
            creditPercent,
            timing,
            firstShiftBeforeFootM,
            stepsBeforeFoot: 0,
          })),
        },
        createFormat('metric'),
      );
    expect(with2([], null, 'too-late')).toBe(say('remark-none'));
    expect(with2([null, 100], 5, 'about-right')).toBe(say('remark-fine', { count: 1 }));
    expect(with2([90, 10], -4, 'too-late')).toBe('Pitch 2: too late, 4 m after the foot. Shift before it.');
    expect(with2([10, 90], 3, 'too-late')).toBe('Pitch 1: late, only 3 m before the foot. Shift sooner.');
    expect(with2([90, 10], 57, 'too-late')).toBe(say('remark-notFinished', { pitch: 2 }));
    expect(with2([10], null, 'too-late')).toBe('Pitch 1: no easier shift was made for it.');
    expect(with2([10], 60, 'too-early')).toBe('Pitch 1: too early, 60 m before the foot. Wait a little.');
    expect(with2([10], 10, 'about-right')).toBe(say('remark-gear', { pitch: 1 }));
  });
});
