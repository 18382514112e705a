/** The gear check as a person finds it, with outcomes that were really ridden on a bundled road. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { gearCandidates, gearChart, gearOutcome } from '../../../src/core/coach/gearCheck.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import { parseLevelText } from '../../../src/core/level/parse.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../../src/core/model/types.ts';
import { createFormat } from '../../../src/words/format.ts';
import { chartLayout, differentGears } from '../../../src/features/gearcheck/chartLayout.ts';
import { GearCheckPage } from '../../../src/features/gearcheck/gearCheck.tsx';
import type { GearCheckProps, GearQuestion, GearTold } from '../../../src/features/gearcheck/services.ts';
import { gearCheckWords as words } from '../../../src/features/gearcheck/words.ts';

const format = createFormat('metric', 'en-GB');
const bike = bikeById('road-2x11') as Bike;
const rider = riderById('adult-new') as Rider;

function levelById(id: string): Level {
  const parsed = parseLevelText(readFileSync(join(process.cwd(), `levels/${id}.json`), 'utf8'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.level;
}

/** A bundled road whose pitch is long and steep enough for this rider's lowest gear to be too hard. */
const bundled = levelById('one-pitch-announced');
const level: Level = {
  ...bundled,
  pieces: bundled.pieces.map((piece) =>
    piece.kind === 'pitch' ? { ...piece, lengthM: 160, slopeRatio: 0.1 } : piece,
  ),
};
const other = levelById('three-little-hills');
const mine: Level = { ...level, id: 'sunday', title: 'Sunday' };
const own = gearOutcome(courseOfLevel(level), bike, rider);
const candidates = [...gearCandidates(courseOfLevel(level), bike, rider)];

interface Asked {
  readonly question: GearQuestion;
  readonly told: GearTold;
  givenUp: boolean;
}

let app: HTMLElement;
let asked: Asked[] = [];
let chosen: string[] = [];
let taken: Bike[] = [];

const onCompute: GearCheckProps['onCompute'] = (question, told) => {
  const one: Asked = { question, told, givenUp: false };
  asked.push(one);
  return () => {
    one.givenUp = true;
  };
};

async function show(change: Partial<GearCheckProps> = {}): Promise<void> {
  const props: GearCheckProps = {
    bike,
    rider,
    levels: [level, other],
    ownLevels: [mine],
    chosenLevelId: level.id,
    onCompute,
    onChooseLevel: (id) => chosen.push(id),
    onTakeBike: (one) => taken.push(one),
    words,
    format,
    ...change,
  };
  if (!document.body.contains(app)) {
    document.body.innerHTML = '<div id="app"></div>';
    app = document.getElementById('app') as HTMLElement;
  }
  await act(() => render(<GearCheckPage {...props} />, app));
}

const heard = (tell: (told: GearTold) => void): Promise<void> =>
  act(() => tell((asked.at(-1) as Asked).told)) as Promise<void>;
const hearAll = async (): Promise<void> => {
  await heard((told) => told.onOwn(own));
  await heard((told) => candidates.forEach(told.onCandidate));
  await heard((told) => told.onDone());
};
const text = (selector: string): string =>
  (app.querySelector(selector)?.textContent ?? '').replaceAll('\u00a0', ' ');
const all = <Kind extends Element = HTMLElement>(selector: string): Kind[] => [
  ...app.querySelectorAll<Kind>(selector),
];
const choose = async (select: HTMLSelectElement, value: string): Promise<void> => {
  select.value = value;
  await act(() => void select.dispatchEvent(new Event('change', { bubbles: true })));
};

app = document.createElement('div');

afterEach(() => {
  render(null, app);
  app.remove();
  asked = [];
  chosen = [];
  taken = [];
});

