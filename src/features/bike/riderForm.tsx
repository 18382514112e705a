/** The form for a rider: by feel, by numbers, and a band from taps. Only possible riders are handed on. */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { RIDERS } from '../../core/model/presets.ts';
import type { Rider } from '../../core/model/types.ts';
import { Choice } from '../../ui/controls.tsx';
import { riderName } from '../../words/common.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { BikeField } from './field.tsx';
import {
  readRiderDraft,
  type RiderDraft,
  type RiderField,
  riderDraftOf,
  riderFromForm,
} from './riderDraft.ts';
import { TapTest } from './tapTest.tsx';
import './ownbike.css';

const say = words('bike');

interface RiderFormProps {
  readonly rider: Rider;
  /** Called with every possible rider; the id of one by numbers is `own`. */
  readonly onChange: (rider: Rider) => void;
  /** Milliseconds from any start, for the tap test. */
  readonly clock?: () => number;
}

type Way = 'feel' | 'numbers';

export function RiderForm(props: RiderFormProps): JSX.Element {
  const { rider, onChange, clock } = props;
  const [way, setWay] = useState<Way>(RIDERS.some(({ id }) => id === rider.id) ? 'feel' : 'numbers');
  const [draft, setDraft] = useState(() => riderDraftOf(rider));
  const [before, setBefore] = useState(rider);
  // Two fields may change before the form is drawn again, as when a browser fills them in.
  const latest = useRef(draft);
  const keep = (next: RiderDraft): void => {
    latest.current = next;
    setDraft(next);
  };
  const take = (next: Rider): void => {
    keep(riderDraftOf(next));
    onChange(next);
  };
  const type = (name: RiderField, value: string): void => {
    const next = { ...latest.current, [name]: value };
    keep(next);
    const { rider: possible } = readRiderDraft(next);
    if (possible !== null) onChange(possible);
  };
  const takeBand = (cadenceLowRpm: number, cadenceHighRpm: number): void => {
    setBefore(rider);
    setWay('numbers');
    take({ ...riderFromForm({ ...pick(rider), cadenceLowRpm, cadenceHighRpm }), ...above(rider) });
  };
  return (
    <Paper look="own-rider" title={say('rider')}>
      <Choice
        legend={say('rider-way')}
        name="rider-way"
        value={way}
        options={(['feel', 'numbers'] as const).map((one) => [one, say(`rider-way-${one}`)])}
        onChoose={setWay}
      />
      {way === 'feel' ? <Feel {...props} onChange={take} /> : <Numbers draft={draft} onType={type} />}
      <TapTest onBand={takeBand} onUndo={() => take(before)} {...(clock === undefined ? {} : { clock })} />
    </Paper>
  );
}

function pick({ massKg, steadyPowerW }: Rider): Pick<Rider, 'massKg' | 'steadyPowerW'> {
  return { massKg, steadyPowerW };
}

/** Another band does not change how strong somebody is. */
function above({ criticalPowerW, reserveJ }: Rider): Pick<Rider, 'criticalPowerW' | 'reserveJ'> {
  return { criticalPowerW, reserveJ };
}

/** What kind of rider a bundled one is. */
function aboutRider(id: string): string {
  const name = `rider-about-${id}`;
  return say.has(name) ? say(name) : '';
}

function Feel({ rider, onChange }: RiderFormProps): JSX.Element {
  return (
    <div class="own-feel">
      {RIDERS.map((one) => (
        <label key={one.id}>
          <input
            type="radio"
            name="rider-feel"
            value={one.id}
            checked={one.id === rider.id}
            onChange={() => onChange(one)}
          />
          <span>
            <b>{riderName(one.id)}</b> {aboutRider(one.id)}
          </span>
        </label>
      ))}
    </div>
  );
}

function Numbers(props: {
  readonly draft: RiderDraft;
  readonly onType: (name: RiderField, value: string) => void;
}): JSX.Element {
  const { draft, onType } = props;
  const { problems } = readRiderDraft(draft);
  return (
    <div class="own-fields">
      {(['mass', 'power', 'low', 'high'] as const).map((name) => (
        <BikeField
          key={name}
          name={name}
          label={say(`rider-${name}`)}
          hint={say(`rider-${name}-hint`)}
          value={draft[name]}
          problem={problems[name]}
          inputMode="decimal"
          onType={(value) => onType(name, value)}
        />
      ))}
    </div>
  );
}
