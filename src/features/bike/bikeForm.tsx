/**
 * The form for an own bike: what is typed is kept as typed, drawn as soon as it is possible, and told about in a
 * sentence beside the field while it is not. Only possible bikes are handed on.
 */
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { bikeWarnings } from '../../core/model/bikeInput.ts';
import { HELP_RATIOS, MOTOR_PLACES } from '../../core/model/motor.ts';
import { HUB_KINDS } from '../../core/model/hubKinds.ts';
import { hasHub, shifterPlaces } from '../../core/model/shifters.ts';
import type { Bike } from '../../core/model/types.ts';
import { Choice, Select, Tick } from '../../ui/controls.tsx';
import { BikePicture } from '../../ui/pictures/bike.tsx';
import { GearStacks } from '../../ui/pictures/gearStacks.tsx';
import type { OwnBikeWords } from './words.ts';
import { type BikeDraft, draftOf, type DraftReading, type EditDraft, readDraft } from './draft.ts';
import { BikeField } from './field.tsx';
import { Sprockets } from './sprockets.tsx';
import './ownbike.css';

interface OwnBikeFormProps {
  /** The bike the form begins with. Later changes of it are not taken over: give the form another key for that. */
  readonly bike: Bike;
  /** Called with every possible bike; its id is `own`. */
  readonly onChange: (bike: Bike) => void;
  readonly words: OwnBikeWords;
}

/** The form. */
export function OwnBikeForm({ bike, onChange, words }: OwnBikeFormProps): JSX.Element {
  const [base] = useState(bike);
  const [draft, setDraft] = useState(() => draftOf(bike));
  const [drawn, setDrawn] = useState(bike);
  const reading = readDraft(draft, base, words);
  // Two fields may change before the form is drawn again, as when a browser fills them in.
  const latest = useRef(draft);
  const change = (edit: EditDraft): void => {
    const next = edit(latest.current);
    latest.current = next;
    setDraft(next);
    const { bike: possible } = readDraft(next, base, words);
    if (possible === null) return;
    setDrawn(possible);
    onChange(possible);
  };
  return (
    <section class="paper own-bike" aria-label={words.title}>
      <h2>{words.title}</h2>
      <p class="hint">{words.intro}</p>
      <div class="own-columns">
        <div>
          <Fields {...{ draft, reading, words }} onDraft={change} />
        </div>
        <Drawing bike={drawn} current={reading.bike !== null} words={words} />
      </div>
    </section>
  );
}

interface FieldsProps {
  readonly draft: BikeDraft;
  readonly reading: DraftReading;
  readonly words: OwnBikeWords;
  readonly onDraft: (edit: EditDraft) => void;
}

function Fields({ draft, reading, words, onDraft }: FieldsProps): JSX.Element {
  const { problems, sprocketsTeeth } = reading;
  const plain = (name: 'rings' | 'tyre' | 'crank' | 'mass', inputMode: 'text' | 'decimal'): JSX.Element => (
    <BikeField
      name={name}
      label={words[name]}
      hint={words[`${name}Hint`]}
      value={draft[name]}
      problem={problems[name]}
      inputMode={inputMode}
      onType={(value) => onDraft((now) => ({ ...now, [name]: value }))}
    />
  );
  return (
    <>
      {plain('rings', 'text')}
      <Select
        label={words.gearing}
        name="gearing"
        value={draft.gearing}
        options={[
          ['sprockets', words.onSprockets],
          ...HUB_KINDS.map((kind) => [kind, words.inHub[kind]] as const),
        ]}
        onChoose={(gearing) => onDraft((now) => ({ ...now, gearing }))}
      />
      {draft.gearing === 'sprockets' ? (
        <Sprockets {...{ draft, sprocketsTeeth, words, onDraft }} problem={problems.sprockets} />
      ) : (
        <Hub {...{ draft, words, onDraft }} problem={problems.sprockets} />
      )}
      <div class="own-fields">
        {plain('tyre', 'text')}
        {plain('crank', 'decimal')}
        {plain('mass', 'decimal')}
      </div>
      {draft.gearing === 'sprockets' && <Shifters draft={draft} words={words} onDraft={onDraft} />}
      <MotorFields {...{ draft, words, onDraft }} problem={problems.battery} />
    </>
  );
}

