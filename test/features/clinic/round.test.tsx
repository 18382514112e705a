/** From the first page of the clinic to a ride and from one rider to the next, and the form of a plan. */
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { OwnedDesk } from '../../../src/app/group/clinicDesk.ts';
import type { ClinicPlan } from '../../../src/core/group/plan.ts';
import { ownNickname } from '../../../src/core/group/nicknames.ts';
import { nameOf } from '../../../src/words/group.ts';
import { after } from '../../../src/features/clinic/session.ts';
import { words } from '../../../src/words/words.ts';
import { openDesk, PLAN, rideNext, sessionOfThree } from '../../app/clinicGiven.ts';
import {
  all,
  closeRoom,
  draw,
  goTo,
  nameless,
  one,
  openRoom,
  sessionOf,
  tap,
  type,
  type Room,
} from './room.tsx';

const say = words('clinic');

let room: Room;

/** One road that takes two minutes. */
const LONG = {
  ...PLAN,
  id: 'long',
  rides: [{ kind: 'bundled', levelId: 'click-before-the-hill' }],
} satisfies ClinicPlan;

beforeEach(async () => {
  room = await openRoom();
});

afterEach(() => closeRoom(room));

describe('the first page', () => {
  it('leads into a session in two taps, and to a ride in three', async () => {
    await tap(room, '[data-plan="children-check"]');
    await tap(room, '[data-go]');
    expect(room.place).toMatch(/^s\/id-/);
    await tap(room, '[data-start]');
    expect(room.rides).toMatchObject([{ bikeId: 'kids-24-1x8', riderId: 'by-bike', attempt: 1 }]);
    expect(sessionOf(room).round.phase.kind).toBe('riding');
  });

  it('offers to go on with a session that is not done, and a plan whose level is missing cannot be chosen', async () => {
    await room.desk.onSaveRound(sessionOfThree());
    expect(one(room, '[data-go-on]').textContent).toContain('Red fox');
    const missing = one(room, '[data-plan="adults-first-evening"]') as HTMLButtonElement;
    expect([missing.disabled, missing.textContent?.includes(say('home-missing'))]).toEqual([true, true]);
    await tap(room, '[data-go-on]');
    expect(room.place).toBe('s/session-1');
  });
});

describe('a saved plan', () => {
  beforeEach(async () => {
    await act(() => room.desk.onSavePlan(PLAN));
    goTo(room, '');
  });

  it('is deleted only when that was said twice', async () => {
    expect(all(room, `[data-plan="${PLAN.id}"]`)).toHaveLength(1);
    await tap(room, '[data-forget]');
    await tap(room, '[data-forget-keep]');
    expect(all(room, `[data-plan="${PLAN.id}"]`)).toHaveLength(1);
    await tap(room, '[data-forget]');
    expect(all(room, '[data-forget]')).toHaveLength(0);
    await tap(room, '[data-forget-sure]');
    expect(all(room, `[data-plan="${PLAN.id}"]`)).toHaveLength(0);
  });
});

describe('who rides', () => {
  it('is a number, with an animal for everybody that can be swapped', async () => {
    goTo(room, 'go/children-check');
    const names = (): (string | undefined)[] =>
      all(room, '.animal-card').map((card) => card.dataset['nickname']);
    expect([names().length, new Set(names()).size]).toEqual([6, 6]);
    await tap(room, `[aria-label="${say('go-more')}"]`);
    const [first, ...rest] = names();
    await tap(room, `[data-nickname="${first}"]`);
    expect(names()).toHaveLength(7);
    expect(names()).not.toContain(first);
    expect(names().slice(1)).toEqual(rest);
    // As long as there are enough animals nobody gets one that another has, however often they are swapped.
    const animals = (): (string | undefined)[] => names().map((name) => name?.split('-')[1]);
    for (let i = 0; i < 40; i += 1) {
      await tap(room, `[data-nickname="${names()[i % 7]}"]`);
      expect(new Set(animals()).size).toBe(7);
    }
    for (let i = 0; i < 9; i += 1) await tap(room, `[aria-label="${say('go-more')}"]`);
    expect([animals().length, new Set(animals()).size]).toEqual([16, 16]);
    for (let i = 0; i < 9; i += 1) await tap(room, `[aria-label="${say('go-fewer')}"]`);
    await tap(room, '[data-go]');
    expect(sessionOf(room).round.line).toEqual(names().length > 0 ? names() : sessionOf(room).round.line);
    expect(sessionOf(room).round.line).toHaveLength(7);
  });
});

