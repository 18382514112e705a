/** The page of the bench while what it is made of is fetched. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, it } from 'vitest';
import { initialState } from '../../../src/state/reduce.ts';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import { freshLevel } from '../../../src/features/bench/fresh.ts';
import { createLevelEditor } from '../../../src/features/bench/levelEditor.ts';
import { benchPage } from '../../../src/features/bench/page.tsx';
import { words } from '../../../src/words/words.ts';
import { noServices } from '../../app/noServices.ts';

it('says that the bench could not be fetched, instead of setting it up for ever', async () => {
  const root = document.createElement('div');
  const state = initialState([], DEFAULT_KEYS, '#bench');
  const services = { ...noServices, bench: () => Promise.reject(new Error('not fetched')) };
  await act(() =>
    render(
      benchPage(state, () => undefined, services),
      root,
    ),
  );
  await expect.poll(() => root.textContent).toContain(words('bench')('openFailed'));
  expect(root.textContent).not.toContain(words('bench')('opening'));
});

it('a level that could not be kept says why until it is kept', () => {
  const bench = createLevelEditor();
  const level = freshLevel('Home to the mill', 'One rise.');
  bench.open(level, false);
  bench.markNotKept('disk-full');
  expect(bench.draft()?.notKept).toBe('disk-full');
  bench.markKept(level, level);
  expect(bench.draft()?.notKept).toBeNull();
  bench.markNotKept('hangs');
  bench.open(level, true);
  expect(bench.draft()?.notKept).toBeNull();
});
