/** The debrief of a late ride as a person finds it: what is hidden, what is read out, what buttons do. */
import { act } from 'preact/test-utils';
import { describe, expect, it } from 'vitest';
import type { MarkName, Timing } from '../../../src/core/coach/types.ts';
import { createFormat } from '../../../src/words/format.ts';
import { lateRide, propsFor, push, show } from './ride.tsx';

const ride = lateRide();
const { report } = ride;
const format = createFormat('metric');
const guessed = { guess: 'about-right' } as const;

const read = (app: HTMLElement, name: string): string =>
  app.querySelector(`.strip-readout [data-read="${name}"] b`)?.textContent ?? '';

describe('before the guess', () => {
  const telltale = [
    '[data-debrief="change"]',
    '[data-debrief="total"]',
    '[data-mark]',
    '[data-pitch]',
    '[data-shift]',
    '[data-ride="best"]',
    '.print-sheet',
    '[data-print]',
  ];

  it('shows the question and the own curve, and nothing that answers it', async () => {
    const app = await show(propsFor(ride));
    expect(app.querySelectorAll('[data-guess]').length).toBe(4);
    expect(app.querySelector('[data-ride="own"] path')?.getAttribute('d')?.length).toBeGreaterThan(100);
    for (const selector of telltale) expect(app.querySelector(selector), selector).toBeNull();
    await push(app, 'n');
    expect(app.querySelector('[data-read="shift"]')).toBeNull();
  });

  it('has all of it afterwards', async () => {
    const app = await show(propsFor(ride, guessed));
    for (const selector of telltale) expect(app.querySelector(selector), selector).not.toBeNull();
  });

  it('asks at once while the judge is still at work, and keeps the guess', async () => {
    const waiting = { report: null, reference: null, share: 0.4 };
    const app = await show(propsFor(ride, waiting));
    expect(app.querySelectorAll('[data-guess]').length).toBe(4);
    expect(app.querySelector('progress')?.value).toBe(0.4);
    const after = await show(propsFor(ride, { ...waiting, guess: 'too-late' }));
    expect(after.querySelector('[data-guess]')).toBeNull();
    expect(after.querySelector('[data-mark]')).toBeNull();
  });

  it('hands the guess over', async () => {
    const props = propsFor(ride);
    const app = await show(props);
    for (const button of app.querySelectorAll<HTMLButtonElement>('[data-guess]')) button.click();
    expect(props.calls).toEqual(
      ['too-early', 'about-right', 'too-late', 'skipped'].map((guess) => ['guess', guess]),
    );
  });

  it('asks nothing where no pitch asked for anything', async () => {
    const app = await show(propsFor(ride, { report: { ...report, guessPitch: null } }));
    expect(app.querySelector('[data-guess]')).toBeNull();
    expect(app.querySelectorAll('[data-mark]').length).toBe(5);
  });
});

