/** Roll-out for races of young riders: how far one turn of the hardest gear carries, and whether a limit is kept. */
import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { biggestRollOutM, ROLL_OUT_LIMITS, withinRollOut } from '../../core/model/rollout.ts';
import type { Bike } from '../../core/model/types.ts';
import type { Format } from '../../words/format.ts';
import type { GearCheckWords } from './words.ts';
import { highestGear, type TeethPair } from './answer.ts';
import { hardestWithin, limitOf } from './rollOutLimit.ts';

interface RollOutProps {
  readonly bike: Bike;
  readonly words: GearCheckWords;
  readonly format: Format;
}

/** The card. */
export function RollOut({ bike, words, format }: RollOutProps): JSX.Element {
  const id = useId();
  const [choice, choose] = useState('none');
  const [typed, setTyped] = useState('');
  const { rollOut: say } = words;
  const metres = (value: number): string => words.metres(format.number(value, 2));
  const gear = (pair: TeethPair): string => format.gear(pair);
  const chosen = ROLL_OUT_LIMITS.find((limit) => limit.id === choice);
  return (
    <section class="paper gear-rollout" aria-labelledby={id}>
      <h2 id={id}>{say.title}</h2>
      <p>{say.is(gear(highestGear(bike)), metres(biggestRollOutM(bike)))}</p>
      <div class="gear-fields">
        <label>
          <span>{say.limit}</span>
          <select value={choice} onChange={(event) => choose(event.currentTarget.value)}>
            <option value="none">{say.noLimit}</option>
            {ROLL_OUT_LIMITS.map((limit) => (
              <option key={limit.id} value={limit.id}>
                {say.option(limit, metres(limit.limitM))}
              </option>
            ))}
            <option value="own">{say.ownLimit}</option>
          </select>
        </label>
        {choice === 'own' && <OwnLimit typed={typed} words={words} onType={setTyped} />}
      </div>
      <Kept limitM={limitOf(choice, typed)} {...{ bike, words, metres, gear }} />
      {chosen !== undefined && <p class="quiet">{say.source(chosen)}</p>}
      <p class="quiet">{say.measured}</p>
    </section>
  );
}

function OwnLimit(props: {
  readonly typed: string;
  readonly words: GearCheckWords;
  readonly onType: (typed: string) => void;
}): JSX.Element {
  const { typed, words, onType } = props;
  const id = useId();
  const wrong = typed.trim() !== '' && limitOf('own', typed) === null;
  return (
    <label>
      <span>{words.rollOut.ownMetres}</span>
      <input
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={typed}
        aria-invalid={wrong}
        aria-describedby={id}
        onInput={(event) => onType(event.currentTarget.value)}
      />
      <span id={id} class="field-problem">
        {wrong ? words.rollOut.ownUnreadable : ''}
      </span>
    </label>
  );
}

function Kept(props: {
  readonly limitM: number | null;
  readonly bike: Bike;
  readonly words: GearCheckWords;
  readonly metres: (value: number) => string;
  readonly gear: (pair: TeethPair) => string;
}): JSX.Element {
  const { limitM, bike, words, metres, gear } = props;
  const sentence = (): string => {
    if (limitM === null) return '';
    if (withinRollOut(biggestRollOutM(bike), limitM)) return words.rollOut.within(metres(limitM));
    const hardest = hardestWithin(bike, limitM);
    return words.rollOut.beyond(metres(limitM), hardest === null ? null : gear(hardest));
  };
  return (
    <output class="kept-limit" data-rollout>
      {sentence()}
    </output>
  );
}