describe('a plan that is only handed out', () => {
  it('needs no rider on this device', async () => {
    goTo(room, 'go/children-check');
    await tap(room, '[data-only-hand-out]');
    expect(room.place).toBe(`s/${sessionOf(room).plan.id}/tablets`);
    expect(sessionOf(room).round.riders).toEqual([]);
  });

  it('and opened twice it offers the same animals', () => {
    const names = (): (string | undefined)[] =>
      all(room, '.animal-card').map((card) => card.dataset['nickname']);
    goTo(room, 'go/children-check');
    const before = names();
    goTo(room, '');
    goTo(room, 'go/children-check');
    expect(names()).toEqual(before);
  });
});

describe('how long it takes', () => {
  const minutes = (): number => Number(all(room, '.go-minutes [data-minutes]')[0]?.dataset['minutes'] ?? 0);

  beforeEach(async () => {
    await act(() => room.desk.onSavePlan(LONG));
    goTo(room, `go/${LONG.id}`);
    await expect.poll(minutes).toBeGreaterThan(0);
  });

  it('is said, with a warning before it is too long and ways that are shorter', async () => {
    const few = minutes();
    expect(all(room, '[data-too-long]')).toEqual([]);
    for (let i = 6; i < 20; i += 1) await tap(room, `[aria-label="${say('go-more')}"]`);
    expect(minutes()).toBeGreaterThan(60);
    expect(minutes()).toBeGreaterThan(3 * few);
    expect(all(room, '[data-shorter]').map((way) => way.dataset['shorter'])).toEqual(['attempts', 'devices']);
    await tap(room, '[data-shorter=attempts]');
    expect(minutes()).toBeLessThanOrEqual(60);
    expect(all(room, '[data-too-long]')).toEqual([]);
    await tap(room, '[data-go]');
    expect(sessionOf(room).plan.attempts).toBe(1);
    await expect.poll(() => all(room, '[data-left]').length).toBe(1);
    expect(one(room, '[data-left]').textContent).toContain('minutes left');
  });

  it('several tablets are begun from the warning', async () => {
    for (let i = 6; i < 20; i += 1) await tap(room, `[aria-label="${say('go-more')}"]`);
    await tap(room, '[data-shorter=devices]');
    expect(room.place).toBe(`s/${sessionOf(room).plan.id}/tablets`);
  });
});

describe('a plan of one’s own', () => {
  beforeEach(() => goTo(room, 'plan'));

  it('says what is missing before it is saved', async () => {
    await tap(room, '[data-save]');
    expect(one(room, '[role=alert]').textContent).toContain(say('form-noTitle'));
    expect(one(room, '[role=alert]').textContent).toContain(say('form-noRide'));
    expect(room.shelf.kept.size).toBe(0);
  });

  it('says no longer what is not missing any more, and nothing before it was asked to save', async () => {
    expect(all(room, '[role=alert]')).toEqual([]);
    await tap(room, '[data-save]');
    await type(room, 'input[name=title]', 'Tuesday');
    expect(one(room, '[role=alert]').textContent).not.toContain(say('form-noTitle'));
    expect(one(room, '[role=alert]').textContent).toContain(say('form-noRide'));
    await tap(room, '[data-ride="check children"]');
    expect(all(room, '[role=alert]')).toEqual([]);
  });

  it('on a child’s bike nobody is asked how they feel', async () => {
    const rider = (): string => (one(room, 'select[name=rider]') as HTMLSelectElement).value;
    expect(rider()).toBe('by-feel');
    await type(room, 'select[name=bike]', 'kids-24-1x8');
    expect(rider()).toBe('by-bike');
  });

  it('keeps every choice', async () => {
    await type(room, 'input[name=title]', 'Tuesday');
    await tap(room, '[data-ride="bundled click-before-the-hill"]');
    await tap(room, '[data-ride="check children"]');
    await tap(room, `[aria-label="${say('form-attemptsMore')}"]`);
    for (const [name, at] of [
      ['seed', 1],
      ['aids', 2],
      ['order', 1],
      ['shows', 2],
    ] as const)
      await act(() => all<HTMLInputElement>(room, `input[name=${name}]`)[at]?.click());
    await act(() => {
      const select = one(room, 'select[name=bike]') as HTMLSelectElement;
      select.value = 'town-1x9';
      select.dispatchEvent(new Event('change', { bubbles: true }));
    });
    await tap(room, '[data-save-go]');
    expect(room.desk.state().saved.plans).toMatchObject([
      {
        title: 'Tuesday',
        rides: [
          { kind: 'bundled', levelId: 'click-before-the-hill' },
          { kind: 'check', audience: 'children' },
        ],
        attempts: 3,
        seedRule: 'fresh',
        aids: 'all',
        order: 'free',
        shows: 'table',
        bike: 'town-1x9',
        audience: 'children',
      },
    ]);
    expect(room.place).toBe(`go/${room.desk.state().saved.plans[0]?.id}`);
  });

  it('takes what is harmless out of a title that was meant to do harm', async () => {
    await type(room, 'input[name=title]', `\u202E<script>alert(1)</script>\u0000${'x'.repeat(10_000)}`);
    await tap(room, '[data-ride="bundled click-before-the-hill"]');
    await tap(room, '[data-save]');
    const title = room.desk.state().saved.plans[0]?.title ?? '';
    expect([title.length, title.startsWith('<script>')]).toEqual([80, true]);
    expect(title).not.toMatch(/[\p{Cc}\u202E]/u);
    expect(all(room, 'script')).toEqual([]);
    expect(room.root.textContent).toContain('<script>alert(1)</script>');
  });
});

