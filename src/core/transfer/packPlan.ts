/**
 * A plan as bytes: JSON without the names of its parts, and own levels as the room of levels packs them. What
 * comes back is the same to the last digit; it goes through `parsePlan` like any other plan.
 */
import { levelFromBytes, levelToBytes } from './share.ts';
import { jsonOf } from '../math/measure.ts';
import { ByteReader, ByteWriter } from './bytes.ts';
import {
  type ClinicPlan,
  MOST_RIDES,
  parsePlan,
  type ParsePlanResult,
  type PlanRide,
} from '../group/plan.ts';

/** How an own level is marked in the row; its bytes follow after the row. */
const OWN_LEVEL = 0;
/** The parts of a plan before its rides, in the order of the row. */
const PARTS = [
  'schema',
  'id',
  'title',
  'seedRule',
  'seed',
  'bike',
  'riderId',
  'attempts',
  'aids',
  'shows',
  'order',
  'audience',
] as const satisfies readonly (keyof ClinicPlan)[];

export function planToBytes(plan: ClinicPlan): Uint8Array {
  const rides = plan.rides.map((ride) =>
    ride.kind === 'bundled' ? ride.levelId : ride.kind === 'check' ? packCheck(ride) : OWN_LEVEL,
  );
  const out = new ByteWriter();
  out.text(JSON.stringify([...PARTS.map((part) => plan[part]), rides]));
  for (const ride of plan.rides) if (ride.kind === 'own') out.bytes(levelToBytes(ride.level));
  return out.done();
}

/** The plan in bytes, or problems; null where the bytes are no plan at all. */
export function planFromBytes(bytes: Uint8Array): ParsePlanResult | null {
  const from = new ByteReader(bytes);
  const row = readRow(from.text());
  if (row === null) return null;
  const short = row[PARTS.length];
  if (!Array.isArray(short) || short.length > MOST_RIDES) return null;
  const rides: unknown[] = [];
  for (const ride of short as unknown[]) {
    if (ride !== OWN_LEVEL) {
      rides.push(longRide(ride));
      continue;
    }
    const parsed = levelFromBytes(from.bytes());
    if (from.failed) return null;
    const path = (inner: string): string => `rides[${rides.length}].level${inner === '' ? '' : `.${inner}`}`;
    if (!parsed.ok)
      return { ok: false, problems: parsed.problems.map((p) => ({ ...p, path: path(p.path) })) };
    rides.push({ kind: 'own', level: parsed.level });
  }
  if (!from.finished) return null;
  return parsePlan({ ...Object.fromEntries(PARTS.map((part, i) => [part, row[i]])), rides });
}

function readRow(text: string): readonly unknown[] | null {
  const row = jsonOf(text);
  return Array.isArray(row) && row.length === PARTS.length + 1 ? row : null;
}

function packCheck({ audience, needs }: Extract<PlanRide, { kind: 'check' }>): readonly string[] {
  return needs === undefined ? [audience] : [audience, needs];
}

function longRide(ride: unknown): unknown {
  if (Array.isArray(ride)) {
    const [audience, needs] = ride as unknown[];
    return { kind: 'check', audience, ...(needs === undefined ? {} : { needs }) };
  }
  return { kind: 'bundled', levelId: ride };
}
