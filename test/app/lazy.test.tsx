/** Pages that come late: drawn by themselves when they are there, and no choice of the rider is touched by it. */
import { render } from 'preact';
import { expect, it } from 'vitest';
import { lazyPage } from '../../src/app/lazy.tsx';
import { DEFAULT_KEYS } from '../../src/core/settings/settings.ts';
import { initialState } from '../../src/state/reduce.ts';
import type { Action } from '../../src/state/store.ts';
import type { Page } from '../../src/ui/parts.tsx';
import type { Services } from '../../src/app/services.ts';
import { common } from '../../src/words/common.ts';
import { noServices } from './noServices.ts';

const state = initialState([], DEFAULT_KEYS, '');

it('a page that comes late is drawn without an action, for every action can be written to the device', async () => {
  let come = (_: Page<Services>): void => undefined;
  const late = new Promise<Page<Services>>((resolve) => {
    come = resolve;
  });
  const sent: Action[] = [];
  const root = document.createElement('div');
  const { page } = lazyPage('levels', () => late);
  render(
    page(state, (action) => sent.push(action), noServices),
    root,
  );
  expect(root.textContent).toContain(common('coming-loading'));
  come(() => <p>Here it is.</p>);
  await expect.poll(() => root.textContent).toBe('Here it is.');
  expect(sent).toEqual([]);
});

it('a page that did not come is asked for again at the push of a button', async () => {
  let asked = 0;
  const root = document.createElement('div');
  const { page } = lazyPage('levels', () => {
    asked += 1;
    return asked === 1 ? Promise.reject(new Error('no network')) : Promise.resolve(() => <p>Here it is.</p>);
  });
  render(
    page(state, () => undefined, noServices),
    root,
  );
  await expect.poll(() => root.textContent).toContain(common('coming-failed'));
  root.querySelector<HTMLButtonElement>('.button.strong')?.click();
  await expect.poll(() => root.textContent).toBe('Here it is.');
});
