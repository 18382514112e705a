/**
 * A session plan as a file: the shape of a coach's copy and its door. What stands in the plans that come with the
 * game, and every sentence, belongs to the pages; here are only names, numbers and limits.
 */
import * as z from 'zod/mini';
import { idShape } from '../level/schema.ts';
import { LIMITS } from '../math/limits.ts';
import { isTooDeep, jsonOf } from '../math/measure.ts';
import { isCleanText } from './texts.ts';

/** Version of the format this build reads and writes. */
const SESSION_PLAN_SCHEMA = 1;
export const SESSION_TITLE_CHARACTERS = 80;
/** An afternoon (min). */
export const MOST_SESSION_MIN = 240;

export const TEACH_AUDIENCES = ['adults', 'mixed', 'children'] as const;
export type TeachAudience = (typeof TEACH_AUDIENCES)[number];

/** Drills on the real bike. */
export const DRILLS = ['cone', 'soft-feet', 'starting-gear', 'talk'] as const;
export type DrillId = (typeof DRILLS)[number];

/** Parts of a session, in the order in which they come. */
export const SESSION_PARTS = ['warmUp', 'say', 'road', 'question', 'drill', 'watch', 'end'] as const;
export type SessionPart = (typeof SESSION_PARTS)[number];

const LIMIT = LIMITS.sessionPlan;
const minutes = z.int().check(z.gte(0), z.lte(MOST_SESSION_MIN));
const line = z.string().check(z.minLength(1), z.maxLength(LIMIT.lineCharacters.most));
const part = z.strictObject({ minutes, lines: z.array(line).check(z.maxLength(LIMIT.lines.most)) });

const schema = z.strictObject({
  kind: z.literal('session-plan'),
  schema: z.literal(SESSION_PLAN_SCHEMA),
  title: z.string().check(z.minLength(1), z.maxLength(SESSION_TITLE_CHARACTERS)),
  audience: z.enum(TEACH_AUDIENCES),
  minutes,
  /** A level that comes with the game. */
  levelId: idShape,
  drills: z.array(z.enum(DRILLS)).check(z.maxLength(DRILLS.length)),
  parts: z.strictObject({
    warmUp: part,
    say: part,
    road: part,
    question: part,
    drill: part,
    watch: part,
    end: part,
  }),
});

/** A plan after parsing. Minutes of the parts are a coach's; they need not add up to those of the session. */
export interface SessionPlan extends Readonly<Omit<z.infer<typeof schema>, 'drills' | 'parts'>> {
  readonly drills: readonly DrillId[];
  readonly parts: Readonly<
    Record<SessionPart, { readonly minutes: number; readonly lines: readonly string[] }>
  >;
}

/** Why a text is no session plan. */
export type SessionPlanCode = 'too-big' | 'not-json' | 'not-a-session-plan' | 'newer-schema' | 'dirty-text';

type ParseSessionPlanResult =
  | { readonly ok: true; readonly plan: SessionPlan }
  | { readonly ok: false; readonly code: SessionPlanCode };

/** Reads the text of a file. */
export function parseSessionPlanText(text: string): ParseSessionPlanResult {
  const bad = (code: SessionPlanCode): ParseSessionPlanResult => ({ ok: false, code });
  if (text.length > LIMIT.characters.most) return bad('too-big');
  const value = jsonOf(text);
  if (value === undefined) return bad('not-json');
  if (isTooDeep(value, LIMIT.deep.most)) return bad('not-a-session-plan');
  const version = (value as { schema?: unknown } | null)?.schema;
  if (typeof version === 'number' && version > SESSION_PLAN_SCHEMA) return bad('newer-schema');
  const parsed = schema.safeParse(value);
  if (!parsed.success) return bad('not-a-session-plan');
  const { title, parts } = parsed.data;
  const lines = SESSION_PARTS.flatMap((name) => parts[name].lines);
  const clean =
    isCleanText(title, SESSION_TITLE_CHARACTERS) &&
    lines.every((one) => isCleanText(one, LIMIT.lineCharacters.most));
  return clean ? { ok: true, plan: parsed.data } : bad('dirty-text');
}

/** The file of a plan; what is read from it is the very same plan. */
export function sessionPlanText(plan: SessionPlan): string {
  return `${JSON.stringify(plan, null, 2)}\n`;
}
