/** Choosing bike and rider: the bundled ones, drawn; the choice is kept as whole objects in the settings. */
import type { JSX } from 'preact';
import { BIKES, RIDERS } from '../core/model/presets.ts';
import type { Bike, Rider } from '../core/model/types.ts';
import { createFormat, type Format } from './format.ts';
import type { Page } from './page.ts';
import { Sheet } from './parts.tsx';
import { BikePicture, GearStacks } from './pictures/bike.tsx';
import { levelForButton } from './nextRide.ts';
import { words } from './words.ts';

export const bikePage: Page = (state, send) => {
  const { bike, rider, units } = state.settings;
  const format = createFormat(units);
  const next = levelForButton(state);
  return (
    <Sheet title={words.bike.title} intro={words.bike.intro} send={send}>
      <form class="bike-form" onSubmit={(event) => event.preventDefault()}>
        <fieldset class="cards">
          <legend>{words.bike.bikes}</legend>
          {BIKES.map((one) => (
            <BikeCard
              key={one.id}
              bike={one}
              chosen={one.id === bike.id}
              format={format}
              onChoose={() => send({ kind: 'choose-bike', bike: one })}
            />
          ))}
        </fieldset>
        <fieldset class="cards riders">
          <legend>
            {words.bike.riders} <small>{words.bike.ridersHint}</small>
          </legend>
          {RIDERS.map((one) => (
            <RiderCard
              key={one.id}
              rider={one}
              chosen={one.id === rider.id}
              format={format}
              onChoose={() => send({ kind: 'choose-rider', rider: one })}
            />
          ))}
        </fieldset>
        {next !== null && (
          <button
            type="button"
            class="button strong"
            onClick={() => send({ kind: 'ask-ride', levelId: next.id })}
          >
            {words.bike.done}
          </button>
        )}
      </form>
    </Sheet>
  );
};

function BikeCard(props: {
  readonly bike: Bike;
  readonly chosen: boolean;
  readonly format: Format;
  readonly onChoose: () => void;
}): JSX.Element {
  const { bike, chosen, format, onChoose } = props;
  const name = words.bike.names[bike.id] ?? words.bike.own;
  const teeth = `${words.bike.rings} ${format.teeth(bike.chainringsTeeth)}, ${words.bike.sprockets} ${bike.sprocketsTeeth.join(', ')}`;
  return (
    <label class="card">
      <input type="radio" name="bike" value={bike.id} checked={chosen} onChange={onChoose} />
      <span class="card-body">
        <BikePicture bike={bike} label={words.bike.drawing(name)} />
        <strong>{name}</strong>
        <span class="card-facts">
          <span>{words.bike.gears(bike.chainringsTeeth.length, bike.sprocketsTeeth.length)}</span>
          <span>{words.bike[bike.shifter]}</span>
          <span>
            {words.bike.tyre} {format.tyre(bike)}
          </span>
        </span>
        <GearStacks bike={bike} label={teeth} />
      </span>
    </label>
  );
}

function RiderCard(props: {
  readonly rider: Rider;
  readonly chosen: boolean;
  readonly format: Format;
  readonly onChoose: () => void;
}): JSX.Element {
  const { rider, chosen, format, onChoose } = props;
  const name = words.bike.riderNames[rider.id] ?? words.bike.ownRider;
  const hint = words.bike.riderHints[rider.id];
  const cadence = words.bike.cadence(format.number(rider.cadenceLowRpm), format.number(rider.cadenceHighRpm));
  return (
    <label class="card" aria-label={`${name}. ${hint} ${cadence}`}>
      <input type="radio" name="rider" value={rider.id} checked={chosen} onChange={onChoose} />
      <span class="card-body">
        <strong>{name}</strong>
        <span>{hint}</span>
        <span class="card-facts">{cadence}</span>
      </span>
    </label>
  );
}
