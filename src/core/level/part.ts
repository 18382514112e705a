/** What lies on a part of a road: places and stretches, counted from where the part begins. */
import type { Level } from './schema.ts';

/** The lists of things that lie on a road. */
type Placed = Pick<Level, 'stopLinesM' | 'winds' | 'surfaces' | 'hidden' | 'cues' | 'company'>;

/** Everything on the part of so many metres from `startM` on; what reaches beyond it is cut off at its ends. */
export function placedOnPart(level: Level, startM: number, lengthM: number): Placed {
  const isOn = (atM: number): boolean => atM >= startM && atM <= startM + lengthM;
  const moved = <P extends { readonly atM: number }>(list: readonly P[]): P[] =>
    list.filter(({ atM }) => isOn(atM)).map((one) => ({ ...one, atM: one.atM - startM }));
  const clipped = <S extends { readonly fromM: number; readonly toM: number }>(list: readonly S[]): S[] =>
    list
      .map((one) => ({
        ...one,
        fromM: Math.max(0, one.fromM - startM),
        toM: Math.min(lengthM, one.toM - startM),
      }))
      .filter((one) => one.toM > one.fromM);
  return {
    stopLinesM: level.stopLinesM.filter(isOn).map((atM) => atM - startM),
    winds: clipped(level.winds),
    surfaces: clipped(level.surfaces),
    hidden: clipped(level.hidden),
    cues: moved(level.cues),
    ...(level.company === undefined ? {} : { company: moved(level.company) }),
  };
}
