/** What is handed out to other devices leads to them, and never to the computer it was made on. */
import { describe, expect, it } from 'vitest';
import { isOnlyHere, siteForOthers } from '../../../src/features/handover/site.ts';

describe('the address that is handed out', () => {
  it('is that of the page, where others can open it', () => {
    expect(siteForOthers('https://hill.example/ride/#clinic/s/1', ['http://10.0.0.2/'])).toBe(
      'https://hill.example/ride/',
    );
    expect(siteForOthers('http://192.168.1.5:4173/#x', null)).toBe('http://192.168.1.5:4173/');
  });

  it.each(['http://localhost:4173/', 'http://127.0.0.1:4173/', 'http://[::1]:4173/', 'http://127.9.9.9/'])(
    '%s is only here: the surest address of the server, or none',
    (here) => {
      expect(isOnlyHere(here)).toBe(true);
      expect(siteForOthers(`${here}#clinic`, ['http://192.168.1.5:4173/', 'http://hall.local/'])).toBe(
        'http://192.168.1.5:4173/',
      );
      for (const nothing of [[], null, {}, [7], ['javascript:alert(1)'], ['http://']])
        expect(siteForOthers(here, nothing)).toBeNull();
    },
  );
});