describe('the answer', () => {
  it('says first how slow the legs get, where, and what other parts would do', async () => {
    await show();
    expect(asked[0]?.question).toEqual({ level, seed: level.seed, bike, rider });
    expect(text('.gear-answer')).toBe(words.answer.working);
    await heard((told) => told.onOwn(own));
    expect(text('[data-answer="lowest"]')).toMatch(
      /^Your lowest gear 34 × 28 lets your legs fall to \d+ a minute/,
    );
    expect(text('[data-answer="lowest"]')).toContain(words.answer.looking);
    await hearAll();
    const worst = Math.round(own.belowBand[0]!.extremeRpm);
    const { outcome: with30 } = candidates.find(
      ({ changed, outcome }) => changed === 'cassette' && outcome.sprocketsTeeth.at(-1) === 30,
    )!;
    expect(text('[data-answer="lowest"]')).toBe(
      `Your lowest gear 34 × 28 lets your legs fall to ${worst} a minute on the 10 % climb at ${Math.round(own.belowBand[0]!.fromM)} m. ` +
        `With 34 × 30 it would be ${Math.round(with30.lowestCadenceRpm)}. To stay in your band here it takes 30 × 28.`,
    );
  });

  it('says so where nothing is missing', async () => {
    const easy = gearOutcome(courseOfLevel(level), bike, riderById('adult-strong') as Rider);
    expect(easy.belowBand).toEqual([]);
    await show();
    await heard((told) => told.onOwn(easy));
    await heard((told) => told.onDone());
    expect(text('[data-answer="lowest"]')).toBe(words.answer.enough('34 × 28'));
    expect(text('.gear-road')).toContain(words.profile.nowhere);
    expect(all('[data-stretch]')).toEqual([]);
  });

  it('admits when no parts help', async () => {
    await show();
    await heard((told) => told.onOwn(own));
    await heard((told) => told.onDone());
    expect(text('[data-answer="lowest"]')).toContain(words.answer.none);
  });

  it('can be asked again after a failure', async () => {
    await show();
    await heard((told) => told.onFailed());
    expect(text('.gear-answer')).toContain(words.answer.failed);
    await act(() => app.querySelector<HTMLButtonElement>('.gear-answer button')?.click());
    expect(asked.length).toBe(2);
    expect(asked[0]?.givenUp).toBe(true);
    expect(text('.gear-answer')).toBe(words.answer.working);
  });
});

describe('the road', () => {
  it('marks each stretch below the band with its cadence', async () => {
    await show();
    await hearAll();
    expect(all('[data-stretch="below"]').length).toBe(own.belowBand.filter((s) => s.seconds >= 1.5).length);
    expect(text('[data-stretch="below"]')).toBe(`${Math.round(own.belowBand[0]!.extremeRpm)}/min`);
  });

  it('gives up the old question when another road is chosen, and hears nothing more of it', async () => {
    await show();
    await choose(app.querySelector('.gear-level select') as HTMLSelectElement, other.id);
    expect(chosen).toEqual([other.id]);
    await show({ chosenLevelId: other.id });
    expect(asked.map(({ question, givenUp }) => [question.level.id, givenUp])).toEqual([
      [level.id, true],
      [other.id, false],
    ]);
    await act(() => asked[0]?.told.onOwn(own));
    expect(text('.gear-answer')).toBe(words.answer.working);
  });

  it('offers own roads in a group of their own, and falls back to the first', async () => {
    await show({ chosenLevelId: 'gone' });
    expect(asked[0]?.question.level.id).toBe(level.id);
    const groups = all<HTMLOptGroupElement>('optgroup').map(({ label, children }) => [
      label,
      children.length,
    ]);
    expect(groups).toEqual([
      [words.ladder, 1],
      [words.children, 1],
      [words.own, 1],
    ]);
  });
});

