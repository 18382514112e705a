/** The pages as a document: what is on them, what their buttons send, that every choice can be reached and has a name. */
import { render } from 'preact';
import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { CUES, type Level, LESSONS } from '../../src/core/level/schema.ts';
import { BIKES, bikeById, RIDERS } from '../../src/core/model/presets.ts';
import { App } from '../../src/app/app.tsx';
import { preloadSettings } from '../../src/app/lazySettings.tsx';
import { preload } from '../../src/app/pageTable.ts';
import { frameOfBike } from '../../src/ui/pictures/bike.tsx';
import { profilePaths } from '../../src/ui/pictures/profile.tsx';
import { jointBetween } from '../../src/ui/pictures/rider.tsx';
import { courseOfLevel } from '../../src/core/level/build.ts';
import type { Services } from '../../src/app/services.ts';
import type { Recording } from '../../src/core/ride/recording.ts';
import { KEY_ACTIONS, type Keys } from '../../src/core/settings/settings.ts';
import { VIEWS } from '../../src/state/address.ts';
import { initialState, reduce } from '../../src/state/reduce.ts';
import type { Action, State } from '../../src/state/store.ts';
import { noServices } from './noServices.ts';
import { words } from '../../src/words/words.ts';
import { common, keyWords, lessonName } from '../../src/words/common.ts';
import { cueText } from '../../src/words/cues.ts';
import { levelById } from '../core/ride/worlds.ts';
import { rootForTests } from '../ui/rootForTests.ts';

const keys = Object.fromEntries(KEY_ACTIONS.map((action, i) => [action, [`Key${i}`]])) as unknown as Keys;
const level = levelById('one-pitch-announced');

const told = async () => ({ ok: true, sentence: 'Done.' });
let deleted = 0;
const services: Services = {
  ...noServices,
  saveEverything: told,
  takeBack: told,
  async deleteEverything() {
    deleted += 1;
    return told();
  },
  bench: () => Promise.reject(new Error('the level bench has tests of its own')),
};

const root = rootForTests();
let state: State;

const keptRide = (levelId: string, atMs: number): State['results'][number] => ({
  id: `${levelId}-${atMs}`,
  atMs,
  levelId,
  levelTitle: 'A level',
  kind: 'ride',
  bikeId: 'kids-20-1x7',
  total: 12,
  marks: { cadence: 12, foresight: 0, easing: null, chainLine: null, economy: null },
  passed: false,
});

function send(action: Action): void {
  state = reduce(state, action);
  draw();
}

function draw(): void {
  render(<App state={state} send={send} services={services} />, root);
}

function go(view: State['view']): void {
  send({ kind: 'address', address: { view, rest: '' } });
}

const all = <Kind extends Element = HTMLElement>(selector: string): Kind[] => [
  ...root.querySelectorAll<Kind>(selector),
];

const fetched = VIEWS.filter((view) => view !== 'start' && view !== 'ride');

beforeAll(async () => {
  await Promise.all([preloadSettings(), ...fetched.map(preload)]);
});

beforeEach(() => {
  state = initialState([level], keys, '');
  draw();
});

describe('the start page', () => {
  it('rides in two taps', () => {
    all<HTMLButtonElement>('[data-ride-next]')[0]?.click();
    expect(state.dialog).toBe('cautions');
    all<HTMLButtonElement>('[data-accept]')[0]?.click();
    expect([state.view, state.rest]).toEqual(['ride', level.id]);
  });

  it('leads to every page that stands in the table', () => {
    const targets = all<HTMLAnchorElement>('a').map((link) => link.getAttribute('href'));
    expect(targets).toEqual(
      expect.arrayContaining(['#levels', '#bike', '#about', '#progress', '#gearcheck']),
    );
  });
});

describe('every page', () => {
  it.each(VIEWS.filter((view) => view !== 'ride' && view !== 'debrief'))(
    '%s has one heading, and every button, link, field and picture has a name',
    (view) => {
      go(view);
      send({ kind: 'open-dialog', dialog: 'settings' });
      expect(all('h1')).toHaveLength(1);
      const nameless = all('button, a, svg[role=img], input').filter((element) => {
        const ids = element.getAttribute('aria-labelledby')?.split(' ') ?? [];
        const labels = [
          element.closest('label'),
          element.id === '' ? null : root.querySelector(`label[for="${element.id}"]`),
          ...ids.map((id) => root.querySelector(`[id="${id}"]`)),
        ];
        const label = labels.map((one) => one?.textContent ?? '').join('');
        return `${element.getAttribute('aria-label') ?? ''}${element.textContent}${label}`.trim() === '';
      });
      expect(nameless.map((element) => element.outerHTML)).toEqual([]);
    },
  );
});

