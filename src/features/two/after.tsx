/**
 * At the gate of a relay: who rides the next leg. After the rides: for each what it came to and the one thing to change, with
 * the way to its debrief.
 */
import type { RideResult } from '../../core/coach/results.ts';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { useAnswer } from '../../ui/hooks.ts';
import { Button } from '../../ui/controls.tsx';
import type { RiderChoice, TwoServices } from './services.ts';
import type { Settings } from '../../core/settings/settings.ts';
import type { Send } from '../../state/store.ts';
import { type RoundTotals, SERIES, type Way } from './rounds.ts';
import { bikeName, common } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import type { Level } from '../../core/level/schema.ts';
import { Icon, Sheet } from '../../ui/parts.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { SharedRoad } from './road.tsx';

const say = words('two');

interface Props {
  readonly way: Way;
  readonly services: TwoServices;
  readonly send: Send;
  readonly units: Settings['units'];
  readonly rides: readonly RideResult[];
  /** Rounds of the series before this one, and this one. */
  readonly before: readonly RoundTotals[];
  readonly now: RoundTotals;
  readonly onTotal: (rider: number, total: number) => void;
  /** To the gate of the next leg, where some are left. */
  readonly onGoOn: () => void;
  readonly onAgain: () => void;
  readonly onMoveOn: () => void;
  readonly onOther: () => void;
}

/** What comes next, on the screen however many have ridden, and a card for each. */
export function After(props: Props): JSX.Element {
  const { way, rides, before, now, onGoOn, onAgain, onMoveOn, onOther } = props;
  const known = now.filter((total) => total !== null);
  return (
    <section class="two-after" aria-label={say('afterTitle')}>
      <div class="buttons">
        {rides.length < now.length && (
          <Button strong data-go-on onClick={onGoOn}>
            {common('riding-on')}
          </Button>
        )}
        <Button strong={rides.length === now.length} data-again-two onClick={onAgain}>
          {before.length + 1 < SERIES ? say('again') : say('newSeries')}
        </Button>
        <Button onClick={onMoveOn}>{say(`moveOn-${way}`)}</Button>
        <Button onClick={onOther}>{say('other')}</Button>
      </div>
      <div class="two-sides">
        {rides.map((result, i) => (
          <Card key={i} rider={i} result={result} {...props} />
        ))}
      </div>
      {way === 'relay' && known.length === now.length && (
        <p class="paper two-together" data-together>
          {say('together', { total: Math.round(known.reduce((sum, one) => sum + one, 0) / known.length) })}
        </p>
      )}
    </section>
  );
}

function Card(props: Props & { readonly rider: number; readonly result: RideResult }): JSX.Element {
  const { way, rider, result, services, send, units, before, onTotal } = props;
  const judged = useAnswer(() => services.judgeRide(result, units), [result, services, units]);
  useEffect(() => {
    if (typeof judged !== 'string') onTotal(rider, Math.round(judged.ride.report.total));
  }, [judged]);
  const name = say(`name-${way}`, { rider: rider + 1 });
  const earlier = before.flatMap((round) => round[rider] ?? []);
  return (
    <section class="paper two-side" data-after={rider} aria-label={name}>
      <h2>{name}</h2>
      {judged === 'waiting' && <output>{say('judging')}</output>}
      {judged === 'failed' && <output>{say('notJudged')}</output>}
      {typeof judged !== 'string' && (
        <>
          <p class="two-total" data-total>
            {say('total', { total: Math.round(judged.ride.report.total) })}
          </p>
          {earlier.length > 0 && <Best all={[...earlier, Math.round(judged.ride.report.total)]} />}
          <p>{judged.advice}</p>
          <Button data-look={rider} onClick={() => send({ kind: 'look-at', ride: judged.ride })}>
            {say('look')}
          </Button>
        </>
      )}
    </section>
  );
}

function Best({ all }: { readonly all: readonly number[] }): JSX.Element {
  return <p data-best>{say('best', { best: Math.max(...all), all: all.join(' · '), rides: all.length })}</p>;
}

/** At the gate of a relay: who rides the next leg, on what, and where on the road it is. */
export function ChangeOver(props: {
  readonly level: Level | null;
  readonly riders: readonly RiderChoice[];
  readonly gatesM: readonly number[];
  /** Who rides next, from 0. */
  readonly next: number;
  readonly onRide: () => void;
  readonly onLeave: () => void;
}): JSX.Element {
  const { level, riders, gatesM, next, onRide, onLeave } = props;
  const bike = riders[next]?.bike;
  return (
    <Sheet title={say('gate', { rider: next + 1 })} intro={say('gateIntro')}>
      <div class="two-form">
        <div class="two-top">
          <Button strong look="big-button" autofocus data-gate-ride onClick={onRide}>
            <Icon name="go" />
            <strong>{say('ride')}</strong>
          </Button>
          <div class="paper two-gate">
            {level !== null && <SharedRoad {...{ level, gatesM }} now={next} />}
            {bike !== undefined && (
              <p class="two-gate-bike">
                <BikePicture bike={bike} />
                {bikeName(bike.id)}
              </p>
            )}
          </div>
        </div>
        <Button data-leave-two onClick={onLeave}>
          {say('leave')}
        </Button>
      </div>
    </Sheet>
  );
}
