/** Sprockets as a range with a count, or one by one with fields that can be added and taken away. */
import type { JSX } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import { Button, Choice } from '../../ui/controls.tsx';
import { Icon } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { type BikeDraft, type EditDraft, MOST_SPROCKETS, withWay } from './draft.ts';
import { BikeField, DraftField } from './field.tsx';

const say = words('bike');

interface SprocketsProps {
  readonly draft: BikeDraft;
  readonly problem: string | undefined;
  /** The sprockets as they are understood, or null. */
  readonly sprocketsTeeth: readonly number[] | null;
  readonly onDraft: (edit: EditDraft) => void;
}

/** Both ways and the choice between them. */
export function Sprockets(props: SprocketsProps): JSX.Element {
  const { draft, onDraft } = props;
  return (
    <div class="own-sprockets">
      <Choice
        legend={say('way')}
        name="sprocket-way"
        value={draft.way}
        options={(['range', 'each'] as const).map((way) => [way, say(`way-${way}`)])}
        onChoose={(way) => onDraft((now) => withWay(now, way))}
      />
      {draft.way === 'range' ? <Range {...props} /> : <Each {...props} />}
    </div>
  );
}

function Range(props: SprocketsProps): JSX.Element {
  const { draft, sprocketsTeeth, onDraft } = props;
  return (
    <>
      <div class="own-fields">
        <DraftField name="range" {...props} inputMode="text" />
        <BikeField
          name="count"
          label={say('count')}
          hint=""
          value={draft.count}
          problem={undefined}
          inputMode="numeric"
          onType={(count) => onDraft((now) => ({ ...now, count }))}
        />
      </div>
      {sprocketsTeeth !== null && <p class="hint">{say('completed', { teeth: sprocketsTeeth.join(' ') })}</p>}
    </>
  );
}

function Each({ draft, problem, onDraft }: SprocketsProps): JSX.Element {
  const id = useId();
  const { each } = draft;
  const list = useFocusOnNew(each.length);
  const put = (place: number, teeth: string): void =>
    onDraft((now) => ({ ...now, each: now.each.map((one, i) => (i === place ? teeth : one)) }));
  return (
    <fieldset class="own-each" aria-describedby={id}>
      <legend>{say('sprocketTeeth')}</legend>
      <div class="own-each-list" ref={list}>
        {each.map((teeth, i) => (
          // A field has no other identity than its place.
          <div class="own-each-one" key={i}>
            <input
              type="text"
              inputMode="numeric"
              autocomplete="off"
              value={teeth}
              aria-label={say('sprocket', { place: i + 1 })}
              aria-invalid={problem !== undefined}
              aria-describedby={id}
              onInput={(event) => put(i, event.currentTarget.value)}
            />
            <Button
              look=""
              aria-label={say('remove', { place: i + 1 })}
              title={say('remove', { place: i + 1 })}
              disabled={each.length === 1}
              onClick={() => onDraft((now) => ({ ...now, each: now.each.filter((_, k) => k !== i) }))}
            >
              <Icon name="close" />
            </Button>
          </div>
        ))}
      </div>
      <Button
        small
        disabled={each.length >= MOST_SPROCKETS}
        onClick={() => onDraft((now) => ({ ...now, each: [...now.each, ''] }))}
      >
        {say('add')}
      </Button>
      <span id={id} class="field-problem">
        {problem ?? ''}
      </span>
    </fieldset>
  );
}

/** Whoever adds a field wants to type into it. */
function useFocusOnNew(count: number): { current: HTMLDivElement | null } {
  const list = useRef<HTMLDivElement | null>(null);
  const before = useRef(count);
  useEffect(() => {
    const grew = count > before.current;
    before.current = count;
    if (!grew) return;
    const fields = list.current?.querySelectorAll('input');
    fields?.[fields.length - 1]?.focus();
  }, [count]);
  return list;
}
