/** Choosing road and bikes for two, with the keys of each beside the bike. */
import type { JSX } from 'preact';
import type { Level } from '../../core/level/schema.ts';
import { BIKES } from '../../core/model/presets.ts';
import type { Bike } from '../../core/model/types.ts';
import { Button, Tick } from '../../ui/controls.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { KEY_ACTIONS, riderFor } from '../../core/settings/settings.ts';
import { commonWords, keyName } from '../../words/common.ts';
import { twoWords } from './words.ts';
import type { TwoChoice } from './choice.ts';
import { KEYS_FOR_TWO, type Side, SIDES } from './keys.ts';

interface Props {
  readonly levels: readonly Level[];
  /** The bike of this device, which may be one of its own. */
  readonly own: Bike;
  readonly choice: TwoChoice;
  readonly onChoice: (choice: TwoChoice) => void;
  readonly onRide: () => void;
}

/** The form. */
export function Choosing({ levels, own, choice, onChoice, onRide }: Props): JSX.Element {
  const { level, sides } = choice;
  const bikes = BIKES.some(({ id }) => id === own.id) ? BIKES : [...BIKES, own];
  const onlyTouch =
    window.matchMedia('(pointer: coarse)').matches && window.matchMedia('(hover: none)').matches;
  return (
    <form
      class="two-form"
      onSubmit={(event) => {
        event.preventDefault();
        onRide();
      }}
    >
      {onlyTouch && <p class="paper two-note">{twoWords.needsKeys}</p>}
      <label class="two-road">
        <span>{twoWords.road}</span>
        <select
          value={level?.id ?? ''}
          onChange={(event) => {
            const id = event.currentTarget.value;
            onChoice({ ...choice, level: levels.find((one) => one.id === id) ?? level });
          }}
        >
          {levels.map(({ id, title }) => (
            <option key={id} value={id} selected={id === level?.id}>
              {title}
            </option>
          ))}
        </select>
      </label>
      <div class="two-sides">
        {SIDES.map((side) => (
          <SideForm
            key={side}
            side={side}
            bikes={bikes}
            bike={sides[side].bike}
            autoEase={choice.autoEase}
            onBike={(bike) =>
              onChoice({ ...choice, sides: { ...sides, [side]: { bike, rider: riderFor(bike) } } })
            }
          />
        ))}
      </div>
      <Tick
        label={twoWords.autoEase}
        checked={choice.autoEase}
        onChange={(autoEase) => onChoice({ ...choice, autoEase })}
      />
      <Button strong submit data-ride-two disabled={level === null}>
        {twoWords.ride}
      </Button>
    </form>
  );
}

/** With easing done by the game, two keys and the rings are enough. */
const NOT_WITH_EASING: readonly string[] = ['ease', 'press', 'coast', 'brake'];

function SideForm(props: {
  readonly side: Side;
  readonly bikes: readonly Bike[];
  readonly bike: Bike;
  readonly autoEase: boolean;
  readonly onBike: (bike: Bike) => void;
}): JSX.Element {
  const { side, bikes, bike, autoEase, onBike } = props;
  const name = (id: string): string => commonWords.bike.names[id] ?? commonWords.bike.own;
  const actions = KEY_ACTIONS.filter(
    (action) =>
      (bike.chainringsTeeth.length > 1 || !action.startsWith('front')) &&
      !(autoEase && NOT_WITH_EASING.includes(action)) &&
      action !== 'pause',
  );
  return (
    <section class="paper two-side" aria-label={twoWords.sides[side]}>
      <h2>{twoWords.sides[side]}</h2>
      <BikePicture bike={bike} />
      <label>
        <span>{twoWords.bike}</span>
        <select
          value={bike.id}
          onChange={(event) => {
            const id = event.currentTarget.value;
            onBike(bikes.find((one) => one.id === id) ?? bike);
          }}
        >
          {bikes.map(({ id }) => (
            <option key={id} value={id} selected={id === bike.id}>
              {name(id)}
            </option>
          ))}
        </select>
      </label>
      <h3>{twoWords.keys[side]}</h3>
      <dl class="key-list">
        {actions.map((action) => (
          <div key={action}>
            <dt>
              {KEYS_FOR_TWO[side][action].map((code) => (
                <kbd key={code}>{keyName(code)}</kbd>
              ))}
            </dt>
            <dd>{commonWords.keys[action]}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
