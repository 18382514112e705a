/** The page of the bench while what it is made of is fetched. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { expect, it } from 'vitest';
import { initialState } from '../../../src/state/store.ts';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import { benchPage } from '../../../src/features/bench/page.tsx';
import { benchWords } from '../../../src/features/bench/words.ts';
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
  await expect.poll(() => root.textContent).toContain(benchWords.openFailed);
  expect(root.textContent).not.toContain(benchWords.opening);
});