describe('other parts', () => {
  it('shows the best five under the own bike, then all, and hands on what is tried', async () => {
    await show();
    await hearAll();
    expect(all('[data-parts]').length).toBe(6);
    expect(text('[data-parts="own"]')).toContain(words.candidates.yours);
    await act(() => app.querySelector<HTMLButtonElement>('[aria-expanded]')?.click());
    expect(all('[data-parts]').length).toBe(1 + candidates.length);
    const row = app.querySelector('[data-parts="34/50 11-13-15-17-19-21-23-25-27-30-34"]');
    expect(row?.textContent).toContain('39 teeth');
    await act(() => row?.querySelector('button')?.click());
    expect(taken).toEqual([
      { ...bike, id: 'own', sprocketsTeeth: [11, 13, 15, 17, 19, 21, 23, 25, 27, 30, 34] },
    ]);
  });

  it('begins anew when the own bike comes again', async () => {
    await show();
    await hearAll();
    await heard((told) => told.onOwn(own));
    expect(all('[data-parts]').length).toBe(1);
  });

  it('always sends to a mechanic and to the documents', async () => {
    await show();
    expect(text('[data-gear-candidates]')).toContain(words.caution);
  });

  it('tells gains before costs, and both in one sentence', () => {
    expect(words.candidates.trade(['easier-lowest', 'loses-highest', 'bigger-steps'])).toBe(
      'An easier lowest gear; but the hardest gear is lost and the steps between gears get bigger.',
    );
    expect(words.candidates.trade(['smaller-steps'])).toBe('Smaller steps between gears.');
    expect(words.candidates.trade([])).toBe('Much like your bike.');
  });
});

describe('all gears', () => {
  it('tells apart by shape what overlaps and what crosses', async () => {
    await show();
    const shape = (gear: string): string | null =>
      app.querySelector(`[data-gear="${gear}"]`)?.getAttribute('data-shape') ?? null;
    expect(all('[data-gear]').length).toBe(22);
    expect([shape('34x28'), shape('34x17'), shape('34x11'), shape('50x28')]).toEqual([
      'single',
      'twin',
      'crossed',
      'crossed',
    ]);
    expect(all('.gear-chart + .gear-legend li').length).toBe(3);
    expect(all('.gear-scroll tbody tr').length).toBe(22);
  });

  it('keeps equal proportions equally far apart, inside the paper, at any width', () => {
    const rows = gearChart(buildMachine(bike, rider));
    expect(differentGears(rows)).toBeLessThan(rows.length);
    for (const width of [320, 1100]) {
      const { marks } = chartLayout(rows, width);
      const x = (ring: number, sprocket: number): number =>
        marks.find(({ row }) => row.gear.ringTeeth === ring && row.gear.sprocketTeeth === sprocket)!.x;
      // From ring to ring is the same step in every sprocket.
      expect(x(50, 28) - x(34, 28)).toBeCloseTo(x(50, 11) - x(34, 11), 6);
      for (const mark of marks) {
        expect(mark.x).toBeGreaterThan(0);
        expect(mark.x).toBeLessThan(width);
      }
    }
  });
});

describe('roll-out', () => {
  const kidsBike = bikeById('kids-24-1x8') as Bike;

  it('compares the hardest gear with a chosen limit and says whose it was', async () => {
    await show();
    const select = app.querySelector('.gear-rollout select') as HTMLSelectElement;
    expect(text('[data-rollout]')).toBe('');
    await choose(select, 'under-14-2023');
    expect(text('[data-rollout]')).toMatch(
      /more than the limit of 6\.45 m\. The hardest gear that keeps it is 50 × 17/,
    );
    expect(text('.gear-rollout')).toContain('2023');
    await choose(select, 'juniors-2022');
    expect(text('.gear-rollout')).toContain('until 2022-12-31');
  });

  it('takes the limit of a club, with comma or point, and tells what it cannot read', async () => {
    await show({ bike: kidsBike });
    await choose(app.querySelector('.gear-rollout select') as HTMLSelectElement, 'own');
    const input = app.querySelector('.gear-rollout input') as HTMLInputElement;
    const type = (value: string): Promise<void> =>
      act(() => {
        input.value = value;
        input.dispatchEvent(new Event('input', { bubbles: true }));
      }) as Promise<void>;
    await type('6,05');
    expect(text('[data-rollout]')).toBe(words.rollOut.within('6.05 m'));
    await type('far');
    expect(text('.gear-rollout .field-problem')).toBe(words.rollOut.ownUnreadable);
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(text('[data-rollout]')).toBe('');
    await type('2');
    expect(text('[data-rollout]')).toContain('2.00 m');
  });
});
