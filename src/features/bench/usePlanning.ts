/**
 * Keeps the reference ride of the level on the bench: planned anew when the road has rested for a moment, given up
 * when it changes. Long roads wait to be asked.
 */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { levelHash } from '../../core/level/build.ts';
import { levelLengthM } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import type { BenchServices, ReferenceRide, Who } from './services.ts';

export type Planning =
  | { readonly kind: 'waits' }
  | { readonly kind: 'ask' }
  | { readonly kind: 'working'; readonly share: number }
  | { readonly kind: 'done'; readonly ride: ReferenceRide }
  | { readonly kind: 'failed' };

/** The road has rested for so long (ms). */
const REST_MS = 700;
/** Up to here planning begins by itself (m). */
const SHORT_ROAD_M = 6_000;
/** Share of planning is told in steps no finer than this. */
const SHARE_STEP = 0.1;

/** @param level a level that can be ridden, or null */
export function usePlanning(services: BenchServices, level: Level | null, who: Who) {
  const [planning, setPlanning] = useState<Planning>({ kind: 'waits' });
  const key = useMemo(
    () => (level === null ? '' : `${levelHash(level)} ${level.seed} ${JSON.stringify(who)}`),
    [level, who],
  );
  const askedKey = useRef('');
  const [asks, setAsks] = useState(0);
  useEffect(() => {
    if (level === null) {
      setPlanning({ kind: 'waits' });
      return undefined;
    }
    const asked = askedKey.current === key;
    if (!asked && levelLengthM(level) > SHORT_ROAD_M) {
      setPlanning({ kind: 'ask' });
      return undefined;
    }
    let wanted = true;
    let begun = false;
    const job = { level, ...who };
    setPlanning({ kind: 'working', share: 0 });
    const begin = async (): Promise<void> => {
      begun = true;
      let told = 0;
      try {
        const ride = await services.plan(job, (share) => {
          if (!wanted || share - told < SHARE_STEP) return;
          told = share;
          setPlanning({ kind: 'working', share });
        });
        if (wanted && ride !== null) setPlanning({ kind: 'done', ride });
      } catch {
        if (wanted) setPlanning({ kind: 'failed' });
      }
    };
    const timer = setTimeout(() => void begin(), asked ? 0 : REST_MS);
    return () => {
      wanted = false;
      clearTimeout(timer);
      if (begun) services.cancelPlan(job);
    };
  }, [key, asks]);
  const ask = (): void => {
    askedKey.current = key;
    setAsks((count) => count + 1);
  };
  return { planning, ask } as const;
}
