/** The offer to ride on where a ride broke off, to keep what was ridden, or to let it go. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Level } from '../../core/level/schema.ts';
import type { ToldOutcome } from '../../state/outcome.ts';
import { TICKS_PER_S } from '../../core/ride/clock.ts';
import { PHYSICS_VERSION } from '../../core/ride/recording.ts';
import type { StartServices } from './services.ts';
import type { Send } from '../../state/store.ts';
import { Button } from '../../ui/controls.tsx';
import type { UnfinishedRide } from '../../state/unfinished.ts';
import { levelWords } from '../../words/common.ts';
import { words } from '../../words/words.ts';

const say = words('start');
const kept = words('kept');

export function UnfinishedOffer(props: {
  readonly rides: readonly UnfinishedRide[];
  readonly levels: readonly Level[];
  readonly services: Pick<StartServices, 'keepUnfinished' | 'letUnfinishedGo'>;
  readonly send: Send;
}): JSX.Element | null {
  const { rides, services, send } = props;
  const [told, setTold] = useState<ToldOutcome | null>(null);
  // One after the other: more than one is rare.
  const ride = rides[0];
  if (ride === undefined)
    return told === null ? null : (
      <output class="cut start-unfinished" data-unfinished-told>
        {told.sentence}
      </output>
    );
  const { level, turn, recording } = ride;
  const riddenS = Math.floor(recording.ticks / TICKS_PER_S);
  // Its beginning cannot be ridden again by other legs.
  const goesOn = ride.physicsVersion === PHYSICS_VERSION;
  return (
    <section class="cut start-unfinished" aria-labelledby="unfinished-title" data-unfinished={ride.id}>
      <h2 id="unfinished-title">
        {say(turn === null ? 'unfinished-title' : 'unfinished-turn', {
          level: levelWords(level, props.levels).title,
        })}
      </h2>
      <p data-ticks={recording.ticks}>
        {say('unfinished-length', { minutes: Math.floor(riddenS / 60), seconds: riddenS % 60 })}
      </p>
      {!goesOn && <p data-older-legs>{kept('unfinished-olderLegs')}</p>}
      <div class="buttons">
        {goesOn && (
          <Button strong data-go-on onClick={() => send({ kind: 'go-on', ride })}>
            {say('unfinished-goOn')}
          </Button>
        )}
        <Button data-keep-unfinished onClick={() => void services.keepUnfinished(ride).then(setTold)}>
          {say('unfinished-keep')}
        </Button>
        <Button data-let-go onClick={() => void services.letUnfinishedGo(ride)}>
          {say('unfinished-letGo')}
        </Button>
      </div>
      {told !== null && !told.ok && <p role="alert">{told.sentence}</p>}
    </section>
  );
}
