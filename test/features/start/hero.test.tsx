/** The rider of the start page wears what the player has chosen. */
import { render } from 'preact';
import { beforeEach, describe, expect, it } from 'vitest';
import { FRAME_TONES, JERSEY_CLOTHS, type Outfit, USUAL_OUTFIT } from '../../../src/core/settings/outfit.ts';
import { Hero } from '../../../src/features/start/hero.tsx';

let host: HTMLElement;

beforeEach(() => {
  host = document.createElement('div');
  document.body.replaceChildren(host);
});

function riderIn(kit: Outfit): SVGGElement {
  render(<Hero kit={kit} />, host);
  return host.querySelector('.rider') as SVGGElement;
}

describe('the rider of the start page', () => {
  it('wears jersey and frame as chosen', () => {
    const { style } = riderIn({ ...USUAL_OUTFIT, jersey: 'violet', frame: 'plum' });
    expect(style.getPropertyValue('--jersey')).toBe(JERSEY_CLOTHS.violet.tone);
    expect(style.getPropertyValue('--jersey-dark')).toBe(JERSEY_CLOTHS.violet.dark);
    expect(style.getPropertyValue('--frame')).toBe(FRAME_TONES.plum.tone);
  });

  it('follows the theme as long as nothing is chosen', () => {
    const { style } = riderIn(USUAL_OUTFIT);
    expect(style.getPropertyValue('--jersey')).toBe('var(--rider)');
    expect(style.getPropertyValue('--frame')).toBe('var(--ink)');
  });

  it('shows each pattern and each helmet differently', () => {
    const pictures = (['plain', 'band', 'dots'] as const).flatMap((pattern) =>
      (['holes', 'star', 'crest'] as const).map(
        (helmet) => riderIn({ ...USUAL_OUTFIT, pattern, helmet }).innerHTML,
      ),
    );
    expect(new Set(pictures).size).toBe(9);
  });
});
