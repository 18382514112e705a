/** The progress page: what is compared and what is not, what is said of it, and the three ways with what is kept. */
import { KeptSection } from '../../../src/ui/kept.tsx';
import type { KeptResult } from '../../../src/core/coach/results.ts';
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { chancePoints } from '../../../src/core/coach/progress.ts';
import { noServices } from '../../app/noServices.ts';
import { bikeName } from '../../../src/words/common.ts';
import { createFormat } from '../../../src/words/format.ts';
import { checkGroups } from '../../../src/features/progress/checks.ts';
import { ProgressPage } from '../../../src/features/progress/page.tsx';
import { words } from '../../../src/words/words.ts';
import { rootForTests } from '../../ui/rootForTests.ts';

type ProgressProps = Parameters<typeof ProgressPage>[0];

const say = words('progress');

const DAY_MS = 86_400_000;
const START_MS = Date.UTC(2026, 4, 1, 10);
let count = 0;

function ride(change: Partial<KeptResult> & { readonly day?: number } = {}): KeptResult {
  const { day = 0, ...rest } = change;
  count += 1;
  return {
    id: `ride-${count}`,
    atMs: START_MS + day * DAY_MS + count,
    levelId: 'two-levers',
    levelTitle: 'Two levers',
    kind: 'ride',
    bikeId: 'town-1x9',
    total: 60,
    marks: { cadence: 70, foresight: 50, easing: 60, chainLine: null, economy: 80 },
    passed: true,
    ...rest,
  };
}

const check = (total: number, day: number, change: Partial<KeptResult> = {}): KeptResult =>
  ride({ kind: 'check', levelId: 'check-ride', levelTitle: 'Check ride', total, day, ...change });

const app = rootForTests();
let calls: string[] = [];

const told = (name: string) => async (): Promise<{ ok: boolean; sentence: string }> => {
  calls.push(name);
  return { ok: true, sentence: `did ${name}` };
};

const services = {
  ...noServices,
  saveEverything: told('save'),
  takeBack: told('take back'),
  deleteEverything: told('delete'),
};

async function show(rides: readonly KeptResult[], change: Partial<ProgressProps> = {}): Promise<void> {
  const props: ProgressProps = {
    rides,
    unmarked: [],
    kept: <KeptSection services={services} rides={rides.length} />,
    langOf: () => undefined,
    secondsOf: (audience) => (audience === 'everyone' ? 500 : 320),
    onCheckRide: (audience) => calls.push(`check ${audience}`),
    format: createFormat('metric', 'en-GB'),
    ...change,
  };
  await act(() => render(<ProgressPage {...props} />, app));
}

const text = (selector: string): string => app.querySelector(selector)?.textContent ?? '';
const all = (selector: string): Element[] => [...app.querySelectorAll(selector)];
const push = (selector: string): Promise<void> =>
  act(() => app.querySelector<HTMLElement>(selector)?.click()) as Promise<void>;

beforeEach(() => {
  calls = [];
});

