/**
 * What a mechanic asks of other parts before anything else: can the derailleurs take them? Limits go by the class of
 * derailleur that a bike most likely carries, told from its parts; what is on the bike already has proved itself.
 * A limit that is passed is a reason to ask, and never a promise the other way round.
 */
import { capacityTeeth } from './gears.ts';
import type { GearParts } from './types.ts';

/** Short arms of road bikes with two rings; long arms of everything else. */
type DerailleurClass = 'road' | 'long';

/** Where a limit is from: makers' figures as printed by others, or what the trade does (no source). */
type LimitSource = 'published' | 'practice';

export interface PassedLimit {
  /** Biggest sprocket, chain to take up, or difference of the smallest and the biggest ring. */
  readonly what: 'sprocket' | 'capacity' | 'rings';
  readonly haveTeeth: number;
  readonly mostTeeth: number;
  readonly derailleur: DerailleurClass;
  readonly source: LimitSource;
}

interface Limit {
  readonly mostTeeth: number;
  readonly source: LimitSource;
}

const published = (mostTeeth: number): Limit => ({ mostTeeth, source: 'published' });
const practice = (mostTeeth: number): Limit => ({ mostTeeth, source: 'practice' });

/**
 * Nine and ten speeds: biggest sprocket 27 to 28 on road and 34 on mountain derailleurs, capacity 33 to 37 (medium) and 45
 * (long); eleven and twelve: 34 to 36 and 50 to 52 (common practice, no source), with the capacity that goes with them.
 */
const REAR: Readonly<
  Record<DerailleurClass, Readonly<Record<'few' | 'many', Record<'sprocket' | 'capacity', Limit>>>>
> = {
  road: {
    few: { sprocket: published(28), capacity: published(37) },
    many: { sprocket: practice(36), capacity: practice(39) },
  },
  long: {
    few: { sprocket: published(34), capacity: published(45) },
    many: { sprocket: practice(52), capacity: practice(47) },
  },
};
/** From so many sprockets on the newer limits hold. */
const MANY_SPROCKETS = 11;
/** Difference of the rings a front derailleur spans: two rings 16 (common practice, no source), three 22 (published). */
const FRONT: readonly (Limit | null)[] = [null, null, practice(16), published(22)];

/** The class a bike's derailleur most likely is of: two rings and a biggest sprocket a road derailleur takes. */
export function derailleurOf(bike: GearParts): DerailleurClass {
  const most = rearLimits('road', bike).sprocket.mostTeeth;
  return bike.chainringsTeeth.length === 2 && biggest(bike.sprocketsTeeth) <= most ? 'road' : 'long';
}

/** Limits that other parts pass on this bike, the most telling first; none where all is usual. */
export function passedLimits(bike: GearParts, parts: GearParts): PassedLimit[] {
  const derailleur = derailleurOf(bike);
  const rear = rearLimits(derailleur, bike);
  const front = FRONT[parts.chainringsTeeth.length] ?? null;
  const asked = [
    { what: 'sprocket', limit: rear.sprocket, of: (p: GearParts) => biggest(p.sprocketsTeeth) },
    { what: 'capacity', limit: rear.capacity, of: capacityTeeth },
    {
      what: 'rings',
      limit: front,
      of: (p: GearParts) => biggest(p.chainringsTeeth) - (p.chainringsTeeth[0] ?? 0),
    },
  ] as const;
  return asked.flatMap(({ what, limit, of }) => {
    if (limit === null) return [];
    const haveTeeth = of(parts);
    const mostTeeth = limit.mostTeeth > of(bike) ? limit.mostTeeth : of(bike);
    return haveTeeth > mostTeeth ? [{ what, haveTeeth, mostTeeth, derailleur, source: limit.source }] : [];
  });
}

function rearLimits(derailleur: DerailleurClass, bike: GearParts): Record<'sprocket' | 'capacity', Limit> {
  return REAR[derailleur][bike.sprocketsTeeth.length >= MANY_SPROCKETS ? 'many' : 'few'];
}

function biggest(teeth: readonly number[]): number {
  return teeth.at(-1) ?? 0;
}
