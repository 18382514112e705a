/**
 * Contrast of every pair of colour tokens that meet, in both themes, worked out from the style sheets as they are
 * (WCAG 2.2 relative luminance). Pairs of one rule are found by reading; those that meet across rules are listed.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const folder = join(import.meta.dirname, '../../src');
const read = (file: string): string =>
  readFileSync(join(folder, file), 'utf8').replaceAll(/\/\*[^]*?\*\//g, '');
const sheets = [
  'ui/theme',
  'ui/parts',
  'ui/dialogs',
  'features/start/start',
  'ui/pages',
  'features/ride/ride',
  'features/gearcheck/gearcheck',
  'features/bike/ownbike',
  'features/progress/progress',
  'features/levels/freeride',
  'features/handover/handover',
  'features/handover/tablets',
  'input/pads',
].map((name) => read(`${name}.css`));
const themeSheet = sheets[0] as string;

function tokensOf(selector: string): Map<string, string> {
  const at = themeSheet.indexOf(`${selector} {`);
  const block = themeSheet.slice(at, themeSheet.indexOf('\n}', at));
  return new Map(
    [...block.matchAll(/--([\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [
      name as string,
      value as string,
    ]),
  );
}

const indoor = tokensOf(':root');
const themes = {
  indoor,
  field: new Map([...indoor, ...tokensOf(":root[data-theme='field']")]),
};

function colour(tokens: ReadonlyMap<string, string>, name: string): string {
  const value = tokens.get(name) ?? `no token ${name}`;
  const other = /^var\(--([\w-]+)\)$/.exec(value);
  if (other !== null) return colour(tokens, other[1] as string);
  if (!/^#[0-9a-f]{6}$/.test(value)) throw new Error(`--${name} is no plain colour: ${value}`);
  return value;
}

function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.03928 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].toSorted((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

/** Text and what it lies on: found where one rule says both. */
const found = new Set<string>();
for (const sheet of sheets) {
  for (const [, body] of sheet.matchAll(/\{([^{}]*)\}/g)) {
    const ink = /(?:^|[\s;])color:\s*var\(--([\w-]+)\)/.exec(body as string)?.[1];
    const grounds = /background:\s*([^;]+);/.exec(body as string)?.[1] ?? '';
    for (const [, ground] of grounds.matchAll(/var\(--([\w-]+)\)/g)) {
      if (ink !== undefined && ground !== 'grain') found.add(`${ink} on ${ground}`);
    }
  }
}

/** Text on a ground that another rule paints. */
const across = [
  'ink on sky',
  'ink on sky-low',
  'ink on cloud',
  'ink on paper-shade',
  'ink-soft on paper',
  'rider-deep on paper',
  'on-ground on ground',
  'on-ground-soft on ground',
  'ink on sand',
];

/** Shapes that carry meaning and what they lie on; frames of fields among them. */
const shapes = [
  'ink on sand',
  'ink on road',
  'ink on leaf',
  'ink on rider',
  'rider on paper',
  'sand-dark on paper',
  'rider-deep on sky-low',
  'rider-deep on paper',
  'leaf-pale on hero-ground',
  'road on hero-ground',
  'ink on hill-near',
  'ink on attention',
];

describe.each(Object.entries(themes))('the %s theme', (_, tokens) => {
  const ratio = (pair: string): number => {
    const [over, under] = pair.split(' on ') as [string, string];
    return contrast(colour(tokens, over), colour(tokens, under));
  };

  it.each([...found, ...across].filter((pair, i, all) => all.indexOf(pair) === i))(
    'text %s has 4.5:1 or more',
    (pair) => {
      expect(ratio(pair)).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each(shapes)('shape %s has 3:1 or more', (pair) => {
    expect(ratio(pair)).toBeGreaterThanOrEqual(3);
  });
});

describe('the style sheets', () => {
  it('have pairs to look at', () => {
    expect(found.size).toBeGreaterThanOrEqual(6);
  });

  it('black on white is 21 and a colour on itself 1', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#e2552c', '#e2552c')).toBe(1);
  });

  it('keep colours in the theme; elsewhere only shadows and the veil behind a dialog are written out', () => {
    const loose = sheets.slice(1).flatMap((sheet) => sheet.match(/#[0-9a-f]{3,8}\b/gi) ?? []);
    expect(loose).toEqual([]);
  });
});
