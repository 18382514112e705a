/**
 * Choosing bike and rider: the bundled bikes, drawn, or one of one's own; the rider by feel or by numbers. The
 * choice is kept as whole objects in the settings.
 */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { BIKES } from '../../core/model/presets.ts';
import { MOTOR_RULES } from '../../core/model/motorRules.ts';
import type { Bike } from '../../core/model/types.ts';
import { createFormat, type Format } from '../../words/format.ts';
import { OutfitChoice } from './outfitChoice.tsx';
import { OwnBikeForm } from './bikeForm.tsx';
import { RiderForm } from './riderForm.tsx';
import type { BikeServices } from './services.ts';
import { Lines, type Page, Paper, Sheet } from '../../ui/parts.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { drawingText, GearStacks } from './gearStacks.tsx';
import { levelForButton } from '../../state/nextRide.ts';
import { words } from '../../words/words.ts';
import { outsideLines } from '../../words/cautions.ts';
import { bikeGears, bikeName, common } from '../../words/common.ts';

const say = words('bike');
const cautions = words('cautions');

const KMH_PER_MPS = 3.6;

/** Id of a bike that is not one of the bundled ones. */
const OWN = 'own';

export const bikePage: Page<BikeServices> = (state, send, services) => {
  const { bike, rider, riderChosen, units } = state.settings;
  const format = createFormat(units);
  const next = levelForButton(state);
  return (
    <Sheet title={common('nav-bike')} intro={say('intro')}>
      <form class="bike-form" onSubmit={(event) => event.preventDefault()}>
        <fieldset class="cards">
          <legend>{say('bikes')}</legend>
          {BIKES.map((one) => (
            <BikeCard
              key={one.id}
              bike={one}
              chosen={one.id === bike.id}
              format={format}
              onChoose={() => send({ kind: 'choose-bike', bike: one })}
            />
          ))}
          <OwnCard
            chosen={bike.id === OWN}
            onChoose={() => send({ kind: 'choose-bike', bike: { ...bike, id: OWN } })}
          />
        </fieldset>
        {bike.id === OWN && (
          <OwnBikeForm bike={bike} onChange={(own) => send({ kind: 'choose-bike', bike: own })} />
        )}
        {bike.motor !== undefined && <MotorCare {...{ bike, format }} />}
        <RiderForm
          // As long as nobody has chosen, the rider follows the bike and the form begins anew.
          key={riderChosen ? 'chosen' : rider.id}
          rider={rider}
          onChange={(one) => send({ kind: 'choose-rider', rider: one })}
        />
        <OutfitChoice
          settings={state.settings}
          onChange={(kit) => send({ kind: 'set', settings: { kit } })}
          paint={services.paintRider}
        />
        {next !== null && (
          <p class="go-bar">
            <Button strong data-ride-this onClick={() => send({ kind: 'ask-ride', rest: next.id })}>
              {say('done')}
            </Button>
          </p>
        )}
      </form>
    </Sheet>
  );
};

/** What to know before riding such a bike outside, and what the law of some places says. */
function MotorCare(props: { readonly bike: Bike; readonly format: Format }): JSX.Element {
  const { bike, format } = props;
  return (
    <Paper title={say('motorTitle')}>
      <Lines lines={outsideLines(bike)} />
      <details>
        <summary>{cautions('motorPlaces')}</summary>
        <ul>
          {MOTOR_RULES.map((rule) => (
            <li key={rule.place}>
              {cautions('motorRule', {
                place: rule.place,
                watts: rule.ratedW ?? 0,
                kmh: rule.helpToKmh ?? 0,
                speed: format.speed((rule.helpToKmh ?? 0) / KMH_PER_MPS),
                source: rule.source ?? cautions('motorReported'),
                year: rule.year ?? 0,
                yearText: String(rule.year ?? ''),
              })}
            </li>
          ))}
        </ul>
        <p class="hint">{cautions('motorPlacesHint')}</p>
      </details>
    </Paper>
  );
}

/** The way to a bike of one's own; it begins as the bike chosen before. */
function OwnCard(props: { readonly chosen: boolean; readonly onChoose: () => void }): JSX.Element {
  return (
    <label class="card" aria-label={`${common('bike-own')}. ${say('ownHint')}`}>
      <input type="radio" name="bike" value={OWN} checked={props.chosen} onChange={props.onChoose} />
      <span class="cut card-body own-card">
        <strong>{common('bike-own')}</strong>
        <span>{say('ownHint')}</span>
        <svg viewBox="0 0 96 48" aria-hidden="true">
          {[10, 15, 20, 26, 33].map((height, i) => (
            <path
              key={height}
              d={`M${14 + i * 17} ${44 - height}V44`}
              stroke="var(--ink)"
              stroke-width="9"
              stroke-dasharray="6 2"
            />
          ))}
        </svg>
      </span>
    </label>
  );
}

function BikeCard(props: {
  readonly bike: Bike;
  readonly chosen: boolean;
  readonly format: Format;
  readonly onChoose: () => void;
}): JSX.Element {
  const { bike, chosen, format, onChoose } = props;
  const name = bikeName(bike.id);
  return (
    <label class="card">
      <input type="radio" name="bike" value={bike.id} checked={chosen} onChange={onChoose} />
      <span class="cut card-body">
        <BikePicture bike={bike} />
        <strong>{name}</strong>{' '}
        <span class="card-facts">
          <span>{bikeGears(bike)}</span>{' '}
          {bike.motor !== undefined && <span>{say(`fact-motor-${bike.motor.place}`)}</span>}{' '}
          <span>{say(`fact-${bike.backPedalBrake === true ? 'backPedal' : bike.shifter}`)}</span>{' '}
          <span>{say('fact-tyre', { tyre: format.tyre(bike) })}</span>
        </span>
        <GearStacks bike={bike} label={drawingText(bike)} />
      </span>
    </label>
  );
}
