/** The form for a free ride: the road that is drawn is the road that is ridden and the road the link carries. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { freeLevel, type FreeRideWish } from '../../../src/core/level/generate.ts';
import { createFormat } from '../../../src/words/format.ts';
import { FreeRideForm } from '../../../src/features/levels/freeRideForm.tsx';
import { decodeFreeRide, encodeFreeRide, seedOf } from '../../../src/core/level/freeRide.ts';
import { words } from '../../../src/words/words.ts';
import { rootForTests } from '../../ui/rootForTests.ts';

type FreeRideFormProps = Parameters<typeof FreeRideForm>[0];

const say = words('levels');

const app = rootForTests();
let ridden: FreeRideWish[] = [];

async function show(change: Partial<FreeRideFormProps> = {}): Promise<void> {
  const props: FreeRideFormProps = {
    wish: { seed: 42, hilliness: 0.5, lengthM: 2_000 },
    onRide: (wish) => ridden.push(wish),
    onLink: (wish) => `https://example.org/#ride/${encodeFreeRide(wish)}`,
    newSeed: () => 777,
    format: createFormat('metric', 'en-GB'),
    ...change,
  };
  await act(() => render(<FreeRideForm {...props} />, app));
}

const one = <Kind extends Element = HTMLElement>(selector: string): Kind => {
  const found = app.querySelector<Kind>(selector);
  if (found === null) throw new Error(`nothing at ${selector}`);
  return found;
};
const type = async (input: HTMLInputElement, value: string): Promise<void> => {
  input.value = value;
  await act(() => void input.dispatchEvent(new Event('input', { bubbles: true })));
};
const name = (): HTMLInputElement => one('.free-name input');
const link = (): string => one<HTMLInputElement>('.free-link input').value;
const push = (selector: string): Promise<void> => act(() => one(selector).click()) as Promise<void>;
const sliders = (): HTMLInputElement[] => [...app.querySelectorAll<HTMLInputElement>('input[type="range"]')];

beforeEach(() => {
  ridden = [];
});

afterEach(() => {
  vi.unstubAllGlobals();
});

describe('the form', () => {
  it('draws, tells, links and rides the same road', async () => {
    await show();
    await type(name(), 'Badger');
    await type(sliders()[0] as HTMLInputElement, '0.9');
    await type(sliders()[1] as HTMLInputElement, '3000');
    const wish = { seed: seedOf('badger'), hilliness: 0.9, lengthM: 3_000 } as FreeRideWish;
    const course = courseOfLevel(freeLevel(wish));
    expect(one('.free-road output').textContent).toContain(`${course.pitches.length} pitches`);
    expect(link()).toBe(`https://example.org/#ride/free-${wish.seed}-90-3000`);
    await push('[data-free-ride]');
    expect(ridden).toEqual([wish]);
    expect(decodeFreeRide(link().split('/').at(-1) ?? '')).toEqual({ ok: true, wish });
  });

  it('draws another road when the hills change', async () => {
    await show();
    const outline = (): string | null => one('.free-road svg path').getAttribute('d');
    const before = outline();
    await type(sliders()[0] as HTMLInputElement, '0.1');
    expect(outline()).not.toBe(before);
    expect(one('.free-ride .slider output').textContent).toBe(say('free-hilly-0'));
  });

  it('begins with a road its link can carry', async () => {
    await show({ wish: { seed: 3, hilliness: 1 / 3, lengthM: 1_234.4 } });
    await push('[data-free-ride]');
    expect(ridden).toEqual([{ seed: 3, hilliness: 0.33, lengthM: 1_234 }]);
  });

  it('takes another road by itself', async () => {
    await show();
    await push('[data-another-road]');
    expect(name().value).toBe('777');
    expect(link()).toContain('free-777-');
  });

  it('asks for a name where none is, and keeps the road until then', async () => {
    await show();
    await type(name(), ' ');
    expect(one('.free-name .field-problem').textContent).toBe(say('free-seedEmpty'));
    expect(one<HTMLButtonElement>('[data-free-ride]').disabled).toBe(true);
    expect(link()).toContain('free-42-');
  });

  it('says what was wrong with a link', async () => {
    await show({ badLink: 'length' });
    expect(one('[data-bad-link="length"]').textContent).toContain('500 m to 10,000 m');
  });
});

describe('copying', () => {
  const copy = async (writeText: (text: string) => Promise<void>): Promise<string> => {
    vi.stubGlobal('navigator', { clipboard: { writeText } });
    await show();
    await push('[data-copy-link]');
    await act(() => Promise.resolve());
    return one('.free-link output').textContent ?? '';
  };

  it('puts the link where it can be pasted, and forgets saying so when the road changes', async () => {
    const copied: string[] = [];
    expect(await copy(async (text) => void copied.push(text))).toBe(say('free-copied'));
    expect(copied).toEqual([link()]);
    await type(name(), '43');
    expect(one('.free-link output').textContent).toBe('');
  });

  it('marks the link where the browser refuses', async () => {
    expect(await copy(() => Promise.reject(new Error('no')))).toBe(say('free-notCopied'));
    const field = one<HTMLInputElement>('.free-link input');
    expect([field.selectionStart, field.selectionEnd]).toEqual([0, link().length]);
  });
});