describe('the one card at the end', () => {
  const stamps = (app: HTMLElement): string[] =>
    [...app.querySelectorAll<HTMLElement>('[data-stamp]')].map(
      ({ dataset }) => `${dataset['stamp']} ${dataset['state']}`,
    );
  const marked = (values: Partial<Record<MarkName, number | null>>) => ({
    ...report.marks,
    ...Object.fromEntries(Object.entries(values).map(([name, value]) => [name, { value, reasons: [] }])),
  });

  it('stamps what was done, and says of the rest that it is not yet done or was not asked', async () => {
    const marks = marked({ foresight: 71, easing: 69, cadence: null });
    const pitches = report.pitches.map((pitch) => ({ ...pitch, timing: 'about-right' as const }));
    const app = await show(propsFor(ride, { ...guessed, report: { ...report, marks, pitches } }));
    expect(stamps(app)).toEqual(['early earned', 'soft not-yet', 'smooth not-asked']);
    // By shape and word, not by colour alone.
    expect(app.querySelectorAll('.stamp-tick').length).toBe(1);
    expect(app.querySelector('[data-stamp="soft"]')?.textContent).toMatch(/not yet/);
  });

  it('stamps nobody early who was late to half of the pitches, whatever the mark', async () => {
    const [first] = report.pitches;
    if (first === undefined) throw new Error('a road without a pitch');
    const timed = async (...timings: readonly Timing[]): Promise<string | undefined> => {
      const pitches = timings.map((timing) => ({ ...first, asked: true, timing }));
      const marks = marked({ foresight: 90 });
      return stamps(await show(propsFor(ride, { ...guessed, report: { ...report, marks, pitches } })))[0];
    };
    expect(await timed('too-late', 'about-right')).toBe('early not-yet');
    expect(await timed('too-late', 'about-right', 'about-right', 'about-right')).toBe('early earned');
  });

  it('looks different for a passed ride, and leads on from there', async () => {
    const looks = async (passed: boolean) => {
      const next = { code: passed ? 'onwards' : 'again', total: 80 } as const;
      const verdict = { ...report.verdict, next };
      const app = await show(propsFor(ride, { ...guessed, report: { ...report, passed, verdict } }));
      const card = app.querySelector<HTMLElement>('[data-end]');
      return {
        end: card?.dataset['end'],
        confetti: card?.querySelectorAll('.confetti').length,
        strong: card?.querySelector('button.strong')?.hasAttribute('data-next-level'),
      };
    };
    expect(await looks(true)).toEqual({ end: 'passed', confetti: 14, strong: true });
    expect(await looks(false)).toMatchObject({ end: 'not-yet', confetti: 0 });
  });

  it('says nothing of an end before the guess, and neither of passing on a check ride', async () => {
    expect((await show(propsFor(ride))).querySelector<HTMLElement>('[data-end]')?.dataset['end']).toBe(
      'open',
    );
    const level = { ...ride.level, teaches: 'check' } as const;
    const app = await show(propsFor(ride, { ...guessed, level }));
    expect(app.querySelector<HTMLElement>('[data-end]')?.dataset['end']).toBe('ridden');
  });

  it('has again and next in it, and everything else folded away until it is asked for', async () => {
    const props = propsFor(ride, guessed);
    const app = await show(props);
    const fold = app.querySelector<HTMLDetailsElement>('[data-explain]') as HTMLDetailsElement;
    expect(fold.open).toBe(false);
    expect(app.querySelector('.end-card [data-ride-again]')).not.toBeNull();
    expect(app.querySelector('.end-card [data-next-level]')).not.toBeNull();
    for (const inside of ['.strip-card', '[data-pitch]', '[data-mark]', '[data-print]'])
      expect(app.querySelector(inside)?.closest('[data-explain]'), inside).toBe(fold);
    await act(() => {
      fold.open = true;
    });
    expect(props.calls).toEqual([['unfold', true]]);
  });
});

describe('the answer', () => {
  const answer = async (guess: 'too-late' | 'too-early' | 'skipped'): Promise<string> =>
    (await show(propsFor(ride, { guess }))).querySelector('[data-debrief="answer"]')?.textContent ?? '';

  it('is kind whichever way the guess went', async () => {
    expect(report.pitches[report.guessPitch ?? 0]?.timing).toBe('too-late');
    expect(await answer('too-late')).toMatch(/^You felt it: too late\./);
    expect(await answer('too-early')).toMatch(/^You felt “too early”; it was too late\./);
    expect(await answer('skipped')).toMatch(/^It was too late\./);
  });
});

