/** Session plans: nine that are whole, copies that live in files, and sheets with cautions on each and no names asked for. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import {
  DRILLS,
  parseSessionPlanText,
  SESSION_PARTS,
  type SessionPlan,
  TEACH_AUDIENCES,
} from '../../../src/core/group/sessionPlan.ts';
import { teachPage } from '../../../src/features/teach/page.tsx';
import { LENGTHS_MIN, planIdOf, sessionPlan } from '../../../src/features/teach/plans.ts';
import { linesOf } from '../../../src/features/teach/change.tsx';
import type { State } from '../../../src/state/store.ts';
import { words } from '../../../src/words/words.ts';
import { BUNDLED } from '../../core/ride/worlds.ts';

const say = words('teach');
const cautions = words('cautions');
const plans = TEACH_AUDIENCES.flatMap((audience) =>
  LENGTHS_MIN.map((minutes) => {
    const id = planIdOf(audience, minutes);
    return [id, sessionPlan(id) as SessionPlan] as const;
  }),
);
const levels = BUNDLED.map(({ level }) => level);
const SHEETS = ['cards', 'home', 'certificate'] as const;

let root: HTMLElement;
let rest: string;
let files: [string, string][];
let prints: number;

function draw(place = rest): void {
  rest = place;
  const state = { rest, levels } as unknown as State;
  const page = teachPage(
    state,
    (action) => {
      if (action.kind === 'address') draw(action.address.rest);
    },
    {
      saveSessionPlan: (name, text) => files.push([name, text]),
      print: () => {
        prints += 1;
      },
    },
  );
  void act(() => render(page, root));
}

const all = <Kind extends Element = HTMLElement>(selector: string): Kind[] => [
  ...root.querySelectorAll<Kind>(selector),
];
const tap = (selector: string) => act(() => all(selector)[0]?.click());
const text = (): string => root.querySelector('.teach-sheet')?.textContent ?? '';

beforeEach(() => {
  root = document.createElement('div');
  document.body.replaceChildren(root);
  [rest, files, prints] = ['', [], 0];
});

afterEach(() => render(null, root));

describe('the plans that come with the game', () => {
  it('are three groups in three lengths, each with a level that is there', () => {
    expect(plans).toHaveLength(9);
    for (const [id, plan] of plans) {
      expect(
        levels.map((level) => level.id),
        id,
      ).toContain(plan.levelId);
      const level = levels.find((one) => one.id === plan.levelId);
      expect([id, level?.audience === 'children']).toEqual([id, plan.audience === 'children']);
    }
  });

  it.each(plans)(
    '%s: its minutes add up, it says three sentences, asks a question and has a drill',
    (_id, plan) => {
      const minutes = SESSION_PARTS.reduce((sum, name) => sum + plan.parts[name].minutes, 0);
      expect(minutes).toBe(plan.minutes);
      expect(plan.parts.say.lines).toHaveLength(3);
      expect(plan.parts.question.lines.some((line) => line.endsWith('?'))).toBe(true);
      expect(plan.drills.length).toBeGreaterThan(0);
      for (const name of SESSION_PARTS) expect(plan.parts[name].lines, name).not.toEqual([]);
    },
  );

  it('every drill says what is needed and how it is kept safe', () => {
    for (const id of DRILLS) {
      expect(say.lines(`card-${id}-doing`).length).toBeGreaterThan(1);
      for (const row of ['needs', 'safe', 'watch'] as const)
        expect(say(`card-${id}-${row}`).length).toBeGreaterThan(20);
    }
  });
});

describe('sheets', () => {
  it.each([...plans.map(([id]) => id), ...SHEETS])(
    '%s: cautions stand on it, and no name is asked for',
    (id) => {
      draw(id);
      for (const caution of [cautions('title'), ...cautions.lines('short'), ...say.lines('moreCautions')])
        expect(text()).toContain(caution);
      expect(text()).toContain(say('defers'));
      expect(all('.teach-sheet input, .teach-sheet textarea')).toEqual([]);
      expect(text()).not.toMatch(/\bpoints\b|\branking|\bstars\b/i);
    },
  );

  it('every drill card has its cautions, and a plan its sources', async () => {
    draw('cards');
    expect(all('.teach-card').map((card) => card.textContent?.includes(say('defers')))).toEqual([
      true,
      true,
      true,
      true,
    ]);
    draw('children-45');
    for (const source of say.lines('sources-children')) expect(text()).toContain(source);
    expect(text()).toContain(say('practice'));
    await tap('[data-print]');
    expect(prints).toBe(1);
  });
});

describe('a copy', () => {
  it('is changed, saved as a file and opened again', async () => {
    draw('adults-45');
    await tap('[data-change]');
    expect(rest).toBe('own');
    await act(() => {
      const box = all<HTMLTextAreaElement>('textarea[name=warmUp]')[0]!;
      box.value = '  Ring the bell. \n\n\u202ETwo rounds.';
      box.dispatchEvent(new Event('input', { bubbles: true }));
    });
    await tap('[data-save]');
    const [[name, saved] = ['', '']] = files;
    expect(name).toBe('new-adults-45-minutes.json');
    const read = parseSessionPlanText(saved);
    expect(read.ok && read.plan.parts.warmUp.lines).toEqual(['Ring the bell.', 'Two rounds.']);
    await tap('[data-done]');
    expect(text()).toContain('Ring the bell.');
    draw('');
    const input = all<HTMLInputElement>('[data-open-plan]')[0]!;
    const open = async (content: string): Promise<void> => {
      Object.defineProperty(input, 'files', { value: [new File([content], 'x.json')], configurable: true });
      await act(async () => {
        input.dispatchEvent(new Event('change', { bubbles: true }));
        await new Promise((resolve) => setTimeout(resolve, 20));
      });
    };
    await open('{');
    expect(all('[role=alert]')[0]?.textContent).toBe(say('problems-not-json'));
    await open(saved);
    expect([rest, text().includes('Ring the bell.')]).toEqual(['own', true]);
  });

  it('that is not here any more is told, and lines are as many and as long as a part may have', () => {
    draw('own');
    expect(all('[role=alert]')[0]?.textContent).toBe(say('ownGone'));
    expect(linesOf(Array.from({ length: 40 }, (_, i) => `${i} ${'x'.repeat(400)}`).join('\n'))).toHaveLength(
      12,
    );
    expect(linesOf('x'.repeat(400))[0]).toHaveLength(300);
  });
});
