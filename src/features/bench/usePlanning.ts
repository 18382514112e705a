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
    const stopping = new AbortController();
    const { signal } = stopping;
    setPlanning({ kind: 'working', share: 0 });
    const begin = async (): Promise<void> => {
      let told = 0;
      const onShare = (share: number): void => {
        if (share - told < SHARE_STEP) return;
        told = share;
        setPlanning({ kind: 'working', share });
      };
      try {
        const ride = await services.plan({ level, ...who }, onShare, signal);
        if (!signal.aborted && ride !== null) setPlanning({ kind: 'done', ride });
      } catch {
        if (!signal.aborted) setPlanning({ kind: 'failed' });
      }
    };
    const timer = setTimeout(() => void begin(), asked ? 0 : REST_MS);
    return () => {
      stopping.abort();
      clearTimeout(timer);
    };
  }, [key, asks]);
  const ask = (): void => {
    askedKey.current = key;
    setAsks((count) => count + 1);
  };
  return { planning, ask } as const;
}
