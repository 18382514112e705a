import { afterEach, describe, expect, it, vi } from 'vitest';
import { paperColour } from '../../src/app/theme.ts';

afterEach(() => {
  vi.unstubAllGlobals();
  document.documentElement.removeAttribute('style');
});

describe('the colour of the paper', () => {
  it('is what style sheets say, and empty where none has come', () => {
    expect(paperColour()).toBe('');
    document.documentElement.style.setProperty('--paper', ' #fff8ec');
    expect(paperColour()).toBe('#fff8ec');
  });

  it('is not known where the browser does not say: the game starts all the same', () => {
    vi.stubGlobal('getComputedStyle', () => {
      throw new Error('not here');
    });
    expect(paperColour()).toBeNull();
  });
});
