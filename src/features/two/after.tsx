/** After two rides: for each what it came to and the one thing to change, with the way to its debrief. */
import type { RideResult } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { JudgedWithAdvice, TwoServices } from './services.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { Send } from '../../state/store.ts';
import { twoWords } from './words.ts';
import type { Pair, TwoChoice } from './choice.ts';
import { type Side, SIDES } from './keys.ts';

interface Props {
  readonly choice: TwoChoice;
  readonly services: TwoServices;
  readonly send: Send;
  readonly units: Settings['units'];
  readonly rides: Pair;
  /** Totals of the rides before this one in a series of three. */
  readonly before: Readonly<Record<Side, readonly number[]>>;
  readonly onTotal: (side: Side, total: number) => void;
  readonly onAgain: () => void;
  readonly onSwap: () => void;
  readonly onOther: () => void;
}

/** The two cards. */
export function After(props: Props): JSX.Element {
  const { rides, onAgain, onSwap, onOther } = props;
  return (
    <section aria-label={twoWords.afterTitle}>
      <div class="two-sides">
        {SIDES.map((side) => (
          <Card key={side} side={side} result={rides[side]} {...props} />
        ))}
      </div>
      <div class="buttons">
        <Button strong data-again-two onClick={onAgain}>
          {twoWords.again}
        </Button>
        <Button onClick={onSwap}>{twoWords.swap}</Button>
        <Button onClick={onOther}>{twoWords.other}</Button>
      </div>
    </section>
  );
}

function Card(props: Props & { readonly side: Side; readonly result: RideResult }): JSX.Element {
  const { side, result, services, send, units, before, onTotal } = props;
  const [judged, setJudged] = useState<JudgedWithAdvice | 'failed' | null>(null);
  useEffect(() => {
    let wanted = true;
    services.judgeRide(result, units).then(
      (one) => {
        if (!wanted) return;
        setJudged(one);
        onTotal(side, Math.round(one.ride.report.total));
      },
      () => wanted && setJudged('failed'),
    );
    return () => {
      wanted = false;
    };
  }, [result, services, units]);
  return (
    <section class="paper two-side" data-after={side} aria-label={twoWords.sides[side]}>
      <h2>{twoWords.sides[side]}</h2>
      {judged === null && <output>{twoWords.judging}</output>}
      {judged === 'failed' && <output>{twoWords.notJudged}</output>}
      {judged !== null && judged !== 'failed' && (
        <>
          <p class="two-total" data-total>
            {twoWords.total(Math.round(judged.ride.report.total))}
          </p>
          {before[side].length > 0 && <Best all={[...before[side], Math.round(judged.ride.report.total)]} />}
          <p>{judged.advice}</p>
          <Button data-look={side} onClick={() => send({ kind: 'look-at', ride: judged.ride })}>
            {twoWords.look}
          </Button>
        </>
      )}
    </section>
  );
}

function Best({ all }: { readonly all: readonly number[] }): JSX.Element {
  return <p data-best>{twoWords.best(Math.max(...all), all)}</p>;
}