describe('the strip', () => {
  it('reads out a shift for a pitch by keyboard', async () => {
    const app = await show(propsFor(ride, guessed));
    const late = report.shifts.findLastIndex(
      ({ direction, startedAtM }) =>
        direction === 'easier' &&
        report.pitches.some(({ footM }) => startedAtM > footM - 100 && startedAtM < footM + 85),
    );
    expect(late).toBeGreaterThan(0);
    const kind = report.shifts[late]?.kind ?? 'clean';
    const told = { clean: 'clean', fair: 'a bit heavy', heavy: 'heavy' }[kind];
    await push(app, 'n', late + 1);
    expect(read(app, 'shift')).toContain(`${told}, easier: `);
    expect(read(app, 'place')).toBe(format.distance(report.shifts[late]?.startedAtM ?? 0));
    expect(read(app, 'best')).not.toBe('');
    await push(app, 'p');
    expect(read(app, 'place')).toBe(format.distance(report.shifts[late - 1]?.startedAtM ?? 0));
  });

  it('moves by sample, by 50 m and to the ends', async () => {
    const app = await show(propsFor(ride, guessed));
    const at = (): number =>
      Math.round(app.querySelector<HTMLInputElement>('.strip-scrubber')?.valueAsNumber ?? -1);
    await push(app, 'Home');
    expect(at()).toBe(0);
    await push(app, 'PageDown', 2);
    expect(Math.abs(at() - 100)).toBeLessThanOrEqual(2);
    const before = at();
    await push(app, 'ArrowRight', 3);
    expect(at()).toBeGreaterThan(before);
    expect(at()).toBeLessThan(before + 5);
    await push(app, 'ArrowLeft', 3);
    expect(at()).toBe(before);
    await push(app, 'End');
    expect(at()).toBe(Math.round(ride.trace.samples.at(-1)?.distanceM ?? 0));
  });

  it('draws one mark for each shift, shaped by how heavy it was', async () => {
    const app = await show(propsFor(ride, guessed));
    const strip = app.querySelector('.strip-svg') as SVGElement;
    for (const kind of ['clean', 'fair', 'heavy']) {
      const expected = report.shifts.filter((shift) => shift.kind === kind).length;
      expect(strip.querySelectorAll(`[data-shift="${kind}"]`).length, kind).toBe(expected);
    }
    expect(strip.querySelector('title')?.textContent).not.toBe('');
    expect(strip.querySelector('desc')?.textContent).not.toBe('');
  });

  it('has its numbers in tables that equal the ride', async () => {
    const app = await show(propsFor(ride, guessed));
    const fold = app.querySelector('.strip .numbers-fold') as HTMLDetailsElement;
    await act(() => {
      fold.open = true;
      fold.dispatchEvent(new Event('toggle'));
    });
    const places = fold.querySelector('[data-table="places"]') as HTMLTableElement;
    expect(places.querySelector('caption')?.textContent).toBe('The ride every 50 m');
    const rows = [...places.querySelectorAll('tbody tr')];
    expect(rows.length).toBe(33);
    for (const [i, row] of rows.entries()) {
      const nearest = [...ride.trace.samples].sort(
        (a, b) => Math.abs(a.distanceM - 50 * i) - Math.abs(b.distanceM - 50 * i),
      )[0];
      const cells = [...row.querySelectorAll('th, td')].map((cell) => cell.textContent);
      const ring = ride.bike.chainringsTeeth[nearest?.ringIndex ?? 0];
      const sprocket = ride.bike.sprocketsTeeth[nearest?.sprocketIndex ?? 0];
      expect(cells[0]?.replace(/\D/g, '')).toBe(String(50 * i));
      expect(cells[2]?.replaceAll(/\s/g, ' ')).toBe(`${ring} × ${sprocket}`);
      if (cells[3] !== '–') expect(cells[3]).toBe(String(Math.round(nearest?.cadenceRpm ?? -1)));
    }
    const shifts = [...fold.querySelectorAll('[data-table="shifts"] tbody tr')];
    expect(shifts.map((row) => row.querySelectorAll('td')[2]?.textContent)).toEqual(
      report.shifts.map((shift) => String(Math.round(shift.load * 100))),
    );
  });
});

