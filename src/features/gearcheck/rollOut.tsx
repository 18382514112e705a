/** Roll-out for races of young riders: how far one turn of the hardest gear carries, and whether a limit is kept. */
import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import {
  biggestRollOutM,
  ROLL_OUT_LIMITS,
  type RollOutLimit,
  withinRollOut,
} from '../../core/model/rollout.ts';
import type { Bike } from '../../core/model/types.ts';
import type { Format } from '../../words/format.ts';
import { writeDate } from '../../words/dates.ts';
import { Select } from '../../ui/controls.tsx';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { highestTeeth, type TeethPair } from './answerText.tsx';
import { developmentM, wheelCircumferenceM } from '../../core/model/gears.ts';

const say = words('gearcheck');

interface RollOutProps {
  readonly bike: Bike;
  readonly format: Format;
}

export function RollOut(props: RollOutProps): JSX.Element {
  const { bike, format } = props;
  const [choice, choose] = useState('none');
  const [typed, setTyped] = useState('');
  const { metres } = format;
  const chosen = ROLL_OUT_LIMITS.find((limit) => limit.id === choice);
  return (
    <Paper look="gear-rollout" title={say('rollOut')}>
      <p>
        {say('rollOut-is', { gear: format.gear(highestTeeth(bike)), metres: metres(biggestRollOutM(bike)) })}
      </p>
      <div class="wrap gear-fields">
        <Select
          label={say('rollOut-limit')}
          value={choice}
          options={[
            ['none', say('rollOut-none')],
            ...ROLL_OUT_LIMITS.map(
              (limit) =>
                [
                  limit.id,
                  say('rollOut-option', { ...heldOf(limit), metres: metres(limit.limitM) }),
                ] as const,
            ),
            ['own', say('rollOut-own')],
          ]}
          onChoose={choose}
        />
        {choice === 'own' && <OwnLimit typed={typed} onType={setTyped} />}
      </div>
      <output class="kept-limit" data-rollout>
        {keptText(limitOf(choice, typed), props)}
      </output>
      {chosen !== undefined && <p class="quiet">{sourceText(chosen)}</p>}
      <p class="quiet">{say('rollOut-measured')}</p>
    </Paper>
  );
}

/** Whose limit it is and when it held: until a day, or as a rule book of a year has it. */
function heldOf({ group, body, until, ruleYear }: RollOutLimit) {
  const held = until === undefined ? ('year' as const) : ('until' as const);
  const date = until === undefined ? String(ruleYear ?? '') : writeDate(Date.parse(`${until}T12:00`));
  return { group, body, held, date };
}

function sourceText(limit: RollOutLimit): string {
  const { relaxedInYear: year } = limit;
  return [
    say('rollOut-source', heldOf(limit)),
    ...(year === undefined ? [] : [say('rollOut-relaxed', { year: String(year) })]),
    say('rollOut-ask'),
  ].join(' ');
}

function OwnLimit(props: { readonly typed: string; readonly onType: (typed: string) => void }): JSX.Element {
  const { typed, onType } = props;
  const id = useId();
  const wrong = typed.trim() !== '' && limitOf('own', typed) === null;
  return (
    <label>
      <span>{say('rollOut-metres')}</span>
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
        {wrong ? say('rollOut-unreadable') : ''}
      </span>
    </label>
  );
}

/** Whether a limit (m) is kept, and by which gear; nothing where there is none. */
function keptText(limitM: number | null, { bike, format }: RollOutProps): string {
  if (limitM === null) return '';
  const limit = format.metres(limitM);
  if (withinRollOut(biggestRollOutM(bike), limitM)) return say('rollOut-within', { limit });
  const hardest = hardestWithin(bike, limitM);
  return hardest === null
    ? say('rollOut-allBeyond', { limit })
    : say('rollOut-beyond', { limit, gear: format.gear(hardest) });
}

/** Limits a club may type (m). */
const SHORTEST_M = 2;
const LONGEST_M = 12;

/** The limit in metres for `none`, `own` or the id of a limit; null where there is none, or none that can be read. */
function limitOf(choice: string, typed: string): number | null {
  if (choice === 'own') return readMetres(typed);
  return ROLL_OUT_LIMITS.find(({ id }) => id === choice)?.limitM ?? null;
}

/** Metres with a decimal point or comma. */
function readMetres(typed: string): number | null {
  const match = /^\s*(\d{1,2}(?:[.,]\d{1,3})?)\s*m?\s*$/.exec(typed);
  if (match === null) return null;
  const metres = Number((match[1] as string).replace(',', '.'));
  return metres >= SHORTEST_M && metres <= LONGEST_M ? metres : null;
}

/** The hardest gear of a bike that keeps a limit, or null. */
function hardestWithin(bike: Bike, limitM: number): TeethPair | null {
  const circumferenceM = wheelCircumferenceM(bike);
  const reach = ({ ringTeeth, sprocketTeeth }: TeethPair): number =>
    developmentM(circumferenceM, ringTeeth, sprocketTeeth);
  return bike.chainringsTeeth
    .flatMap((ringTeeth) => bike.sprocketsTeeth.map((sprocketTeeth) => ({ ringTeeth, sprocketTeeth })))
    .filter((gear) => withinRollOut(reach(gear), limitM))
    .reduce<TeethPair | null>(
      (best, gear) => (best === null || reach(gear) > reach(best) ? gear : best),
      null,
    );
}
