/** What the road would feel like: the reference ride of a chosen rider on a chosen bike, in a few facts. */
import type { JSX } from 'preact';
import { Button, Select } from '../../ui/controls.tsx';
import type { PitchReport } from '../../core/coach/types.ts';
import type { Course } from '../../core/course/types.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import type { Machine, Rider } from '../../core/model/types.ts';
import { AS_RIDDEN } from './comparePanel.tsx';
import { FactList } from './roadFacts.tsx';
import { rolling } from './lanes.tsx';
import { useFormat } from './say.ts';
import { shiftWords, shownShifts } from './roadNumbers.tsx';
import type { BenchServices, ReferenceRide, Who } from './services.ts';
import type { Format } from '../../words/format.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { bikeName, riderName } from '../../words/common.ts';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { levelHash } from '../../core/level/build.ts';
import { levelLengthM } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';

const say = words('bench');

/** Gentler roads are called level (rise over run). */
const WORTH_TELLING_RATIO = 0.01;

interface WhoProps {
  readonly who: Who;
  /** Bike and rider of the settings come first. */
  readonly own: Who;
  /** The rider with the power of a recorded ride, or null. */
  readonly asRidden: Rider | null;
  readonly onWho: (who: Who) => void;
}

export function ReferencePanel(
  props: WhoProps & {
    readonly course: Course;
    readonly machine: Machine;
    readonly planning: Planning;
    readonly onAsk: () => void;
  },
): JSX.Element {
  const { planning, machine, course } = props;
  const format = useFormat();
  return (
    <Paper title={say('reference-title')} data-reference={planning.kind}>
      <p>{say('reference-intro')}</p>
      <WhoChoice {...props} />
      <div aria-live="polite">
        {planning.kind === 'waits' && <p>{say('reference-waits')}</p>}
        {planning.kind === 'working' && (
          <p>{say('reference-working', { share: format.percent(planning.share) })}</p>
        )}
        {planning.kind === 'failed' && <p>{say('reference-failed')}</p>}
        {planning.kind === 'ask' && <p>{say('reference-long')}</p>}
      </div>
      {(planning.kind === 'ask' || planning.kind === 'failed') && (
        <Button look="small-button" data-plan onClick={props.onAsk}>
          {say('reference-ask')}
        </Button>
      )}
      {planning.kind === 'done' && <Facts ride={planning.ride} {...{ machine, course }} />}
    </Paper>
  );
}

function WhoChoice({ who, own, asRidden, onWho }: WhoProps): JSX.Element {
  const format = useFormat();
  const bikes = [own.bike, ...BIKES.filter((bike) => bike.id !== own.bike.id)];
  const riders = [
    ...(asRidden === null ? [] : [asRidden]),
    own.rider,
    ...RIDERS.filter((rider) => rider.id !== own.rider.id),
  ];
  return (
    <div class="row thing-fields">
      <Select
        look="select-field"
        data-bench-bike
        label={say('reference-bike')}
        value={who.bike.id}
        options={bikes.map(({ id }) => [id, bikeName(id)])}
        onChoose={(id) => onWho({ ...who, bike: bikes.find((one) => one.id === id) ?? who.bike })}
      />
      <Select
        look="select-field"
        data-bench-rider
        label={say('reference-rider')}
        value={who.rider.id}
        options={riders.map(({ id, steadyPowerW }) => [
          id,
          id === AS_RIDDEN
            ? say('reference-asRidden', { watts: format.number(steadyPowerW) })
            : riderName(id),
        ])}
        onChoose={(id) => onWho({ ...who, rider: riders.find((one) => one.id === id) ?? who.rider })}
      />
    </div>
  );
}

function Facts(props: {
  readonly ride: ReferenceRide;
  readonly machine: Machine;
  readonly course: Course;
}): JSX.Element {
  const { ride, machine, course } = props;
  const { report, trace } = ride;
  const format = useFormat();
  const worst = worstPitch(ride);
  // A start on a pitch is no ordinary start: what it does to the legs counts.
  const slow = rolling(trace.samples).map(({ cadenceRpm, distanceM }) => ({ cadenceRpm, distanceM }));
  if (worst !== null) slow.push({ cadenceRpm: worst.worstCadenceRpm, distanceM: worst.footM });
  const lowest = slow.toSorted((a, b) => a.cadenceRpm - b.cadenceRpm)[0] ?? null;
  const start = trace.samples[0];
  const list = start === undefined ? [] : shownShifts(report.shifts, machine, start);
  const lowestWords =
    lowest === null
      ? '–'
      : say('reference-lowestAt', {
          rpm: format.number(lowest.cadenceRpm),
          at: format.distance(lowest.distanceM),
        });
  const facts: readonly (readonly [string, string])[] = [
    [say('reference-time'), format.time(report.finishedS)],
    [say('reference-worst'), worstWords(worst, course, format)],
    [say('reference-lowest'), lowestWords],
    [say('reference-shifts'), format.number(report.manoeuvreCount)],
    ...(report.footDowns > 0 ? [[say('reference-feet'), format.number(report.footDowns)] as const] : []),
  ];
  return (
    <>
      <FactList facts={facts} />
      {report.pitches.length > 0 && !report.pitches.some(({ asked }) => asked) && (
        <p data-asks-nothing>{say('reference-asksNothing')}</p>
      )}
      {list.length > 0 && (
        <details class="fold">
          <summary>{say('reference-list')}</summary>
          <p>{say('reference-legend')}</p>
          <ol class="shift-list">
            {list.map((one, index) => (
              <li key={index}>{shiftWords(one, format)}</li>
            ))}
          </ol>
        </details>
      )}
    </>
  );
}

/** The pitch that slows the legs most. */
function worstPitch({ report }: ReferenceRide): PitchReport | null {
  return report.pitches.toSorted((a, b) => a.worstCadenceRpm - b.worstCadenceRpm)[0] ?? null;
}

/** That pitch in words, or, where there is none, the steepest place. */
function worstWords(worst: PitchReport | null, course: Course, format: Format): string {
  if (worst !== null)
    return say('reference-worstIs', {
      steepest: format.percent(worst.steepestRatio),
      at: format.distance(worst.footM),
      rpm: format.number(worst.worstCadenceRpm),
    });
  const steepest = course.slopeRatio.reduce((a, b) => Math.max(a, b), 0);
  if (steepest < WORTH_TELLING_RATIO) return say('reference-level');
  return say('reference-noPitch', {
    steepest: format.percent(steepest),
    at: format.distance(course.slopeRatio.indexOf(steepest)),
  });
}

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

/**
 * Keeps the reference ride of the level on the bench: planned anew when the road has rested for a moment, given up
 * when it changes. Long roads wait to be asked.
 * @param level a level that can be ridden, or null
 */
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