type PartProps = Pick<FieldsProps, 'draft' | 'words' | 'onDraft'>;

/** One sprocket, the brake, and the rule that is the other way round. */
function Hub(props: PartProps & { readonly problem: string | undefined }): JSX.Element {
  const { draft, words, onDraft, problem } = props;
  return (
    <>
      <p class="hint">{words.hubRule}</p>
      <BikeField
        name="hubSprocket"
        label={words.hubSprocket}
        hint={words.hubSprocketHint}
        value={draft.hubSprocket}
        problem={problem}
        inputMode="numeric"
        onType={(hubSprocket) => onDraft((now) => ({ ...now, hubSprocket }))}
      />
      <Tick
        label={words.backPedalBrake}
        checked={draft.backPedalBrake}
        onChange={(backPedalBrake) => onDraft((now) => ({ ...now, backPedalBrake }))}
      />
    </>
  );
}

/** Whether there is a motor, how much it helps, and what to know of it before the first ride outside. */
function MotorFields(props: PartProps & { readonly problem: string | undefined }): JSX.Element {
  const { draft, words, onDraft, problem } = props;
  return (
    <>
      <Select
        label={words.motor}
        name="motor"
        value={draft.motor}
        options={[
          ['none', words.noMotor],
          ...MOTOR_PLACES.map((place) => [place, words.motorAt[place]] as const),
        ]}
        onChoose={(motor) => onDraft((now) => ({ ...now, motor }))}
      />
      {draft.motor !== 'none' && (
        <>
          <Select
            label={words.help}
            name="help"
            value={draft.help}
            options={HELP_RATIOS.map((ratio) => [String(ratio), words.helpOf[ratio]] as const)}
            onChoose={(help) => onDraft((now) => ({ ...now, help }))}
          />
          <BikeField
            name="battery"
            label={words.battery}
            hint={words.batteryHint}
            value={draft.battery}
            problem={problem}
            inputMode="decimal"
            onType={(battery) => onDraft((now) => ({ ...now, battery }))}
          />
          <Tick
            label={words.brakeSwitches}
            checked={draft.brakeSwitches}
            onChange={(brakeSwitches) => onDraft((now) => ({ ...now, brakeSwitches }))}
          />
        </>
      )}
    </>
  );
}

function Shifters({ draft, words, onDraft }: PartProps): JSX.Element {
  return (
    <>
      <Choice
        legend={words.shifters}
        name="shifter"
        value={draft.shifter}
        options={[
          ['mechanical', words.mechanical],
          ['electronic', words.electronic],
        ]}
        onChoose={(shifter) => onDraft((now) => ({ ...now, shifter }))}
      />
      {draft.shifter === 'electronic' && (
        <Tick
          label={words.refuses}
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
  readonly words: OwnBikeWords;
}): JSX.Element {
  const { bike, current, words } = props;
  const { chainringsTeeth: rings, sprocketsTeeth: sprockets } = bike;
  const [ringCount = 1, rearCount = 1] = shifterPlaces(bike);
  return (
    <div class="own-drawing" data-current={current}>
      <BikePicture bike={bike} />
      <GearStacks bike={bike} label={words.stacks(rings.join(' '), sprockets.join(' '))} />
      <p class="own-gears">
        <b>{(hasHub(bike) ? words.hubGears : words.gears)(ringCount, rearCount)}</b>
      </p>
      <output class="own-said">
        {!current && <span>{words.lastGood}</span>}
        {bikeWarnings(bike).map((warning) => (
          <span key={warning.code} class="own-warning" data-warning={warning.code}>
            {words.warnings(warning)}
          </span>
        ))}
      </output>
    </div>
  );
}
