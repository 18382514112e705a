/**
 * The form for an own bike: what is typed is kept as typed, drawn as soon as it is possible, and told about in a
 * sentence beside the field while it is not. Only possible bikes are handed on.
 */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { bikeWarnings } from '../../core/model/bikeInput.ts';
import { HELP_RATIOS, MOTOR_PLACES } from '../../core/model/motor.ts';
import { HUB_KINDS } from '../../core/model/hubKinds.ts';
import type { Bike } from '../../core/model/types.ts';
import { Choice, Select, Tick } from '../../ui/controls.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { drawingText, GearStacks } from './gearStacks.tsx';
import { bikeGears } from '../../words/common.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { type BikeDraft, draftOf, type DraftReading, type EditDraft, readDraft } from './draft.ts';
import { DraftField } from './field.tsx';
import { Sprockets } from './sprockets.tsx';
import './ownbike.css';

const say = words('bike');

interface OwnBikeFormProps {
  /** The bike the form begins with. Later changes of it are not taken over: give the form another key for that. */
  readonly bike: Bike;
  /** Called with every possible bike; its id is `own`. */
  readonly onChange: (bike: Bike) => void;
}

export function OwnBikeForm({ bike, onChange }: OwnBikeFormProps): JSX.Element {
  const [base] = useState(bike);
  const [draft, setDraft] = useState(() => draftOf(bike));
  const [drawn, setDrawn] = useState(bike);
  const reading = readDraft(draft, base);
  // Two fields may change before the form is drawn again, as when a browser fills them in.
  const latest = useRef(draft);
  const change = (edit: EditDraft): void => {
    const next = edit(latest.current);
    latest.current = next;
    setDraft(next);
    const { bike: possible } = readDraft(next, base);
    if (possible === null) return;
    setDrawn(possible);
    onChange(possible);
  };
  return (
    <Paper look="own-bike" title={say('own-title')}>
      <p class="hint">{say('own-intro')}</p>
      <div class="own-columns">
        <div>
          <Fields {...{ draft, reading }} onDraft={change} />
        </div>
        <Drawing bike={drawn} current={reading.bike !== null} />
      </div>
    </Paper>
  );
}

interface FieldsProps {
  readonly draft: BikeDraft;
  readonly reading: DraftReading;
  readonly onDraft: (edit: EditDraft) => void;
}

function Fields({ draft, reading, onDraft }: FieldsProps): JSX.Element {
  const { problems, sprocketsTeeth } = reading;
  const plain = (name: 'rings' | 'tyre' | 'crank' | 'mass', inputMode: 'text' | 'decimal'): JSX.Element => (
    <DraftField {...{ name, draft, inputMode, onDraft }} problem={problems[name]} />
  );
  return (
    <>
      {plain('rings', 'text')}
      <Select
        label={say('gearing')}
        name="gearing"
        value={draft.gearing}
        options={(['sprockets', ...HUB_KINDS] as const).map((kind) => [kind, say(`gearing-${kind}`)])}
        onChoose={(gearing) => onDraft((now) => ({ ...now, gearing }))}
      />
      {draft.gearing === 'sprockets' ? (
        <Sprockets {...{ draft, sprocketsTeeth, onDraft }} problem={problems.sprockets} />
      ) : (
        <Hub {...{ draft, onDraft }} problem={problems.sprockets} />
      )}
      <div class="own-fields">
        {plain('tyre', 'text')}
        {plain('crank', 'decimal')}
        {plain('mass', 'decimal')}
      </div>
      {draft.gearing === 'sprockets' && <Shifters draft={draft} onDraft={onDraft} />}
      <MotorFields {...{ draft, onDraft }} problem={problems.battery} />
    </>
  );
}

type PartProps = Pick<FieldsProps, 'draft' | 'onDraft'>;

/** One sprocket, the brake, and the rule that is the other way round. */
function Hub(props: PartProps & { readonly problem: string | undefined }): JSX.Element {
  const { draft, onDraft } = props;
  return (
    <>
      <p class="hint">{say('hubRule')}</p>
      <DraftField name="hubSprocket" {...props} inputMode="numeric" />
      <Tick
        label={say('backPedalBrake')}
        checked={draft.backPedalBrake}
        onChange={(backPedalBrake) => onDraft((now) => ({ ...now, backPedalBrake }))}
      />
    </>
  );
}

/** Whether there is a motor, how much it helps, and what to know of it before the first ride outside. */
function MotorFields(props: PartProps & { readonly problem: string | undefined }): JSX.Element {
  const { draft, onDraft } = props;
  return (
    <>
      <Select
        label={say('motor')}
        name="motor"
        value={draft.motor}
        options={(['none', ...MOTOR_PLACES] as const).map((place) => [place, say(`motor-${place}`)])}
        onChoose={(motor) => onDraft((now) => ({ ...now, motor }))}
      />
      {draft.motor !== 'none' && (
        <>
          <Select
            label={say('help')}
            name="help"
            value={draft.help}
            options={HELP_RATIOS.map((ratio) => [String(ratio), say('help-much', { ratio })] as const)}
            onChoose={(help) => onDraft((now) => ({ ...now, help }))}
          />
          <DraftField name="battery" {...props} inputMode="decimal" />
          <Tick
            label={say('brakeSwitches')}
            checked={draft.brakeSwitches}
            onChange={(brakeSwitches) => onDraft((now) => ({ ...now, brakeSwitches }))}
          />
        </>
      )}
    </>
  );
}

function Shifters({ draft, onDraft }: PartProps): JSX.Element {
  return (
    <>
      <Choice
        legend={say('shifters')}
        name="shifter"
        value={draft.shifter}
        options={(['mechanical', 'electronic'] as const).map((kind) => [kind, say(`shifters-${kind}`)])}
        onChoose={(shifter) => onDraft((now) => ({ ...now, shifter }))}
      />
      {draft.shifter === 'electronic' && (
        <Tick
          label={say('refuses')}
          checked={draft.refusesCrossed}
          onChange={(refusesCrossed) => onDraft((now) => ({ ...now, refusesCrossed }))}
        />
      )}
    </>
  );
}

function Drawing(props: {
  readonly bike: Bike;
  /** False while what is typed is no bike and the last possible one is drawn. */
  readonly current: boolean;
}): JSX.Element {
  const { bike, current } = props;
  return (
    <div class="own-drawing" data-current={current}>
      <BikePicture bike={bike} />
      <GearStacks bike={bike} label={drawingText(bike)} />
      <p class="own-gears">
        <b>{bikeGears(bike)}</b>
      </p>
      <output class="own-said">
        {!current && <span>{say('lastGood')}</span>}
        {bikeWarnings(bike).map(({ code, ...numbers }) => (
          <span key={code} class="own-warning" data-warning={code}>
            {say.coded(`warning-${code}`, numbers)}
          </span>
        ))}
      </output>
    </div>
  );
}