describe('bike and rider', () => {
  it('shows every bundled bike and rider, with the chosen ones marked', () => {
    go('bike');
    expect(all('input[name=bike]')).toHaveLength(BIKES.length + 1);
    expect(all('input[name=rider-feel]')).toHaveLength(RIDERS.length);
    const chosen = all<HTMLInputElement>('input[name=bike]:checked, input[name=rider-feel]:checked').map(
      (input) => input.value,
    );
    expect(chosen).toEqual([state.settings.bike.id, state.settings.rider.id]);
  });

  it('an own bike begins as the one chosen before and is taken as it is typed', () => {
    go('bike');
    all<HTMLInputElement>('input[value="town-1x9"]')[0]?.click();
    all<HTMLInputElement>('input[value="own"]')[0]?.click();
    expect(state.settings.bike).toEqual({ ...bikeById('town-1x9'), id: 'own' });
    const rings = all<HTMLInputElement>('.own-bike input')[0] as HTMLInputElement;
    rings.value = '36';
    rings.dispatchEvent(new InputEvent('input', { bubbles: true }));
    expect(state.settings.bike.chainringsTeeth).toEqual([36]);
  });

  it('choosing keeps the whole bike', () => {
    go('bike');
    all<HTMLInputElement>('input[value="road-2x11"]')[0]?.click();
    expect(state.settings.bike).toEqual(bikeById('road-2x11'));
  });

  it('every bundled bike and rider has a name and every lesson and cue its words', () => {
    expect(BIKES.filter(({ id }) => !common.has(`bike-${id}`))).toEqual([]);
    expect(
      RIDERS.filter(
        ({ id }) => !words('names').has(`rider-${id}`) || !words('bike').has(`rider-about-${id}`),
      ),
    ).toEqual([]);
    expect(LESSONS.filter((lesson) => !words('names').has(`lesson-${lesson}`))).toEqual([]);
    expect(CUES.filter((cue) => cueText(cue).startsWith('cues '))).toEqual([]);
  });
});

describe('patches', () => {
  const child = { ...level, id: 'small-hill', audience: 'children' as const, teaches: 'easing' as const };
  it('are earned once for a lesson of a children’s level, however well it was ridden', () => {
    state = { ...state, levels: [level, child] };
    go('levels');
    expect(all('[data-patch]')).toHaveLength(0);
    send({
      kind: 'results',
      unmarked: [],
      results: [keptRide(child.id, 2), keptRide(child.id, 1), keptRide(level.id, 3)],
    });
    expect(all('[data-patch]').map((one) => one.dataset['patch'])).toEqual(['easing']);
    expect(all('.patch figcaption')[0]?.textContent).toBe(lessonName('easing'));
  });
});

describe('the settings', () => {
  beforeEach(() => send({ kind: 'open-dialog', dialog: 'settings' }));

  it('change theme, sound and hands', () => {
    all<HTMLInputElement>('input[name=theme]')[1]?.click();
    all<HTMLInputElement>('.tick input')[0]?.click();
    all<HTMLInputElement>('input[name=hold-mode]')[1]?.click();
    expect([state.settings.theme, state.settings.muted, state.settings.holdMode]).toEqual([
      'field',
      true,
      'switch',
    ]);
  });

  it('a key is asked for and taken', () => {
    const button = (): HTMLElement => all('[data-key-action="ease"]')[0]!;
    button().click();
    expect(button().getAttribute('aria-pressed')).toBe('true');
    button().dispatchEvent(new KeyboardEvent('keydown', { code: 'KeyE', bubbles: true, cancelable: true }));
    expect([state.settings.keys.ease, state.keyAsked]).toEqual([['KeyE'], null]);
    expect(button().textContent).toContain('E');
  });
});

describe('what is kept', () => {
  it('is deleted only after asking, and the answer is told', async () => {
    go('about');
    all<HTMLButtonElement>('[data-delete-everything]')[0]?.click();
    await expect.poll(() => all('[data-delete-sure]').length).toBe(1);
    expect(deleted).toBe(0);
    all<HTMLButtonElement>('[data-delete-sure]')[0]?.click();
    await expect.poll(() => all('[data-told="true"]')[0]?.textContent).toBe('Done.');
    expect(deleted).toBe(1);
  });

  it('a window that keeps nothing says so on the first page', () => {
    expect(all('.start-notice')).toHaveLength(0);
    send({ kind: 'found', found: { keeping: 'memory' } });
    expect(all('.start-notice')[0]?.textContent).toMatch(/keeps nothing/);
  });
});