describe('cards, marks and buttons', () => {
  it('say for each pitch how many gears were made in time', async () => {
    const app = await show(propsFor(ride, guessed));
    for (const pitch of report.pitches) {
      const card = app.querySelector(`[data-pitch="${pitch.index}"]`);
      const numbers = [...(card?.querySelectorAll('dd') ?? [])].map((cell) => cell.textContent);
      expect(numbers[0]).toBe(String(pitch.referenceSteps));
      const made =
        pitch.stepsMade === 0 ? 'none made' : `${pitch.stepsBeforeFoot} of ${pitch.stepsMade} made`;
      expect(numbers[1]).toBe(made);
    }
  });

  it('give each mark its number and its reason, and explain a mark that is missing', async () => {
    const marks = { ...report.marks, chainLine: { value: null, weight: 1, reasons: [] } };
    const app = await show(propsFor(ride, { ...guessed, report: { ...report, marks } }));
    expect(app.querySelector('[data-mark="easing"] .mark-value b')?.textContent).toBe(
      String(Math.round(report.marks.easing.value ?? -1)),
    );
    expect(app.querySelector('[data-mark="easing"] [data-reason="heavy-shift"]')).not.toBeNull();
    const missing = app.querySelector('[data-mark="chainLine"]')?.textContent;
    expect(missing).toContain('no mark');
    expect(missing).toContain('one chainring');
  });

  it('say what keeps a ride from passing, and nothing to do better beside a full mark', async () => {
    const marks = { ...report.marks, cadence: { ...report.marks.cadence, value: 99.7 } };
    const holds = [{ code: 'mark-missing', mark: 'easing', atLeast: 45, lesson: false }] as const;
    const app = await show(
      propsFor(ride, { ...guessed, report: { ...report, marks, holds, passed: false } }),
    );
    expect(app.querySelector('[data-hold="mark-missing"]')?.textContent).toContain(
      'at least 45 in soft feet',
    );
    expect(app.querySelector('[data-mark="cadence"] .better')).toBeNull();
  });

  it('call back', async () => {
    const props = propsFor(ride, guessed);
    const app = await show(props);
    const click = (selector: string): void => app.querySelector<HTMLButtonElement>(selector)?.click();
    for (const selector of ['[data-ride-again]', '[data-next-level]', '[data-print]', '[data-save-ride]'])
      click(selector);
    click('[data-pitch="1"] button');
    const footM = report.pitches[1]?.footM ?? 0;
    expect(props.calls).toEqual([['again'], ['next'], ['print'], ['save'], ['watch', footM - 60]]);
    await push(app, 'End');
    click('.strip-buttons button:last-child');
    expect(props.calls.at(-1)).toEqual(['watch', ride.trace.samples.at(-1)?.distanceM]);
  });

  it('say whether the ride was kept', async () => {
    const saved = { state: 'not-saved', sentence: 'The store is full.' } as const;
    const app = await show(propsFor(ride, { saved }));
    expect(app.querySelector('[data-saved="not-saved"]')?.textContent).toContain('The store is full.');
  });

  it('print one sheet with sentences, strip, five marks and the cautions', async () => {
    const app = await show(propsFor(ride, guessed));
    const sheet = app.querySelector('.print-sheet');
    expect(sheet?.querySelectorAll('.sentences dd').length).toBe(3);
    expect(sheet?.querySelector('[data-ride="best"]')).not.toBeNull();
    expect(sheet?.querySelectorAll('.print-marks tbody tr').length).toBe(5);
    expect(sheet?.querySelector('footer')?.textContent).toBe('A game teaches timing, not traffic.');
  });

  it('survive a ride that ended before the first pitch', async () => {
    const samples = ride.trace.samples.slice(0, 60);
    const trace = { samples, events: [], beforePitch: [] };
    const app = await show(propsFor(ride, { trace, report: ride.judge(trace) }));
    expect(app.querySelectorAll('[data-mark]').length).toBe(5);
    await push(app, 'End');
    expect(read(app, 'gear')).not.toBe('');
  });
});
