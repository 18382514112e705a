/** Choosing road, bikes and riders for two, with the keys of each beside the bike. */
import type { JSX } from 'preact';
import type { Level } from '../../core/level/schema.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import { BIKES, RIDERS } from '../../core/model/presets.ts';
import { shiftsInFront } from '../../core/model/shifters.ts';
import type { Bike } from '../../core/model/types.ts';
import { Button, Select, Tick } from '../../ui/controls.tsx';
import { Icon } from '../../ui/parts.tsx';
import { Profile } from '../../ui/pictures/profile.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { KEY_ACTIONS, riderFor } from '../../core/settings/settings.ts';
import { bikeName, common, keyName, riderName } from '../../words/common.ts';
import { twoWords } from './words.ts';
import type { TwoChoice } from './choice.ts';
import type { SideChoice } from './services.ts';
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
  // Pads of two riders and a road do not fit on a phone.
  const tooSmall =
    onlyTouch && window.matchMedia(`(max-width: ${PHONE_PX}px), (max-height: ${PHONE_PX}px)`).matches;
  return (
    <form
      class="two-form"
      onSubmit={(event) => {
        event.preventDefault();
        onRide();
      }}
    >
      {tooSmall && <p class="paper two-note">{twoWords.needsKeys}</p>}
      <div class="two-top">
        <Button strong submit look="big-button" data-ride-two disabled={level === null}>
          <Icon name="go" />
          <strong>{twoWords.ride}</strong>
        </Button>
        <div class="paper two-course">
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
          {level !== null && <Profile course={courseOfLevel(level)} label={level.title} />}
        </div>
      </div>
      <div class="two-sides">
        {SIDES.map((side) => (
          <SideForm
            key={side}
            side={side}
            bikes={bikes}
            chosen={sides[side]}
            autoEase={choice.autoEase}
            onlyTouch={onlyTouch}
            onChoose={(chosen) => onChoice({ ...choice, sides: { ...sides, [side]: chosen } })}
          />
        ))}
      </div>
      <Tick
        label={twoWords.autoEase}
        checked={choice.autoEase}
        onChange={(autoEase) => onChoice({ ...choice, autoEase })}
      />
      <Tick
        label={twoWords.headStart}
        checked={choice.headStart}
        onChange={(headStart) => onChoice({ ...choice, headStart })}
      />
    </form>
  );
}

/** Shorter sides than this are those of a phone (px). */
const PHONE_PX = 600;

/** With easing done by the game, two keys and the rings are enough. */
const NOT_WITH_EASING: readonly string[] = ['ease', 'press', 'coast', 'brake'];

function SideForm(props: {
  readonly side: Side;
  readonly bikes: readonly Bike[];
  readonly chosen: SideChoice;
  readonly autoEase: boolean;
  /** There is no keyboard to name keys of. */
  readonly onlyTouch: boolean;
  readonly onChoose: (chosen: SideChoice) => void;
}): JSX.Element {
  const { side, bikes, chosen, autoEase, onlyTouch, onChoose } = props;
  const { bike, rider } = chosen;
  const riders = RIDERS.some(({ id }) => id === rider.id) ? RIDERS : [...RIDERS, rider];
  const name = (id: string): string => bikeName(id);
  const actions = KEY_ACTIONS.filter(
    (action) =>
      (shiftsInFront(bike) || !action.startsWith('front')) &&
      !(autoEase && NOT_WITH_EASING.includes(action)) &&
      action !== 'pause',
  );
  return (
    <section class="paper two-side" aria-label={twoWords.sides[side]}>
      <h2>{twoWords.sides[side]}</h2>
      <div class="two-who">
        <BikePicture bike={bike} />
        <div>
          <Select
            label={twoWords.bike}
            name={`${side}-bike`}
            value={bike.id}
            options={bikes.map(({ id }) => [id, name(id)] as const)}
            onChoose={(id) => {
              const next = bikes.find((one) => one.id === id) ?? bike;
              onChoose({ bike: next, rider: riderFor(next) });
            }}
          />
          <Select
            label={twoWords.rider}
            name={`${side}-rider`}
            value={rider.id}
            options={riders.map(
              ({ id }) =>
                [id, RIDERS.some((one) => one.id === id) ? riderName(id) : twoWords.ownRider] as const,
            )}
            onChoose={(id) => onChoose({ bike, rider: riders.find((one) => one.id === id) ?? rider })}
          />
        </div>
      </div>
      {onlyTouch ? (
        <p>{twoWords.pads[side]}</p>
      ) : (
        <>
          <h3>{twoWords.keys[side]}</h3>
          <dl class="key-list">
            {actions.map((action) => (
              <div key={action}>
                <dt>
                  {KEYS_FOR_TWO[side][action].map((code) => (
                    <kbd key={code}>{keyName(code)}</kbd>
                  ))}
                </dt>
                <dd>{common(`key-${action}`)}</dd>
              </div>
            ))}
          </dl>
        </>
      )}
    </section>
  );
}
