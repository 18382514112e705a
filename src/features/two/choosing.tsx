/** Choosing a road, who rides how, and a bike for each; of two beside each other also the keys. */
import type { JSX } from 'preact';
import type { Level } from '../../core/level/schema.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import { shiftsInFront } from '../../core/model/shifters.ts';
import type { Bike } from '../../core/model/types.ts';
import { Button, Choice, Select, Tick } from '../../ui/controls.tsx';
import { Icon } from '../../ui/parts.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { KEY_ACTIONS, riderFor } from '../../core/settings/settings.ts';
import { bikeName, keyName, keyWords, riderName } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import { mostOn, type TogetherChoice, type Way, RIDING_WAYS } from './rounds.ts';
import { canRide, isOnlyTouch } from './riding.tsx';
import { SharedRoad } from './road.tsx';
import type { RiderChoice } from './services.ts';
import { KEYS_FOR_TWO, type Side, SIDES } from './keys.ts';

/** What a road is for is said as where roads are listed. */
const sayRoad = words('levels');
const say = words('two');

interface Props {
  readonly levels: readonly Level[];
  /** The bike of this device, which may be one of its own. */
  readonly own: Bike;
  readonly choice: TogetherChoice;
  /** Those of the choice who ride. */
  readonly riders: readonly RiderChoice[];
  /** Gates of a relay (m). */
  readonly gatesM: readonly number[];
  readonly onChoice: (choice: TogetherChoice) => void;
  readonly onRide: () => void;
}

export function Choosing(props: Props): JSX.Element {
  const { levels, own, choice, riders, gatesM, onChoice, onRide } = props;
  const { level, way } = choice;
  const bikes = BIKES.some(({ id }) => id === own.id) ? BIKES : [...BIKES, own];
  const put = (place: number, chosen: RiderChoice): void =>
    onChoice({ ...choice, riders: choice.riders.map((one, i) => (i === place ? chosen : one)) });
  return (
    <form
      class="two-form"
      onSubmit={(event) => {
        event.preventDefault();
        onRide();
      }}
    >
      {!canRide(way) && <p class="paper two-note">{say('needsKeys')}</p>}
      {riders.length === 0 && <p class="paper two-note">{say('noRelay')}</p>}
      <div class="two-top">
        <Button
          strong
          submit
          look="big-button"
          data-ride-two
          disabled={riders.length === 0 || level === null}
        >
          <Icon name="go" />
          <strong>{say('ride')}</strong>
        </Button>
        <div class="paper two-course">
          <Select
            look="two-road"
            label={say('road')}
            value={level?.id ?? ''}
            options={levels.map(({ id, title, needs }) => [
              id,
              needs === undefined ? title : `${title} · ${sayRoad(`needs-${needs}`)}`,
            ])}
            onChoose={(id) => onChoice({ ...choice, level: levels.find((one) => one.id === id) ?? level })}
          />
          {level !== null && <SharedRoad {...{ level, gatesM }} />}
        </div>
      </div>
      <WayForm {...{ choice, onChoice }} />
      <div class="two-sides">
        {riders.map((chosen, i) => (
          <RiderForm
            key={i}
            {...{ way, bikes, chosen }}
            place={i}
            autoEase={choice.autoEase}
            onChoose={(next) => put(i, next)}
          />
        ))}
      </div>
      <Tick
        label={say('autoEase')}
        checked={choice.autoEase}
        onChange={(autoEase) => onChoice({ ...choice, autoEase })}
      />
      {way !== 'relay' && (
        <Tick
          label={say('headStart')}
          checked={choice.headStart}
          onChange={(headStart) => onChoice({ ...choice, headStart })}
        />
      )}
    </form>
  );
}

/** Who rides how: at once or one after the other, and how many. */
function WayForm({ choice, onChoice }: Pick<Props, 'choice' | 'onChoice'>): JSX.Element {
  const { level, way, riders } = choice;
  const counts = Array.from({ length: Math.max(0, mostOn(level) - 1) }, (_, i) => String(i + 2));
  return (
    <div class="paper row two-way">
      <Choice
        legend={say('way')}
        name="two-way"
        value={way}
        options={RIDING_WAYS.filter((one) => one === way || canRide(one)).map((one) => [
          one,
          say(`way-${one}`),
        ])}
        onChoose={(next) => onChoice({ ...choice, way: next })}
      />
      {way === 'relay' && counts.length > 1 && (
        <Choice
          legend={say('count')}
          name="two-count"
          value={String(Math.min(riders.length, counts.length + 1))}
          options={counts.map((one) => [one, one])}
          onChoose={(count) =>
            onChoice({
              ...choice,
              riders: Array.from(
                { length: Number(count) },
                (_, i) => riders[i] ?? (riders[0] as RiderChoice),
              ),
            })
          }
        />
      )}
      <p>{say(`wayHint-${way}`)}</p>
    </div>
  );
}

/** With easing done by the game, two keys and the rings are enough. */
const NOT_WITH_EASING: readonly string[] = ['ease', 'press', 'coast', 'brake'];

function RiderForm(props: {
  readonly way: Way;
  /** From 0. */
  readonly place: number;
  readonly bikes: readonly Bike[];
  readonly chosen: RiderChoice;
  readonly autoEase: boolean;
  readonly onChoose: (chosen: RiderChoice) => void;
}): JSX.Element {
  const { way, place, bikes, chosen, autoEase, onChoose } = props;
  const { bike, rider } = chosen;
  const riders = RIDERS.some(({ id }) => id === rider.id) ? RIDERS : [...RIDERS, rider];
  const name = say(`name-${way}`, { rider: place + 1 });
  const side = SIDES[place];
  return (
    <section class="paper two-side" aria-label={name}>
      <h2>{name}</h2>
      <div class="row two-who">
        <BikePicture bike={bike} />
        <div>
          <Select
            label={say('bike')}
            name={`bike-${place}`}
            value={bike.id}
            options={bikes.map(({ id }) => [id, bikeName(id)] as const)}
            onChoose={(id) => {
              const next = bikes.find((one) => one.id === id) ?? bike;
              onChoose({ bike: next, rider: riderFor(next) });
            }}
          />
          <Select
            label={say('rider')}
            name={`rider-${place}`}
            value={rider.id}
            options={riders.map(
              ({ id }) =>
                [id, RIDERS.some((one) => one.id === id) ? riderName(id) : say('ownRider')] as const,
            )}
            onChoose={(id) => onChoose({ bike, rider: riders.find((one) => one.id === id) ?? rider })}
          />
        </div>
      </div>
      {way === 'beside' && side !== undefined && <Hands {...{ side, bike, autoEase }} />}
    </section>
  );
}

/** What hands push side by side: pads where there is no keyboard, else keys. */
function Hands(props: { readonly side: Side; readonly bike: Bike; readonly autoEase: boolean }): JSX.Element {
  const { side, bike, autoEase } = props;
  if (isOnlyTouch()) return <p>{say(`pads-${side}`)}</p>;
  const actions = KEY_ACTIONS.filter(
    (action) =>
      (shiftsInFront(bike) || !action.startsWith('front')) &&
      !(autoEase && NOT_WITH_EASING.includes(action)) &&
      action !== 'pause',
  );
  return (
    <>
      <h3>{say(`keys-${side}`)}</h3>
      <dl class="key-list">
        {actions.map((action) => (
          <div key={action}>
            <dt>
              {KEYS_FOR_TWO[side][action].map((code) => (
                <kbd key={code}>{keyName(code)}</kbd>
              ))}
            </dt>
            <dd>{keyWords(action)}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
