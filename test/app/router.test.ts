/** The address bar follows the pages, and a browser that lets nobody write there stops no page. */
import { afterEach, expect, it, vi } from 'vitest';
import { joinRouter } from '../../src/app/router.ts';
import { DEFAULT_KEYS } from '../../src/core/settings/settings.ts';
import { initialState } from '../../src/state/reduce.ts';

afterEach(() => vi.restoreAllMocks());

it('goes on where the browser refuses an address, and writes the next one', () => {
  const root = document.createElement('div');
  root.innerHTML = '<h1>Roads</h1>';
  const first = initialState([], DEFAULT_KEYS, '');
  const router = joinRouter(root, first, () => undefined);
  const push = vi.spyOn(history, 'pushState').mockImplementationOnce(() => {
    throw new DOMException('too many', 'SecurityError');
  });
  router.follow({ ...first, view: 'levels' });
  expect(document.title).toContain('Roads');
  router.follow({ ...first, view: 'bike' });
  expect(push).toHaveBeenLastCalledWith(null, '', '#bike');
});
