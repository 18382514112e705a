/** The gear check as a person finds it, with outcomes that were really ridden on a bundled road. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, describe, expect, it } from 'vitest';
import { carriedWords, languages } from '../../../assets/words/carry.ts';
import { gearCandidates, gearOutcome } from '../../../src/core/coach/gearCheck.ts';
import { courseOfLevel } from '../../../src/core/level/build.ts';
import type { Level } from '../../../src/core/level/schema.ts';
import { gearStairs } from '../../../src/core/model/gearStairs.ts';
import { buildMachine } from '../../../src/core/model/machine.ts';
import { bikeById, riderById } from '../../../src/core/model/presets.ts';
import type { Bike, Rider } from '../../../src/core/model/types.ts';
import { createFormat } from '../../../src/words/format.ts';
import { findHelp } from '../../../src/features/gearcheck/answerText.tsx';
import { GearCheckPage } from '../../../src/features/gearcheck/page.tsx';
import type { GearCheckProps, GearQuestion } from '../../../src/features/gearcheck/services.ts';
import { readGearQuestion } from '../../../src/features/gearcheck/question.ts';
import { stairsLayout } from '../../../src/features/gearcheck/stairsLayout.ts';
import { tradeText } from '../../../src/features/gearcheck/candidates.tsx';
import { common } from '../../../src/words/common.ts';
import { speak, take, words } from '../../../src/words/words.ts';
import { levelById } from '../../core/ride/worlds.ts';

type GearListener = Parameters<GearCheckProps['onCompute']>[1];

const say = words('gearcheck');

const format = createFormat('metric', 'en-GB');
const bike = bikeById('road-2x11') as Bike;
const rider = riderById('adult-new') as Rider;

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
  readonly told: GearListener;
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
    format,
    ...change,
  };
  if (!document.body.contains(app)) {
    document.body.innerHTML = '<div id="app"></div>';
    app = document.getElementById('app') as HTMLElement;
  }
  await act(() => render(<GearCheckPage {...props} />, app));
}

const heard = (tell: (told: GearListener) => void): Promise<void> =>
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
  it('says first where the legs settle for ever, then what other parts would do, as the table does', async () => {
    await show();
    expect(asked[0]?.question).toEqual({ level, seed: level.seed, bike, rider });
    expect(text('.gear-answer')).toBe(say('working'));
    await heard((told) => told.onOwn(own));
    const settled = Math.round(own.steady.cadenceRpm);
    expect(text('[data-answer="lowest"]')).toBe(
      `In your easiest gear 34 × 28 your legs settle at ${settled} a minute on the steepest 50 m (10 %). Your band begins at 55 there.`,
    );
    expect(text('[data-answer="help"]')).toBe(say('looking'));
    await hearAll();
    expect(text('[data-parts="own"]')).toContain(`${settled}/min`);
    const { mild, reaches } = findHelp(own, candidates);
    const gear = (of: typeof mild): string =>
      `${of?.outcome.chainringsTeeth[0]} × ${of?.outcome.sprocketsTeeth.at(-1)}`;
    expect(mild).not.toBeNull();
    expect(text('[data-answer="help"]')).toContain(
      `With ${gear(mild)} they would settle at ${Math.round(mild!.outcome.steady.cadenceRpm)}.`,
    );
    if (reaches === null) expect(text('[data-answer="help"]')).toContain('It would take a gear of');
    else
      expect(text('[data-answer="help"]')).toContain(`To stay in your band here it takes ${gear(reaches)}.`);
    expect(text('[data-answer="minute"]')).toContain(`${Math.round(own.hardest.meanRpm)} a minute`);
  });

  it('says so where nothing is missing', async () => {
    const easy = gearOutcome(courseOfLevel(bundled), bike, riderById('adult-strong') as Rider);
    expect(easy.belowBand).toEqual([]);
    await show();
    await heard((told) => told.onOwn(easy));
    await heard((told) => told.onDone());
    expect(text('[data-answer="lowest"]')).toContain('is easy enough here');
    expect(text('.gear-road')).toContain(say('profile-nowhere'));
    expect(all('[data-stretch]')).toEqual([]);
  });

  it('says what gear it would take when no parts help', async () => {
    await show();
    await heard((told) => told.onOwn(own));
    await heard((told) => told.onDone());
    expect(text('[data-answer="help"]')).toContain(
      `It would take a gear of ${own.steady.neededDevelopmentM.toFixed(2)} m a turn`,
    );
  });

  it('names the teeth of parts for a hub, whose gears keep their numbers', async () => {
    const hubBike = bikeById('town-hub-7') as Bike;
    const now = gearOutcome(courseOfLevel(level), hubBike, rider);
    const others = [...gearCandidates(courseOfLevel(level), hubBike, rider)];
    const { mild, reaches } = findHelp(now, others);
    const helping = [mild, reaches].flatMap((one) => (one === null ? [] : [format.parts(one.outcome)]));
    expect(helping.length).toBeGreaterThan(0);
    await show({ bike: hubBike });
    await heard((told) => told.onOwn(now));
    await heard((told) => others.forEach(told.onCandidate));
    await heard((told) => told.onDone());
    expect(text('[data-answer="lowest"]')).toContain('1 of 7');
    for (const parts of helping) expect(text('[data-answer="help"]')).toContain(parts);
    expect(text('[data-answer="help"]')).not.toContain('of 7');
  });

  it('says who must walk, and where power and not the gear is the limit', async () => {
    await show();
    const steady = { ...own.steady, cadenceRpm: 8, tooSteepForPower: true, neededSpeedMps: 0.7 };
    await heard((told) => told.onOwn({ ...own, mustWalk: true, walkedS: 185, steady }));
    await heard((told) => told.onDone());
    expect(text('[data-answer="lowest"]')).toMatch(/^This bike makes you walk here: .* settle at 8 a minute/);
    expect(text('[data-answer="help"]')).toContain('walking is as quick');
    expect(text('[data-parts="own"]')).toContain('on foot for 3:05');
  });

  it('can be asked again after a failure', async () => {
    await show();
    await heard((told) => told.onFailed());
    expect(text('.gear-answer')).toContain(say('failed'));
    await act(() => app.querySelector<HTMLButtonElement>('.gear-answer button')?.click());
    expect(asked.length).toBe(2);
    expect(asked[0]?.givenUp).toBe(true);
    expect(text('.gear-answer')).toBe(say('working'));
  });
});

describe('the road', () => {
  it('marks each stretch below the band with its cadence', async () => {
    await show();
    await hearAll();
    expect(all('[data-stretch="below"]').length).toBe(own.belowBand.filter((s) => s.seconds >= 1.5).length);
    expect(text('[data-stretch="below"]')).toBe(`${Math.round(own.belowBand[0]!.meanRpm)}/min`);
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
    expect(text('.gear-answer')).toBe(say('working'));
  });

  it('offers own roads in a group of their own, and falls back to the first', async () => {
    await show({ chosenLevelId: 'gone' });
    expect(asked[0]?.question.level.id).toBe(level.id);
    const groups = all<HTMLOptGroupElement>('optgroup').map(({ label, children }) => [
      label,
      children.length,
    ]);
    expect(groups).toEqual([
      [say('roads-ladder'), 1],
      [common('ladder-children'), 1],
      [say('roads-own'), 1],
    ]);
  });
});

describe('other parts', () => {
  it('shows the best five under the own bike, then all, and hands on what is tried', async () => {
    await show();
    await hearAll();
    expect(all('[data-parts]').length).toBe(6);
    expect(text('[data-parts="own"]')).toContain(say('yours'));
    await act(() => app.querySelector<HTMLButtonElement>('.gear-candidates + button')?.click());
    expect(all('[data-parts]').length).toBe(1 + candidates.length);
    const row = app.querySelector('[data-parts="34/50 11-13-15-17-19-21-23-25-27-30-34"]');
    expect(row?.textContent).toContain('39 teeth');
    expect(row?.textContent).not.toContain('Ask first');
    await act(() => row?.querySelector<HTMLButtonElement>('button[aria-label^="Try"]')?.click());
    expect(taken).toEqual([
      { ...bike, id: 'own', sprocketsTeeth: [11, 13, 15, 17, 19, 21, 23, 25, 27, 30, 34] },
    ]);
  });

  it('opens the two rides side by side in every row', async () => {
    await show();
    await hearAll();
    const row = all('[data-parts]')[1] as HTMLElement;
    await act(() => row.querySelector<HTMLButtonElement>('button[aria-expanded]')?.click());
    const table = row.querySelector('.gear-figures');
    expect(table?.querySelectorAll('tbody tr').length).toBe(7);
    expect(table?.textContent).toContain(`${Math.round(own.steady.cadenceRpm)}/min`);
    expect(row.querySelectorAll('.gear-compare svg[role="img"] path').length).toBeGreaterThan(4);
    await act(() => row.querySelector<HTMLButtonElement>('button[aria-expanded]')?.click());
    expect(row.querySelector('.gear-compare')).toBeNull();
  });

  it('says of parts that pass a limit whose limit it is, below a line of their own', async () => {
    await show();
    await hearAll();
    await act(() => app.querySelector<HTMLButtonElement>('.gear-candidates + button')?.click());
    const rows = all('.gear-candidates > tbody');
    const line = rows.findIndex((one) => one.textContent === say('askFirst'));
    expect(line).toBeGreaterThan(5);
    rows.slice(2).forEach((one, i) => {
      if (i + 2 !== line) expect(one.textContent.includes('Ask first')).toBe(i + 2 > line);
    });
    const row = app.querySelector('[data-parts="34/50 11-13-15-17-19-21-24-28-32-37-42"]');
    expect(row?.textContent).toContain(
      'a sprocket of 42 is more than the 36 that rear derailleurs of road bikes usually take (common practice, no source)',
    );
  });

  it('begins anew when the own bike comes again', async () => {
    await show();
    await hearAll();
    await heard((told) => told.onOwn(own));
    expect(all('[data-parts]').length).toBe(1);
  });

  it('always sends to a mechanic and to the documents', async () => {
    await show();
    expect(text('[data-gear-candidates]')).toContain(say('caution', { rear: 'sprockets' }));
  });

  it('tells gains before costs, each in a sentence of its own', () => {
    expect(tradeText(['loses-highest', 'easier-lowest', 'bigger-steps'])).toBe(
      'The easiest gear gets easier still. The hardest gear is lost. The steps between gears get bigger.',
    );
    expect(tradeText(['smaller-steps'])).toBe('The steps between gears get smaller.');
    expect(tradeText([])).toBe('Much like your bike.');
  });
});

describe('a question about a part', () => {
  const parts = (rings: readonly number[], range: string) => ({
    ok: true,
    rings: rings.join('/'),
    range,
  });
  const ask = (question: string, of: Bike = bike) => {
    const read = readGearQuestion(question, of);
    if (!read.ok) return read.why;
    const { chainringsTeeth, sprocketsTeeth } = read.parts;
    expect(sprocketsTeeth.length).toBe(of.sprocketsTeeth.length);
    return parts(chainringsTeeth, `${sprocketsTeeth[0]}-${sprocketsTeeth.at(-1)}`);
  };

  it.each([
    ['34 at the back?', parts([34, 50], '11-34')],
    ['a 32 sprocket', parts([34, 50], '11-32')],
    ['12 behind', parts([34, 50], '12-28')],
    ['11-34', parts([34, 50], '11-34')],
    ['32 in front?', parts([32, 50], '11-28')],
    ['front 48', parts([34, 48], '11-28')],
    ['46/30 and 11–34', parts([30, 46], '11-34')],
    ['30 in front and 32 at the back', parts([30, 50], '11-32')],
    ['', 'nothing'],
    ['something easier', 'nothing'],
    ['34', 'which-end'],
    ['90 in front', 'impossible'],
    ['28 at the back', 'same'],
  ])('“%s” is understood', (question, wanted) => {
    expect(ask(question)).toEqual(wanted);
  });

  it.each(languages())('the example is understood where %s is spoken', (language) => {
    take(language, 'gearcheck', carriedWords(language, 'gearcheck'));
    speak(language);
    const read = readGearQuestion(say('ask-example', { rear: 'sprockets' }), bike);
    speak('en');
    expect(read).toMatchObject({ ok: true, parts: { chainringsTeeth: [34, 50] } });
    expect(read.ok && read.parts.sprocketsTeeth.at(-1)).toBe(34);
  });

  it('rides what was asked for, alone, and says what it would do', async () => {
    await show();
    const input = app.querySelector('.gear-ask input') as HTMLInputElement;
    const type = async (value: string): Promise<void> => {
      await act(() => {
        input.value = value;
        input.dispatchEvent(new Event('input', { bubbles: true }));
      });
      await act(
        () => void input.form?.dispatchEvent(new Event('submit', { bubbles: true, cancelable: true })),
      );
    };
    await type('34');
    expect(text('.gear-ask .field-problem')).toBe(say('ask-which-end'));
    await type('34 at the back');
    const wanted = [11, 13, 15, 17, 19, 21, 23, 25, 27, 30, 34];
    expect(asked.at(-1)?.question.asked).toEqual({ chainringsTeeth: [34, 50], sprocketsTeeth: wanted });
    const answer = candidates.find(
      ({ outcome, changed }) => changed === 'cassette' && outcome.sprocketsTeeth.join() === wanted.join(),
    )!;
    await heard((told) => told.onOwn(own));
    await heard((told) => told.onCandidate(answer));
    expect(text('.gear-said')).toBe(
      `50 / 34 · 11–34: on the steepest 50 m your legs would settle at ${Math.round(answer.outcome.steady.cadenceRpm)} a minute instead of ${Math.round(own.steady.cadenceRpm)}.`,
    );
    expect(all('.gear-ask [data-parts]').length).toBe(2);
  });
});

describe('all gears', () => {
  it('lie on paper steps, with what the hands do between them', async () => {
    await show();
    expect(all('[data-step]').length + all('[data-slip]').length).toBe(22);
    expect(app.querySelector('[data-slip="50x28"]')?.getAttribute('data-kind')).toBe('crossed');
    const hands = all('[data-hands]').map((one) => one.getAttribute('data-hands'));
    expect(hands.filter((one) => one?.startsWith('1 ')).length).toBe(1);
    expect(hands.filter((one) => one === '0 1').length).toBe(hands.length - 1);
    expect(all('.gear-scroll tbody tr').length).toBe(all('[data-step]').length);
  });

  it('make equal proportions equally high, at any width', () => {
    const steps = gearStairs(buildMachine(bike, rider));
    for (const width of [320, 1100]) {
      const layout = stairsLayout(steps, width);
      const rise = (i: number): number => layout.steps[i - 1]!.y - layout.steps[i]!.y;
      const perRatio = (i: number): number => rise(i) / Math.log(1 + steps[i]!.rise!.stepRatio);
      expect(perRatio(1)).toBeCloseTo(perRatio(steps.length - 1), 6);
      for (const { x, y } of layout.steps) {
        expect(x + layout.stepWidth).toBeLessThanOrEqual(layout.width + 0.01);
        expect(y).toBeLessThan(layout.floorY);
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
      /more than the limit of 6\.45 m\. The hardest gear that keeps it is 50\s×\s17/,
    );
    expect(text('.gear-rollout')).toContain('2023');
    await choose(select, 'juniors-2022');
    expect(text('.gear-rollout')).toContain('until Dec 31, 2022');
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
    expect(text('[data-rollout]')).toBe(say('rollOut-within', { limit: '6.05 m' }));
    await type('far');
    expect(text('.gear-rollout .field-problem')).toBe(say('rollOut-unreadable'));
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(text('[data-rollout]')).toBe('');
    await type('2');
    expect(text('[data-rollout]')).toContain('2.00 m');
  });
});