describe('handing round', () => {
  beforeEach(async () => {
    await room.desk.onSaveRound(sessionOfThree());
    goTo(room, 's/session-1');
  });

  it('says who is next in a heading, and a rider who skips keeps the attempt', async () => {
    expect(one(room, '[data-next]').textContent).toBe('Red fox');
    await tap(room, '[data-skip]');
    expect(one(room, '[data-next]').dataset['next']).toBe('blue-owl');
    expect(sessionOf(room).round.line).toEqual(['blue-owl', 'green-hare', 'red-fox']);
  });

  it('after a ride it is two taps to the next one: one line, next rider, start', async () => {
    await rideNext(room.desk, 0);
    expect(one(room, '[data-remark]').textContent).toMatch(/^(Pitch \d|All|The pitch)/);
    await tap(room, '[data-debrief]');
    expect(room.debriefs).toBe(1);
    await tap(room, '[data-next-rider]');
    await tap(room, '[data-start]');
    expect(room.rides.map(({ nickname }) => nickname)).toEqual(['blue-owl']);
  });

  it('a ride that came to no end is offered again to the same rider, and need not be taken', async () => {
    await room.desk.onSaveRound(after(sessionOf(room), { kind: 'start', nickname: 'red-fox' }));
    expect(room.root.textContent).toContain(say('round-riding', { name: 'Red fox' }));
    await tap(room, '[data-again]');
    expect(room.rides).toMatchObject([{ nickname: 'red-fox', attempt: 1 }]);
    await tap(room, '[data-stop]');
    expect(one(room, '[data-next]').dataset['next']).toBe('red-fox');
  });

  it('says that a ride is being marked instead of calling it lost', async () => {
    await room.desk.onSaveRound(after(sessionOf(room), { kind: 'start', nickname: 'red-fox' }));
    const turn = { planId: 'session-1', nickname: 'red-fox', rideIndex: 0, attempt: 1 };
    const unfinished = { ...turn, level: null, recording: null } as unknown as Parameters<
      OwnedDesk['take']
    >[0];
    let fail: () => void = () => undefined;
    void room.desk.take(
      unfinished,
      () => new Promise((_, reject) => (fail = () => reject(new Error('broken')))),
    );
    expect([all(room, '[data-marking]').length, all(room, '[data-again]').length]).toEqual([1, 0]);
    await new Promise((resolve) => setTimeout(resolve, 0));
    fail();
    await expect.poll(() => all(room, '[data-again]').length).toBe(1);
    expect(room.root.textContent).toContain(say('round-notMarked'));
  });

  it('somebody comes back later, goes home, joins late', async () => {
    await tap(room, `[aria-label="${say('round-laterWho', { name: 'Red fox' })}"]`);
    expect(sessionOf(room).round.line).toEqual(['blue-owl', 'green-hare']);
    await tap(room, '[data-back="red-fox"]');
    expect(sessionOf(room).round.line).toEqual(['blue-owl', 'green-hare', 'red-fox']);
    await tap(room, `[aria-label="${say('round-removeWho', { name: 'Blue owl' })}"]`);
    await tap(room, '[data-add]');
    expect(nameless(room)).toEqual([]);
    const [offered] = all(room, 'dialog .animal-card');
    await tap(room, `dialog [data-nickname="${offered?.dataset['nickname']}"]`);
    expect(sessionOf(room).round.line).toEqual(['green-hare', 'red-fox', offered?.dataset['nickname']]);
    expect(all(room, 'dialog')).toEqual([]);
  });

  it('a name of one’s own is short, without invisible characters, and taken only once', async () => {
    await tap(room, '[data-add]');
    await type(room, 'input[name=nickname]', `\u202E<b onclick=x>\u0007${'z'.repeat(10_000)}`);
    await act(() => {
      one(room, '.own-name').dispatchEvent(new Event('submit', { bubbles: true, cancelable: true }));
    });
    const name = sessionOf(room).round.line.at(-1) ?? '';
    expect(name).toBe(ownNickname(`<b onclick=x>${'z'.repeat(7)}`));
    expect(all(room, 'b[onclick]')).toEqual([]);
    await tap(room, '[data-add]');
    await type(room, 'input[name=nickname]', nameOf(name));
    expect((one(room, '.own-name button') as HTMLButtonElement).disabled).toBe(true);
    expect(one(room, '.own-name output').textContent).toBe(say('round-taken'));
  });

  it('the last ride is taken back only after asking', async () => {
    await rideNext(room.desk);
    await tap(room, '[data-undo]');
    expect(room.desk.state().saved.records).toHaveLength(1);
    await tap(room, '[data-undo-sure]');
    await expect.poll(() => room.desk.state().saved.records.length).toBe(0);
    expect(sessionOf(room).round.line[0]).toBe('red-fox');
  });

  it('a ride that somebody else rode is given to them in two taps', async () => {
    await rideNext(room.desk);
    await tap(room, '[data-give]');
    expect(all(room, '[data-give-to]').map((one) => one.dataset['giveTo'])).toEqual([
      'blue-owl',
      'green-hare',
    ]);
    await tap(room, '[data-give-to=green-hare]');
    await expect.poll(() => room.desk.state().saved.records[0]?.nickname).toBe('green-hare');
    draw(room);
    expect(one(room, '.now').textContent).toContain('Green hare');
    await tap(room, '[data-next-rider]');
    expect(one(room, '[data-next]').dataset['next']).toBe('red-fox');
  });

  it('those who went home are folded away', async () => {
    await tap(room, '[data-line=red-fox] [data-tool=remove]');
    const folded = one(room, 'details.line-gone') as HTMLDetailsElement;
    expect([folded.open, folded.querySelector('summary')?.textContent]).toEqual([false, 'Gone home (1)']);
    expect(folded.querySelectorAll('[data-back]')).toHaveLength(1);
  });

  it('whoever is tapped in line is next, also where they go in turn', async () => {
    await tap(room, '[data-line=green-hare] .line-who');
    expect(one(room, '[data-next]').dataset['next']).toBe('green-hare');
    await tap(room, '[data-start]');
    expect(room.rides).toMatchObject([{ nickname: 'green-hare' }]);
  });

  it('where everybody chooses freely, whoever is tapped is next', async () => {
    await room.desk.onSaveRound(sessionOfThree({ ...PLAN, order: 'free', riderId: 'by-feel' }));
    await tap(room, '[data-line=green-hare] .line-who');
    expect(one(room, '[data-next]').dataset['next']).toBe('green-hare');
    await act(() => all<HTMLInputElement>(room, 'input[name=feel]')[0]?.click());
    await tap(room, '[data-start]');
    expect(room.rides).toMatchObject([
      { nickname: 'green-hare', riderId: sessionOf(room).feels['green-hare'] },
    ]);
  });

  it('says so when the device keeps nothing', async () => {
    expect(all(room, '.not-kept')).toEqual([]);
    const broken = await openDesk({ ...room.shelf, putRound: async () => false });
    await broken.onSaveRound(sessionOfThree());
    room.desk = broken;
    draw(room);
    expect(one(room, '.not-kept').textContent).toBe(say('round-notKept'));
  });
});
