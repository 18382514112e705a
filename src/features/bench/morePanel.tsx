/** The rest of a level: what it teaches, for whom, its chance, the mark to pass, and the help on the screen. */
import type { JSX } from 'preact';
import type { LevelEdit } from '../../core/level/edit.ts';
import { AIDS, ROAD_AHEAD_M } from '../../core/settings/settings.ts';
import { LESSONS, type Level } from '../../core/level/schema.ts';
import { Select, Tick } from '../../ui/controls.tsx';
import { NumberField } from './inputs.tsx';
import { useFormat } from './say.ts';
import { words } from '../../words/words.ts';
import { lessonName } from '../../words/common.ts';

const say = words('bench');
const settings = words('settings');

const BIGGEST_SEED = 4_294_967_295;

type Values = Extract<LevelEdit, { kind: 'set' }>['values'];
type Set = (values: Values, gesture?: string | null) => void;

export function MorePanel(props: {
  readonly level: Level;
  readonly onEdit: (edit: LevelEdit, gesture?: string | null) => void;
}): JSX.Element {
  const { level, onEdit } = props;
  const format = useFormat();
  const set: Set = (values, gesture = null) => onEdit({ kind: 'set', values }, gesture);
  const count = (name: 'seed' | 'passMark', high: number, step: number): JSX.Element => (
    <NumberField
      {...{ name, high, step }}
      label={say(`edit-${name}`)}
      unit="count"
      value={level[name]}
      low={0}
      onValue={(value, gesture) => set({ [name]: name === 'seed' ? Math.round(value) : value }, gesture)}
    />
  );
  return (
    <details class="paper fold">
      <summary>
        <h2>{say('edit-more')}</h2>
      </summary>
      <div class="row thing-fields">
        <Purpose level={level} set={set} />
        {count('seed', BIGGEST_SEED, 1)}
        {count('passMark', 100, 5)}
      </div>
      <p class="quiet">{say('edit-seedHint')}</p>
      <fieldset class="aids">
        <legend>{say('edit-aids')}</legend>
        {AIDS.map((aid) => (
          <Tick
            key={aid}
            label={settings.coded(`aids-${aid}`, { length: format.distance(ROAD_AHEAD_M) })}
            checked={level.aids[aid]}
            onChange={(on) => set({ aids: { ...level.aids, [aid]: on } })}
          />
        ))}
      </fieldset>
    </details>
  );
}

/** What a level teaches, and whom. */
function Purpose({ level, set }: { readonly level: Level; readonly set: Set }): JSX.Element {
  return (
    <>
      <Select
        look="select-field"
        label={say('edit-lesson')}
        value={level.teaches}
        options={LESSONS.map((lesson) => [lesson, lessonName(lesson)])}
        onChoose={(teaches) => set({ teaches })}
      />
      <Select
        look="select-field"
        label={say('edit-audience')}
        value={level.audience}
        options={(['everyone', 'children'] as const).map((one) => [one, say(`edit-${one}`)])}
        onChoose={(audience) => set({ audience })}
      />
    </>
  );
}
