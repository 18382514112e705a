/** The forms as a person finds them: typing, drawing, warnings, tapping, taking back. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { bikeById, riderById, RIDERS } from '../../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../../src/core/model/types.ts';
import { OwnBikeForm } from '../../../src/features/bike/bikeForm.tsx';
import { RiderForm } from '../../../src/features/bike/riderForm.tsx';
import { words } from '../../../src/words/words.ts';
import { rootForTests } from '../../ui/rootForTests.ts';

const say = words('bike');
const bike = bikeById('trekking-3x8') as Bike;
const weekly = riderById('adult-weekly') as Rider;

const app = rootForTests();

afterEach(() => {
  vi.useRealTimers();
});

const one = <Kind extends Element = HTMLElement>(selector: string): Kind => {
  const found = app.querySelector<Kind>(selector);
  if (found === null) throw new Error(`nothing at ${selector}`);
  return found;
};
const field = (name: string): HTMLInputElement => one<HTMLInputElement>(`input[name="${name}"]`);
const type = async (input: HTMLInputElement, value: string): Promise<void> => {
  input.value = value;
  await act(() => void input.dispatchEvent(new Event('input', { bubbles: true })));
};
const press = (button: Element | undefined): Promise<void> =>
  act(() => (button as HTMLElement).click()) as Promise<void>;
const labelled = (label: string): HTMLInputElement => {
  const found = [...app.querySelectorAll('label')].find((element) => element.textContent?.startsWith(label));
  return found?.querySelector('input') as HTMLInputElement;
};
const choose = (label: string): Promise<void> =>
  act(() => {
    const input = labelled(label);
    input.checked = true;
    input.dispatchEvent(new Event('change', { bubbles: true }));
  }) as Promise<void>;
const buttonOf = (label: string): Element | undefined =>
  [...app.querySelectorAll('button')].find(
    (button) => (button.getAttribute('aria-label') ?? button.textContent) === label,
  );
/** What is read out with a field. */
const described = (input: HTMLInputElement): string =>
  (input.getAttribute('aria-describedby') ?? '')
    .split(' ')
    .map((id) => document.getElementById(id)?.textContent ?? `no ${id}`)
    .join(' ');

describe('an own bike', () => {
  let told: Bike[] = [];
  beforeEach(async () => {
    told = [];
    await act(() => render(<OwnBikeForm bike={bike} onChange={(b) => told.push(b)} />, app));
  });
  const bars = (): string[] => [...app.querySelectorAll('.gear-stacks text')].map((t) => t.textContent ?? '');

  it('is drawn and handed on while it is typed', async () => {
    await type(field('rings'), '50/34');
    await type(field('range'), '11-34');
    expect(told.at(-1)).toMatchObject({
      id: 'own',
      chainringsTeeth: [34, 50],
      sprocketsTeeth: [11, 13, 15, 18, 21, 24, 28, 34],
    });
    expect(bars()).toEqual(['34', '50', '34', '28', '24', '21', '18', '15', '13', '11']);
  });

  it('says beside the field what is impossible, keeps what was typed and the last possible drawing', async () => {
    await type(field('rings'), '500');
    expect(told).toEqual([]);
    expect(field('rings').value).toBe('500');
    expect(field('rings').getAttribute('aria-invalid')).toBe('true');
    expect(described(field('rings'))).toContain('A chainring of 500 teeth is not made.');
    expect(one('.own-drawing').dataset['current']).toBe('false');
    expect(one('.own-said').textContent).toContain(say('lastGood'));
    expect(bars().slice(0, 3)).toEqual(['26', '36', '48']);
    await type(field('mass'), '14,5');
    expect(field('rings').value).toBe('500');
    await type(field('rings'), '50');
    expect(told).toHaveLength(1);
    expect(told[0]).toMatchObject({ chainringsTeeth: [50], massKg: 14.5 });
    expect(described(field('rings'))).not.toContain('not made');
  });

  it('loses nothing when a browser fills in two fields at once', async () => {
    await act(() => {
      for (const [name, value] of [
        ['rings', '500'],
        ['tyre', '28'],
      ] as const) {
        field(name).value = value;
        field(name).dispatchEvent(new Event('input', { bubbles: true }));
      }
    });
    expect([field('rings').value, field('tyre').value]).toEqual(['500', '28']);
    expect(described(field('rings'))).toContain('not made');
    expect(described(field('tyre'))).toContain('28-622');
  });

  it('lets sprockets be changed, added and taken away one by one', async () => {
    await choose(say('way-each'));
    const inputs = (): HTMLInputElement[] => [
      ...app.querySelectorAll<HTMLInputElement>('.own-each-one input'),
    ];
    expect(inputs().map(({ value }) => value)).toEqual(bike.sprocketsTeeth.map(String));
    await type(inputs()[2] as HTMLInputElement, '16');
    expect(told.at(-1)?.sprocketsTeeth).toEqual([11, 13, 16, 18, 21, 24, 28, 32]);
    await press(buttonOf(say('add')));
    expect(inputs()).toHaveLength(9);
    expect(document.activeElement).toBe(inputs()[8]);
    expect(described(inputs()[8] as HTMLInputElement)).toBe(say('emptySprocket', { place: 9 }));
    await type(inputs()[8] as HTMLInputElement, '36');
    expect(told.at(-1)?.sprocketsTeeth).toEqual([11, 13, 16, 18, 21, 24, 28, 32, 36]);
    await press(buttonOf(say('remove', { place: 1 })));
    expect(told.at(-1)?.sprocketsTeeth).toEqual([13, 16, 18, 21, 24, 28, 32, 36]);
    await choose(say('way-range'));
    await choose(say('way-each'));
    expect(inputs().map(({ value }) => value)).toEqual(['13', '16', '18', '21', '24', '28', '32', '36']);
  });

  it('warns of what usual derailleurs cannot take up, and sends to a mechanic', async () => {
    expect(app.querySelector('[data-warning]')).toBeNull();
    await type(field('rings'), '52/28');
    await type(field('range'), '11-42');
    expect(one('[data-warning="capacity"]').textContent).toContain('55 teeth');
    expect(one('[data-warning="big-step"]').textContent).toContain('mechanic');
  });

  it('offers to refuse crossed gears only where a shifter can', async () => {
    expect(labelled(say('refuses'))).toBeUndefined();
    await choose(say('shifters-electronic'));
    await choose(say('refuses'));
    expect(told.at(-1)).toMatchObject({ shifter: 'electronic', refusesCrossed: true });
    await choose(say('shifters-mechanical'));
    expect(told.at(-1)).toMatchObject({ shifter: 'mechanical', refusesCrossed: false });
  });
});

