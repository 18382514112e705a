/** At the gate of a relay: who rides the next leg, on what, and where on the road it is. */
import type { JSX } from 'preact';
import type { Level } from '../../core/level/schema.ts';
import { Button } from '../../ui/controls.tsx';
import { Icon, Sheet } from '../../ui/parts.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { bikeName } from '../../words/common.ts';
import { SharedRoad } from './road.tsx';
import type { RiderChoice } from './services.ts';
import { words } from '../../words/words.ts';

const say = words('two');

/** The card; one tap and the next one rides. */
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
