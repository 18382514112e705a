/** A coach's copy: every sentence and every minute of a plan can be changed. */
import type { JSX } from 'preact';
import {
  MOST_SESSION_MIN,
  SESSION_PARTS,
  SESSION_TITLE_CHARACTERS,
  type SessionPart,
  type SessionPlan,
} from '../../core/group/sessionPlan.ts';
import { cleanText } from '../../core/group/texts.ts';
import type { Level } from '../../core/level/schema.ts';
import { LIMITS } from '../../core/math/limits.ts';
import { Select } from '../../ui/controls.tsx';
import { words } from '../../words/words.ts';

const say = words('teach');

const { lines: LINES, lineCharacters } = LIMITS.sessionPlan;

/** What was typed as lines: none that is empty, none too long, no more than a part may have. */
export function linesOf(text: string): string[] {
  return text
    .split('\n')
    .map((line) => cleanText(line, lineCharacters.most))
    .filter((line) => line !== '')
    .slice(0, LINES.most);
}

/** The form. What is in it is a sound plan at every moment. */
export function ChangePlan(props: {
  readonly plan: SessionPlan;
  readonly levels: readonly Level[];
  readonly onChange: (plan: SessionPlan) => void;
}): JSX.Element {
  const { plan, levels, onChange } = props;
  const changePart = (name: SessionPart, part: Partial<SessionPlan['parts'][SessionPart]>): void =>
    onChange({ ...plan, parts: { ...plan.parts, [name]: { ...plan.parts[name], ...part } } });
  return (
    <form class="paper teach-form" onSubmit={(event) => event.preventDefault()}>
      <h2>{say('changing')}</h2>
      <p class="hint">{say('changeHint')}</p>
      <label class="field">
        <span>{say('fields-title')}</span>
        <input
          type="text"
          name="title"
          maxLength={SESSION_TITLE_CHARACTERS}
          value={plan.title}
          onChange={(event) =>
            onChange({
              ...plan,
              title: cleanText(event.currentTarget.value, SESSION_TITLE_CHARACTERS) || plan.title,
            })
          }
        />
      </label>
      <Select
        label={say('fields-level')}
        name="level"
        value={plan.levelId}
        options={levels.map(({ id, title }) => [id, title] as const)}
        onChoose={(levelId) => onChange({ ...plan, levelId })}
      />
      {SESSION_PARTS.map((name) => (
        <fieldset key={name}>
          <legend>{say(`parts-${name}`)}</legend>
          <label class="field">
            <span>{say('fields-minutes')}</span>
            <input
              type="number"
              name={`${name}-minutes`}
              min={0}
              max={MOST_SESSION_MIN}
              value={plan.parts[name].minutes}
              onChange={(event) => changePart(name, { minutes: minutesOf(event.currentTarget.value) })}
            />
          </label>
          <textarea
            name={name}
            aria-label={say(`parts-${name}`)}
            rows={4}
            defaultValue={plan.parts[name].lines.join('\n')}
            onInput={(event) => changePart(name, { lines: linesOf(event.currentTarget.value) })}
          />
        </fieldset>
      ))}
    </form>
  );
}

function minutesOf(text: string): number {
  const value = Math.round(Number(text));
  return Number.isFinite(value) ? Math.min(MOST_SESSION_MIN, Math.max(0, value)) : 0;
}