describe('the levels', () => {
  it('say it where own levels cannot be shown, for nobody could tell that from having none', () => {
    send({ kind: 'found', found: { keeping: 'not-fetched' } });
    for (const view of ['levels', 'progress', 'about', 'bike'] as const) {
      go(view);
      const notes = all('[role="note"]').map((note) => note.textContent);
      expect([view, ...notes]).toEqual([view, common('health-not-fetched')]);
    }
    expect(common('health-not-fetched')).toContain('your own levels are not shown');
    send({ kind: 'found', found: { keeping: null } });
    expect(root.querySelector('[role="note"]')).toBeNull();
  });
});

describe('a level that somebody made', () => {
  it('has its words in its own language wherever they stand alone', () => {
    const lang = 'nds';
    const own: Level = {
      ...level,
      id: 'own-hill',
      title: 'De lütte Barg',
      sentence: 'Schalt, eh dat piel geiht.',
      lang,
    };
    send({ kind: 'found', found: { ownLevels: [own] } });
    const trace = { samples: [], events: [], beforePitch: [] };
    const recording = { checkpoints: ['0'], bike: state.settings.bike, rider: state.settings.rider };
    const seen: Record<string, number> = {};
    const look = (where: string): void => {
      const alone = all('*').filter(
        (one) => one.childElementCount === 0 && [own.title, own.sentence].includes(one.textContent),
      );
      seen[where] = alone.length;
      for (const one of alone)
        expect([where, one.closest('[lang]')?.getAttribute('lang')]).toEqual([where, lang]);
    };
    go('levels');
    look('levels');
    send({ kind: 'ask-ride', rest: own.id });
    send({ kind: 'accept-cautions' });
    look('ride');
    send({
      kind: 'ride-finished',
      result: { level: own, rest: own.id, recording: recording as unknown as Recording, trace },
    });
    look('debrief');
    send({
      kind: 'results',
      results: [{ ...keptRide(own.id, 1), levelTitle: own.title }],
      unmarked: [{ ...keptRide(own.id, 2), levelTitle: own.title, standing: 'to-mark' }],
    });
    go('progress');
    look('progress');
    expect(seen).toEqual({ levels: 2, ride: 1, debrief: 1, progress: 2 });
  });
});

describe('a paused ride', () => {
  beforeEach(() => {
    send({ kind: 'ask-ride', rest: level.id });
    send({ kind: 'accept-cautions' });
    send({ kind: 'ride', shows: { phase: 'paused', countdownS: null } });
  });

  it('rides on at a push of the button', () => {
    all<HTMLButtonElement>('[data-ride-on]')[0]?.click();
    expect(state.ride?.phase).toBe('riding');
  });

  it('names all hands have on the bike, and on a road for play no more than its two pads and the pause', () => {
    const named = (): string[] => all('.key-list dd').map((one) => one.textContent);
    expect(named()).toEqual(KEY_ACTIONS.map((one) => keyWords(one)));
    state = { ...state, levels: [{ ...level, carries: 'apples' }] };
    send({ kind: 'ask-ride', rest: level.id });
    send({ kind: 'ride', shows: { phase: 'paused', countdownS: null } });
    // With one lever none is told from another.
    expect(named()).toEqual(['Easier', 'Harder', 'Pause']);
  });

  it('keeps the places of the ride when the settings open over it', () => {
    const before = all('[data-place]');
    send({ kind: 'open-dialog', dialog: 'settings' });
    expect(all('[data-place]')).toEqual(before);
    expect(before).toHaveLength(4);
  });
});

describe('pictures', () => {
  it('a wheel of 40-622 has a radius of 351 mm, one of 47-406 of 250 mm', () => {
    const radius = (id: string): number => frameOfBike(bikeById(id)!).wheelRadiusMm;
    expect([radius('trekking-3x8'), radius('kids-20-1x7')]).toEqual([351, 250]);
  });

  it('a joint keeps both bones at their length, and a far hand pulls the arm straight', () => {
    const [x, y] = jointBetween([0, 0], [6, 0], 5, 5, 1);
    expect([Math.hypot(x, y), Math.hypot(x - 6, y)].map((length) => Math.round(length * 1e6) / 1e6)).toEqual([
      5, 5,
    ]);
    expect(jointBetween([0, 0], [100, 0], 5, 5, 1)).toEqual([5, 0]);
  });

  it('hatching stands only under the steep part of a road', () => {
    const course = courseOfLevel(level);
    const places = [...profilePaths(course).hatching.matchAll(/M(\d+)/g)].map(
      ([, px]) => (Number(px) / 320) * course.lengthM,
    );
    expect(places.length).toBeGreaterThan(5);
    expect(places.every((m) => m > 260 && m < 380)).toBe(true);
  });
});
