/** The file of a session plan: what is saved is read again as it was, and what is no plan is told. */
import { describe, expect, it } from 'vitest';
import {
  parseSessionPlanText,
  type SessionPlan,
  sessionPlanText,
} from '../../../src/core/group/sessionPlan.ts';

const part = (...lines: string[]) => ({ minutes: 5, lines });
const plan: SessionPlan = {
  kind: 'session-plan',
  schema: 1,
  title: 'Tuesday',
  audience: 'mixed',
  minutes: 35,
  levelId: 'rolling-road',
  drills: ['cone'],
  parts: {
    warmUp: part('Two rounds.'),
    say: part('One.', 'Two.', 'Three.'),
    road: part('Ride it.'),
    question: part('Where?'),
    drill: part(),
    watch: part('Feet.'),
    end: part('Bye.'),
  },
};

describe('the file of a session plan', () => {
  it('is read as it was saved, also with an invisible mark before it', () => {
    expect(parseSessionPlanText(sessionPlanText(plan))).toEqual({ ok: true, plan });
    expect(parseSessionPlanText(`\uFEFF${sessionPlanText(plan)}`)).toEqual({ ok: true, plan });
  });

  it.each([
    ['no JSON', '{', 'not-json'],
    ['something else', '[]', 'not-a-session-plan'],
    ['nothing', 'null', 'not-a-session-plan'],
    ['a key too many', JSON.stringify({ ...plan, coach: 'x' }), 'not-a-session-plan'],
    ['a drill nobody knows', JSON.stringify({ ...plan, drills: ['jump'] }), 'not-a-session-plan'],
    ['a newer one', JSON.stringify({ ...plan, schema: 2 }), 'newer-schema'],
    ['a turned direction', JSON.stringify({ ...plan, title: 'a\u202Eb' }), 'dirty-text'],
    ['too much', sessionPlanText(plan).padEnd(60_001), 'too-big'],
  ] as const)('%s is told by a code', (_what, text, code) => {
    expect(parseSessionPlanText(text)).toEqual({ ok: false, code });
  });
});