describe('a rider', () => {
  let told: Rider[] = [];
  let nowMs = 0;
  const draw = (rider: Rider): void =>
    render(
      <RiderForm
        rider={rider}
        onChange={(next) => {
          told.push(next);
          draw(next);
        }}
        clock={() => nowMs}
      />,
      app,
    );
  const pad = (): HTMLElement => one('.tap-pad');
  const said = (): string => one('.tap-test output').textContent ?? '';
  const tap = (event: Event): Promise<void> => act(() => void pad().dispatchEvent(event)) as Promise<void>;
  const key = (type: string, repeat = false): Event =>
    new KeyboardEvent(type, { key: ' ', bubbles: true, cancelable: true, repeat });
  /** Taps at a cadence until the time is over. */
  const tapThrough = async (cadenceRpm: number): Promise<void> => {
    const turnMs = 60_000 / cadenceRpm;
    const startMs = nowMs;
    for (let i = 0; i * turnMs <= 20_000 + turnMs; i += 1) {
      nowMs = startMs + i * turnMs;
      await tap(new Event('pointerdown', { bubbles: true }));
    }
  };

  beforeEach(async () => {
    told = [];
    nowMs = 1_000;
    await act(() => draw(weekly));
  });

  it('by feel is one of the bundled riders', async () => {
    expect(app.querySelectorAll('.own-feel input').length).toBe(RIDERS.length);
    await choose('New to it');
    expect(told).toEqual([riderById('adult-new')]);
  });

  it('by numbers is kept as typed and handed on when possible', async () => {
    await choose(say('rider-way-numbers'));
    expect(field('mass').value).toBe(String(weekly.massKg));
    await type(field('power'), '2000');
    expect(described(field('power'))).toContain(say('rider-power-wrong'));
    expect(told).toEqual([]);
    await type(field('power'), '200');
    expect(told.at(-1)).toMatchObject({ id: 'own', steadyPowerW: 200, massKg: weekly.massKg });
  });

  it('gets a band round taps for 20 seconds, and can have the old one back', async () => {
    await tapThrough(66);
    expect(told).toHaveLength(1);
    expect(told[0]).toEqual({ ...weekly, id: 'own', cadenceLowRpm: 56, cadenceHighRpm: 76 });
    expect(said()).toBe(say('tap-found', { rpm: 66, low: 56, high: 76 }));
    expect(field('low').value).toBe('56');
    await press(buttonOf(say('tap-undo')));
    expect(told.at(-1)).toEqual(weekly);
    expect(said()).toBe(say('tap-undone'));
    expect(buttonOf(say('tap-undo'))).toBeUndefined();
  });

  it('a finger that taps on after the end begins nothing new; later it may', async () => {
    await tapThrough(80);
    nowMs += 700;
    await tap(new Event('pointerdown', { bubbles: true }));
    expect(told).toHaveLength(1);
    expect(said()).not.toBe('');
    nowMs += 2_000;
    await tap(new Event('pointerdown', { bubbles: true }));
    expect(said()).toBe('');
    expect(pad().textContent).toContain(say('tap-count', { count: 1 }));
  });

  it('space taps when it goes down, once however long it is held, and never clicks as well', async () => {
    const down = key('keydown');
    await tap(down);
    expect(down.defaultPrevented).toBe(true);
    await tap(key('keydown', true));
    const up = key('keyup');
    await tap(up);
    expect(up.defaultPrevented).toBe(true);
    expect(pad().textContent).toContain(say('tap-count', { count: 1 }));
  });

  it('a finger is one tap though it also clicks; a click of an assistive device is one, too', async () => {
    await tap(new Event('pointerdown', { bubbles: true }));
    await tap(new MouseEvent('click', { bubbles: true, detail: 1 }));
    expect(pad().textContent).toContain(say('tap-count', { count: 1 }));
    nowMs += 800;
    await tap(new MouseEvent('click', { bubbles: true, detail: 0 }));
    expect(pad().textContent).toContain(say('tap-count', { count: 2 }));
  });

  it('ends by itself when nobody taps any more, and says why there is no band', async () => {
    vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
    for (let i = 0; i < 3; i += 1) {
      nowMs += 700;
      await tap(new Event('pointerdown', { bubbles: true }));
    }
    nowMs += 21_000;
    await act(() => void vi.advanceTimersByTime(500));
    expect(said()).toBe(`${say('tap-too-few')} ${say('tap-unchanged')}`);
    expect(told).toEqual([]);
  });

  it('can be stopped early', async () => {
    await tap(new Event('pointerdown', { bubbles: true }));
    await press(buttonOf(say('tap-stop')));
    expect(said()).toContain(say('tap-too-few'));
  });
});
