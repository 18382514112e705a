/** The face that children ride by; that it is enough to ride by is seen in `test/core/coach/byFace.test.ts`. */
import { describe, expect, it } from 'vitest';
import { buildFace, type FaceMood, moodOf } from '../../src/game/hud/face.ts';
import { frameWith } from '../audio/frames.ts';

describe('the face of the legs', () => {
  it('strains, smiles and whirrs with the cadence, and rests with the feet', () => {
    const band = {
      bandLowRpm: 65,
      bandHighRpm: 85,
      phase: 'riding',
      pressure: 'steady',
      chainOn: true,
    } as const;
    const at = (cadenceRpm: number, more: Parameters<typeof frameWith>[0] = {}): FaceMood =>
      moodOf(frameWith({ ...band, cadenceRpm, ...more }));
    expect([40, 63, 75, 87, 110].map((rpm) => at(rpm))).toEqual([
      'straining',
      'smiling',
      'smiling',
      'smiling',
      'whirring',
    ]);
    expect([
      at(40, { pressure: 'coast' }),
      at(40, { phase: 'foot-down' }),
      at(110, { chainOn: false }),
    ]).toEqual(['resting', 'resting', 'resting']);
    expect(at(40, { phase: 'finished' })).toBe('smiling');
  });

  it('has shapes of its own for each mood, and says nothing to those who listen', () => {
    const place = document.createElement('div');
    const show = buildFace(place);
    show('whirring');
    const svg = place.querySelector('svg');
    expect(svg?.getAttribute('data-mood')).toBe('whirring');
    expect(svg?.getAttribute('aria-hidden')).toBe('true');
    const shapes = [...place.querySelectorAll('g')].map((group) => group.innerHTML);
    expect(new Set(shapes).size).toBe(4);
  });
});
