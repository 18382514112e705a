/** The bench in feet: what is read, what is typed, and what a level is kept in. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, expect, it } from 'vitest';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import { Editor } from '../../../src/features/bench/editor.tsx';
import { freshLevel } from '../../../src/features/bench/fresh.ts';
import { levelEditor, useDraft } from '../../../src/features/bench/levelEditor.ts';
import { Units } from '../../../src/features/bench/say.ts';
import type { BenchServices } from '../../../src/features/bench/services.ts';
import { initialState } from '../../../src/state/reduce.ts';
import { words } from '../../../src/words/words.ts';

const say = words('bench');
const state = initialState([], DEFAULT_KEYS, '#bench/edit');
// Nobody plans or keeps here.
const services = { plan: () => new Promise(() => undefined) } as unknown as BenchServices;

function Host({ units }: { readonly units: 'metric' | 'imperial' }) {
  const draft = useDraft();
  if (draft === null) return null;
  return (
    <Units.Provider value={units}>
      <Editor {...{ draft, state, services }} send={() => undefined} />
    </Units.Provider>
  );
}

/** The bench with a fresh road whose pitch is open. */
async function open(units: 'metric' | 'imperial'): Promise<HTMLElement> {
  const root = document.body.appendChild(document.createElement('div'));
  levelEditor.open(freshLevel('Home', 'One rise.'), false);
  levelEditor.change({ selection: { list: 'pieces', index: 1 } });
  await act(() => render(<Host units={units} />, root));
  return root;
}

afterEach(() => document.body.replaceChildren());

const pitchM = (): number => {
  const piece = levelEditor.draft()?.history.present.pieces[1];
  return piece?.kind === 'pitch' ? piece.lengthM : Number.NaN;
};
const length = (root: HTMLElement) => root.querySelector<HTMLInputElement>('[data-field="lengthM"]')!;
const typeIn = (field: HTMLInputElement, text: string) =>
  act(() => {
    field.value = text;
    field.dispatchEvent(new Event('input', { bubbles: true }));
  });

it('is read in feet and miles, and says that metres are kept', async () => {
  const root = await open('imperial');
  // 80 m are 262.47 ft, 320 m 0.1988 miles: the international foot of 0.3048 m.
  expect(length(root).value).toBe('262');
  expect(root.querySelector('[data-thing="pieces[1]"]')?.textContent).toContain('262 ft, 7 %');
  expect(root.querySelector('[data-road-sum]')?.textContent).toContain('0.2 mi');
  expect(root.textContent).toContain(say('edit-wholeMetres'));
  const metric = await open('metric');
  expect(length(metric).value).toBe('80');
  expect(metric.textContent).not.toContain(say('edit-wholeMetres'));
});

it('takes feet that are typed as whole metres, and leaves what is typed alone until the field is left', async () => {
  const root = await open('imperial');
  const field = length(root);
  await act(() => field.focus());
  for (const [text, metres] of [
    ['1', 80],
    ['12', 4],
    ['123', 37],
  ] as const) {
    await typeIn(field, text);
    expect([field.value, pitchM()]).toEqual([text, metres]);
  }
  await act(() => field.blur());
  // 37 m are 121.4 ft.
  expect(field.value).toBe('121');
});

it('puts back what was typed when it is undone from elsewhere', async () => {
  const root = await open('imperial');
  const field = length(root);
  await act(() => field.focus());
  await typeIn(field, '100');
  expect(pitchM()).toBe(30);
  await act(() => levelEditor.undo());
  expect([field.value, pitchM()]).toEqual(['262', 80]);
});

it('has limits in feet between which every length can be kept', async () => {
  const root = await open('imperial');
  const field = length(root);
  // One metre is the least: 3.28 ft.
  expect(field.min).toBe('4');
  await typeIn(field, '3');
  expect([field.getAttribute('aria-invalid'), pitchM()]).toEqual(['true', 80]);
  await typeIn(field, field.max);
  expect(field.getAttribute('aria-invalid')).toBe('false');
  expect(levelEditor.draft()?.history.present.pieces[1]).toMatchObject({ lengthM: 20_000 - 240 });
});
