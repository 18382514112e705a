/**
 * Fifty steps across every kind of field of the bench, taken back one by one with Ctrl+Z in whatever field has the
 * focus: each press is one step, and every field shows the level it came back to.
 */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, it } from 'vitest';
import { parseLevel } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { seededRandom } from '../../../src/core/math/random.ts';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import { Editor } from '../../../src/features/bench/editor.tsx';
import { freshLevel } from '../../../src/features/bench/fresh.ts';
import { levelEditor, useDraft } from '../../../src/features/bench/levelEditor.ts';
import type { BenchServices } from '../../../src/features/bench/services.ts';
import { initialState } from '../../../src/state/reduce.ts';

const STEPS = 50;
const state = initialState([], DEFAULT_KEYS, '#bench/edit');
// Nobody plans or keeps here.
const services = { plan: () => new Promise(() => undefined) } as unknown as BenchServices;

function Host() {
  const draft = useDraft();
  return draft === null ? null : <Editor {...{ draft, state, services }} send={() => undefined} />;
}

const KINDS = {
  text: 'input[type="text"]',
  number: '[data-thing] input[type="number"]',
  handle: 'input[type="range"].edge',
  select: '[data-thing] select, details select',
  tick: 'details input[type="checkbox"]',
  button: '[data-add]',
  json: 'textarea',
} as const;
type Kind = keyof typeof KINDS;

/** Changes a field the way a hand does. */
function use(kind: Kind, field: HTMLElement, random: () => number): void {
  field.focus();
  if (kind === 'button' || kind === 'tick') return field.click();
  if (kind === 'handle') {
    const key = random() < 0.5 ? 'ArrowRight' : 'ArrowLeft';
    field.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
    return;
  }
  if (field instanceof HTMLSelectElement) {
    field.selectedIndex = Math.floor(random() * field.options.length);
    field.dispatchEvent(new Event('change', { bubbles: true }));
    return;
  }
  const input = field as HTMLInputElement;
  if (kind === 'number') {
    const [low, high] = [Number(input.min), Math.min(Number(input.max), Number(input.min) + 60)];
    input.value = `${Math.round(low + random() * (high - low))}`;
  } else if (kind === 'json')
    input.value = input.value.replace(/"seed": \d+/, `"seed": ${1_000 + Math.floor(random() * 1e6)}`);
  else input.value = `Words ${Math.floor(random() * 1e6)}`;
  input.dispatchEvent(new Event('input', { bubbles: true }));
}

it('fifty steps in fields of every kind are taken back one by one, wherever the focus is', async () => {
  const root = document.body.appendChild(document.createElement('div'));
  levelEditor.open(freshLevel('Walk', 'Fifty steps.'), false);
  await act(() => render(<Host />, root));
  for (const details of root.querySelectorAll('details')) {
    details.open = true;
    await act(() => void details.dispatchEvent(new Event('toggle')));
  }
  const present = (): Level =>
    (levelEditor.draft() as NonNullable<ReturnType<typeof levelEditor.draft>>).history.present;
  const pastCount = (): number => levelEditor.draft()?.history.past.length ?? 0;
  const random = seededRandom(18);
  const visited: { readonly before: Level; readonly kind: Kind; readonly selector: string }[] = [];
  const kinds = Object.keys(KINDS) as Kind[];
  for (let tries = 0; visited.length < STEPS && tries < 2_000; tries += 1) {
    // Text comes first, as long as the level can be ridden.
    const kind = visited.length < 3 ? 'json' : (kinds[tries % kinds.length] as Kind);
    document.querySelector<HTMLElement>(':focus')?.blur();
    // Something else is opened now and then, so that every list has its turn.
    const things = [...root.querySelectorAll<HTMLElement>('[data-thing]:not(.open) .thing-head')];
    if (tries % 3 === 0) await act(() => things[Math.floor(random() * things.length)]?.click());
    const fields = [...root.querySelectorAll<HTMLElement>(KINDS[kind])];
    const field = fields[Math.floor(random() * fields.length)];
    if (field === undefined) continue;
    // Text is taken over only as a level that can be ridden.
    if (kind === 'json' && !parseLevel(present()).ok) continue;
    const [before, count] = [present(), pastCount()];
    await act(() => use(kind, field, random));
    // Typed text is read once the hands rest.
    if (kind === 'json')
      await expect.poll(() => root.querySelector('textarea[data-unread]'), { timeout: 20_000 }).toBeNull();
    if (pastCount() === count + 1) visited.push({ before, kind, selector: KINDS[kind] });
    // A further step of the same gesture belongs to the one before.
    else expect(pastCount()).toBe(count);
  }
  expect(visited).toHaveLength(STEPS);
  expect(kinds.filter((kind) => !visited.some((step) => step.kind === kind))).toEqual([]);
  for (const { before, selector } of visited.toReversed()) {
    const focused =
      root.querySelector<HTMLElement>(selector) ?? root.querySelector<HTMLElement>('[data-level-title]');
    focused?.focus();
    const press = new KeyboardEvent('keydown', { key: 'z', ctrlKey: true, bubbles: true, cancelable: true });
    await act(() => void focused?.dispatchEvent(press));
    expect(press.defaultPrevented).toBe(true);
    expect(present()).toBe(before);
    expect(root.querySelector<HTMLInputElement>('[data-level-title]')?.value).toBe(before.title);
    for (const input of root.querySelectorAll<HTMLInputElement>('[data-thing] input[type="number"]'))
      expect(input.value).not.toBe('');
  }
  expect(pastCount()).toBe(0);
  levelEditor.close();
  render(null, root);
});