describe('check rides', () => {
  it('without any says how it is done, and begins either kind', async () => {
    await show([]);
    expect(text('[data-finding="need-first"]')).toBe('No check ride yet.');
    await push('[data-check="everyone"]');
    await push('[data-check="children"]');
    expect(calls).toEqual(['check everyone', 'check children']);
    expect(text('.progress-page')).toContain(say('empty'));
  });

  it('say how long they take on the bike', async () => {
    await show([]);
    await vi.waitFor(() => expect(text('.progress-minutes')).toContain('about 8 min'));
    expect(text('.progress-minutes')).toContain('children’s about 5 min');
  });

  it('one is a beginning', async () => {
    await show([check(54.4, 0)]);
    expect(text('[data-finding="need-second"]')).toContain('came to 54 of 100');
    expect(all('[data-check-ride]').length).toBe(1);
  });

  it('two on one day are a difference that must be seen again on another day', async () => {
    await show([check(50, 0), check(70, 0.1)]);
    expect(text('[data-finding="same-day"]')).toContain('20 up');
    expect(text('[data-finding="same-day"]')).toContain('on another day');
    expect(text('[data-finding="same-day"]')).not.toContain('learning');
  });

  it('a retest beyond chance is called learning, inside this game', async () => {
    await show([check(50, 0), check(70, 8)]);
    expect(text('[data-finding="retest"]')).toBe(
      'From 50 to 70, 8 days later, without help: 20 up, give or take 12. That is learning, inside this game.',
    );
    expect(all('[data-check-ride]').map((dot) => dot.getAttribute('data-check-ride'))).toEqual([
      'first',
      'retest',
    ]);
  });

  it('more rides on a day are taken together, and how many is said', async () => {
    await show([check(50, 0), check(54, 0.1), check(64, 8), check(68, 8.1)]);
    expect(text('[data-finding="retest"]')).toBe(
      'From 52 to 66, 8 days later, without help: 14 up, give or take 9. That is learning, inside this game.',
    );
    expect(text('[data-sides]')).toBe(
      'Taken together: 2 of the first day and 2 of the latest. 3 each would show a smaller change.',
    );
  });

  it('a retest within chance, and one that got worse, are not called learning', async () => {
    await show([check(50, 0), check(59, 8)]);
    expect(text('[data-finding="retest"]')).toContain('cannot be told from chance');
    await show([check(70, 0), check(50, 1)]);
    expect(text('[data-finding="retest"]')).toContain('20 down');
    expect(text('[data-finding="retest"]')).not.toContain('learning');
  });

  it('what is said and what is certain agree in whole points', () => {
    const [group] = checkGroups([check(50.4, 0), check(50.4 + chancePoints(1, 1) - 0.6, 3)]);
    expect(group?.finding).toMatchObject({ first: 50, latest: 62, change: 12, certain: true });
  });

  it('practice, another bike and the children’s road are never compared with it', async () => {
    const rides = [
      check(40, 0),
      ride({ total: 99, day: 5 }),
      check(90, 6, { bikeId: 'road-2x11' }),
      check(95, 7, { levelId: 'check-ride-children' }),
      check(44, 4),
    ];
    expect(checkGroups(rides).map(({ road, bikeId, rides: { length } }) => [road, bikeId, length])).toEqual([
      ['children', 'town-1x9', 1],
      ['everyone', 'road-2x11', 1],
      ['everyone', 'town-1x9', 2],
    ]);
    await show(rides);
    expect(text('[data-finding]')).toContain('95 of 100');
    const select = app.querySelector('.progress-check select') as HTMLSelectElement;
    expect([...select.options].map((option) => option.textContent)).toEqual([
      `${bikeName('town-1x9')}, children’s check ride`,
      bikeName('road-2x11'),
      bikeName('town-1x9'),
    ]);
    select.value = 'check-ride town-1x9';
    await act(() => void select.dispatchEvent(new Event('change', { bubbles: true })));
    expect(text('[data-finding="retest"]')).toContain('From 40 to 44');
    expect(all('.progress-check tbody tr').length).toBe(2);
  });

  it('says what it cannot show', async () => {
    await show([]);
    for (const line of say.lines('limits')) expect(text('.progress-limits')).toContain(line);
  });
});

describe('marks of all rides', () => {
  it('has one chart for each mark and one for all together, with a gap where nothing was judged', async () => {
    await show([
      ride({ day: 2, marks: { cadence: 90, foresight: 20, easing: null, chainLine: null, economy: 80 } }),
      ride({ day: 1 }),
    ]);
    expect(all('[data-marks]').map((figure) => figure.getAttribute('data-marks'))).toEqual([
      'cadence',
      'foresight',
      'easing',
      'chainLine',
      'economy',
      'total',
    ]);
    expect(text('[data-marks="cadence"] title')).toBe('Cadence: 2 rides, from 70 to 90 of 100.');
    expect(text('[data-marks="easing"] title')).toBe('Soft feet: one ride, 60 of 100.');
    expect(text('[data-marks="chainLine"]')).toContain(say('marks-none'));
    expect(app.querySelector('[data-marks="chainLine"] svg')).toBeNull();
  });

  it('shows rides of one level when asked, newest first in the table', async () => {
    await show([
      ride({ day: 1, total: 11 }),
      ride({ day: 2, total: 22 }),
      ride({ day: 3, total: 33, levelId: 'soft-feet', levelTitle: 'Soft feet' }),
    ]);
    const totals = (): (string | null | undefined)[] =>
      all('.progress-scroll tbody tr').map((row) => row.children[3]?.textContent);
    expect(totals()).toEqual(['33', '22', '11']);
    const select = [...app.querySelectorAll('select')].at(-1) as HTMLSelectElement;
    select.value = 'two-levers';
    await act(() => void select.dispatchEvent(new Event('change', { bubbles: true })));
    expect(totals()).toEqual(['22', '11']);
  });

  it('of very many the latest forty are drawn, and that is said', async () => {
    await show(Array.from({ length: 55 }, (_, i) => ride({ day: i })));
    expect(all('[data-marks="total"] circle').length).toBe(40);
    expect(text('.progress-page')).toContain(say('marks-shown', { shown: 40, all: 55 }));
  });

  it('kinds of rides have shapes of their own', async () => {
    await show([ride(), check(50, 1), ride({ kind: 'clinic', day: 2 })]);
    expect(all('[data-marks="total"] circle').length).toBe(1);
    expect(all('.progress-legend li').map((item) => item.textContent)).toEqual([
      say('kind-ride'),
      say('kind-check'),
      say('kind-clinic'),
    ]);
  });
});

describe('what is kept', () => {
  it('can be saved, and is deleted only after a question that offers the file first', async () => {
    await show([ride()]);
    await push('[data-save-everything]');
    expect(calls).toEqual(['save']);
    await push('[data-delete-everything]');
    expect(calls).toEqual(['save']);
    expect(text('dialog')).toContain('1 ride');
    await push('[data-delete-sure]');
    expect(calls).toEqual(['save', 'delete']);
  });
});
