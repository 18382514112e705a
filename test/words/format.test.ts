/** Numbers as people of a place write them. */
import { describe, expect, it } from 'vitest';
import { createFormat } from '../../src/words/format.ts';
import { keyName } from '../../src/words/common.ts';

describe('formats', () => {
  it('36 km/h is 10 m/s and 22 mph', () => {
    expect(createFormat('metric', 'en').speed(10)).toBe('36 km/h');
    expect(createFormat('imperial', 'en').speed(10)).toBe('22 mph');
  });

  it('a German kilometre has a comma, an English one a point', () => {
    expect(createFormat('metric', 'de').road(1240)).toBe('1,2 km');
    expect(createFormat('metric', 'en').road(1240)).toBe('1.2 km');
    expect(createFormat('imperial', 'en').road(1609.344)).toBe('1.0 mi');
  });

  it('short ways are whole metres or feet', () => {
    expect(createFormat('metric', 'en').distance(40.4)).toBe('40 m');
    expect(createFormat('imperial', 'en').distance(100)).toBe('328 ft');
    expect(createFormat('metric', 'en').distance(-0.3)).toBe('0 m');
  });

  it('a slope of 0.08 is 8 %', () => {
    expect(createFormat('metric', 'en').percent(0.08)).toBe('8 %');
  });

  it('a number below nought has a minus, not a hyphen, in every language', () => {
    for (const locale of ['en', 'de', 'fr', 'es', 'nl']) {
      expect(createFormat('metric', locale).percent(-0.08)).toMatch(/^\u22128\s%$/);
      expect(createFormat('imperial', locale).number(-3)).toBe('\u22123');
    }
  });

  it.each([
    [0, '0:00'],
    [59.6, '1:00'],
    [95, '1:35'],
    [3600, '60:00'],
  ])('%d s is %s', (timeS, text) => {
    expect(createFormat('metric', 'en').time(timeS)).toBe(text);
  });

  it('a gear, a few teeth, many teeth and a tyre', () => {
    const format = createFormat('metric', 'en');
    expect(format.gear({ ringTeeth: 34, sprocketTeeth: 17 })).toBe('34\u00a0×\u00a017');
    expect(format.teeth([26, 36, 48])).toBe('26 / 36 / 48');
    expect(format.teeth([11, 13, 15, 18, 21])).toBe('11–21');
    expect(format.tyre({ tyreWidthMm: 28, beadSeatMm: 622 })).toBe('28-622');
  });

  it('keys are called by letter, arrow or name', () => {
    expect(['KeyS', 'ArrowDown', 'Space', 'Digit1'].map(keyName)).toEqual(['S', '↓', 'Space', '1']);
  });
});
