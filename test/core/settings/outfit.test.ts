/** The rider's colours: what is kept of them, what the picture is handed, and what one can see of it. */
import { describe, expect, it, test } from 'vitest';
import { riderTones } from '../../../src/game/paint/palette.ts';
import { DEFAULT_KEYS } from '../../../src/core/settings/settings.ts';
import {
  FRAME_TONES,
  FRAMES,
  HELMETS,
  JERSEY_CLOTHS,
  JERSEYS,
  outfitBeside,
  outfitLook,
  PATTERNS,
  readOutfit,
  USUAL_OUTFIT,
} from '../../../src/core/settings/outfit.ts';
import { readChoices, withEarly } from '../../../src/core/settings/kept.ts';
import { defaultSettings } from '../../../src/core/settings/settings.ts';

describe('a kit that was kept', () => {
  test.each([undefined, null, 7, 'red', [], {}, { jersey: 'rocket', pattern: 3 }])(
    'of %j becomes the usual one',
    (value) => {
      expect(readOutfit(value)).toEqual(USUAL_OUTFIT);
    },
  );

  it('comes back as it was chosen, each part by itself', () => {
    const kit = { jersey: 'violet', pattern: 'dots', helmet: 'crest', frame: 'plum' } as const;
    expect(readOutfit(JSON.parse(JSON.stringify(kit)))).toEqual(kit);
    expect(readOutfit({ ...kit, helmet: 'antlers' })).toEqual({ ...kit, helmet: USUAL_OUTFIT.helmet });
  });

  it('is part of the settings, and settings from before there were kits keep everything else', () => {
    const settings = {
      ...defaultSettings(DEFAULT_KEYS),
      muted: true,
      kit: { ...USUAL_OUTFIT, jersey: 'blue' },
    };
    expect(readChoices({ settings }, DEFAULT_KEYS)?.settings.kit.jersey).toBe('blue');
    const older = Object.fromEntries(Object.entries(settings).filter(([name]) => name !== 'kit'));
    const read = readChoices({ settings: older }, DEFAULT_KEYS)?.settings;
    expect([read?.muted, read?.kit]).toEqual([true, USUAL_OUTFIT]);
  });
});

describe('a choice made before the kept ones have come back', () => {
  const untouched = defaultSettings(DEFAULT_KEYS);
  const kept = { ...untouched, muted: true, kit: { ...USUAL_OUTFIT, jersey: 'blue' } } as const;

  it('stays, and the rest is as it was kept', () => {
    const now = { ...untouched, kit: { ...USUAL_OUTFIT, jersey: 'violet' } } as const;
    expect(withEarly(kept, untouched, now)).toEqual({ ...kept, kit: now.kit });
  });

  it('is nothing where nothing was changed', () => {
    expect(withEarly(kept, untouched, untouched)).toBe(kept);
  });
});

/** Lightness differs and so does the tone: two cloths must not look alike (distance in sRGB, of 441). */
function distance(a: string, b: string): number {
  const part = (hex: string, i: number): number => Number.parseInt(hex.slice(1 + i * 2, 3 + i * 2), 16);
  return Math.hypot(...[0, 1, 2].map((i) => part(a, i) - part(b, i)));
}

describe('what the picture is handed', () => {
  it('leaves everybody who has not chosen as they were', () => {
    expect(riderTones(false, outfitLook(USUAL_OUTFIT))).toMatchObject({
      jersey: '#e2552c',
      frame: '#22303a',
    });
    expect(riderTones(true, outfitLook(USUAL_OUTFIT))).toMatchObject({ jersey: '#e2552c', frame: '#2f6f78' });
  });

  it('differs for every choice', () => {
    const looks = JERSEYS.flatMap((jersey) =>
      PATTERNS.flatMap((pattern) =>
        HELMETS.flatMap((helmet) =>
          FRAMES.map((frame) => JSON.stringify(outfitLook({ jersey, pattern, helmet, frame }))),
        ),
      ),
    );
    expect(new Set(looks).size).toBe(JERSEYS.length * PATTERNS.length * HELMETS.length * FRAMES.length);
  });

  it('has cloths that can be told apart, each with a darker fold and a lighter edge', () => {
    const tones = JERSEYS.map((one) => JERSEY_CLOTHS[one].tone);
    for (const [i, a] of tones.entries())
      for (const b of tones.slice(i + 1)) expect(distance(a, b)).toBeGreaterThan(70);
    for (const { tone, dark, light } of Object.values(JERSEY_CLOTHS)) {
      expect(distance(dark, '#000000')).toBeLessThan(distance(tone, '#000000'));
      expect(distance(light, '#ffffff')).toBeLessThan(distance(tone, '#ffffff'));
    }
    const frames = Object.values(FRAME_TONES).map(({ tone }) => tone);
    for (const [i, a] of frames.entries())
      for (const b of frames.slice(i + 1)) expect(distance(a, b)).toBeGreaterThan(60);
  });

  it('tells two riders apart who chose the same', () => {
    for (const jersey of JERSEYS) expect(outfitBeside({ ...USUAL_OUTFIT, jersey }).jersey).not.toBe(jersey);
  });
});
