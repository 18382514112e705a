/** The bench without a level on it: ways to begin, and the own levels with what can be done to each. */
import { Button, FileButton, Select } from '../../ui/controls.tsx';
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { courseOfLevel } from '../../core/level/build.ts';
import type { ParseResult } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { hashOf } from '../../state/address.ts';
import { inLearningOrder } from '../../core/coach/ladder.ts';
import { Profile } from '../../ui/pictures/profile.tsx';
import type { Send } from '../../state/store.ts';
import { type Draft, isUnsaved } from './levelEditor.ts';
import { copyOf, freshLevel } from './fresh.ts';
import { levelOfFile } from './jsonText.ts';
import { hardestLength, notKept, useFormat, useTold } from './say.ts';
import { spokenLanguage, words } from '../../words/words.ts';
import { DoingButton } from './inputs.tsx';
import type { BenchServices, KeepAnswer } from './services.ts';

const say = words('bench');

interface HomeProps {
  readonly levels: readonly Level[];
  readonly ownLevels: readonly Level[];
  readonly draft: Draft | null;
  readonly services: BenchServices;
  readonly send: Send;
  /** The level on the bench is not wanted any more. */
  readonly onDrop: () => void;
  /** Puts a level on the bench. */
  readonly onOpen: (level: Level, kept: boolean) => void;
  /** Shows a level from a file before it is kept. */
  readonly onFile: (result: ParseResult) => void;
}

export function BenchHome(props: HomeProps): JSX.Element {
  const { draft } = props;
  return (
    <>
      {draft !== null && isUnsaved(draft) && (
        <section class="paper row unsaved-note" data-unsaved>
          <p>{say('home-unsaved', { title: draft.history.present.title })}</p>
          <div class="row thing-doing">
            <a class="button" href="#bench/edit">
              {say('home-goOn')}
            </a>
            <Button data-drop onClick={props.onDrop}>
              {say('home-drop')}
            </Button>
          </div>
        </section>
      )}
      <Beginnings {...props} />
      <OwnLevels {...props} />
    </>
  );
}

function Beginnings({ levels, onOpen, onFile }: HomeProps): JSX.Element {
  const read = async (file: Blob): Promise<void> => onFile(await levelOfFile(file));
  return (
    <section class="bench-begin" aria-label={say('home-make')}>
      <Button
        look="paper way-card"
        data-new
        onClick={() => onOpen(freshLevel(say('home-fresh'), say('home-freshSentence')), false)}
      >
        <strong>{say('home-fresh')}</strong>
        <span>{say('home-freshHint')}</span>
      </Button>
      <a class="paper way-card" href="#bench/road" data-road-way>
        <strong>{say('road-title')}</strong>
        <span>{say('home-roadHint', { length: hardestLength(useFormat()) })}</span>
      </a>
      <FileButton name="data-level-file" class="paper way-card" onFiles={([file]) => file && void read(file)}>
        <strong>{say('home-file')}</strong>
        <span>{say('home-fileHint')}</span>
      </FileButton>
      <CopyCard levels={levels} onOpen={onOpen} />
    </section>
  );
}

/** Begins with one of the game's own levels. */
function CopyCard({ levels, onOpen }: Pick<HomeProps, 'levels' | 'onOpen'>): JSX.Element | null {
  const ordered = useMemo(() => inLearningOrder(levels), [levels]);
  const [copyId, setCopyId] = useState(ordered[0]?.id ?? '');
  const copied = ordered.find((level) => level.id === copyId);
  if (copied === undefined) return null;
  return (
    <div class="paper way-card">
      <strong>{say('home-copy')}</strong>
      <span>{say('home-copyHint')}</span>
      <Select
        quiet
        look="select-field"
        label={say('home-choose')}
        value={copyId}
        options={ordered.map(({ id, title }) => [id, title])}
        onChoose={setCopyId}
      />
      <Button
        look="small-button"
        data-copy
        onClick={() => onOpen({ ...copyOf(copied, copied.title), lang: spokenLanguage() }, false)}
      >
        {say('home-copyButton')}
      </Button>
    </div>
  );
}

function OwnLevels({ ownLevels, services, onOpen }: HomeProps): JSX.Element {
  const [shown, tell] = useTold();
  const [removed, setRemoved] = useState<Level | null>(null);
  const told = (answer: KeepAnswer, sentence: () => string): boolean => {
    tell(answer.saved ? sentence : () => notKept(answer.code));
    return answer.saved;
  };
  const remove = async (level: Level): Promise<void> => {
    const { title } = level;
    if (told(await services.remove(level.id), () => say('home-removed', { title }))) setRemoved(level);
  };
  const restore = async (level: Level): Promise<void> => {
    const { title } = level;
    if (told(await services.restore(level.id), () => say('home-restored', { title }))) setRemoved(null);
  };
  const duplicate = async (level: Level): Promise<void> => {
    const copy = copyOf(level, nextTitle(level.title, ownLevels));
    told(await services.keep(copy), () => say('home-duplicated', { title: copy.title }));
  };
  return (
    <section class="level-row" aria-labelledby="bench-own">
      <h2 id="bench-own">{say('home-own')}</h2>
      <output class={shown === '' ? '' : 'paper row told-card'}>
        {shown !== '' && <span>{shown}</span>}
        {removed !== null && (
          <Button look="small-button" data-undo-remove onClick={() => void restore(removed)}>
            {say('edit-undo')}
          </Button>
        )}
      </output>
      {ownLevels.length === 0 && <p>{say('home-none')}</p>}
      <ul class="level-list">
        {ownLevels.map((level) => (
          <li key={level.id}>
            <OwnCard
              level={level}
              onEdit={() => onOpen(level, true)}
              onDuplicate={() => void duplicate(level)}
              onRemove={() => void remove(level)}
            />
          </li>
        ))}
      </ul>
    </section>
  );
}

function OwnCard(props: {
  readonly level: Level;
  readonly onEdit: () => void;
  readonly onDuplicate: () => void;
  readonly onRemove: () => void;
}): JSX.Element {
  const { level } = props;
  const course = useMemo(() => courseOfLevel(level), [level]);
  const format = useFormat();
  const steepest = format.percent(course.slopeRatio.reduce((a, b) => Math.max(a, b), 0));
  const { title: what } = level;
  return (
    <article class="cut level-card own-card" data-own-level={level.id}>
      <Profile course={course} />
      <div class="own-words">
        <strong lang={level.lang}>{level.title}</strong>
        <span lang={level.lang}>{level.sentence}</span>
        <span class="level-facts">
          {say('home-facts', { length: format.road(course.lengthM), steepest })}
        </span>
        <div class="row thing-doing">
          <a
            class="small-button"
            data-own="ride"
            aria-label={say('named', { doing: say('home-ride'), what })}
            href={hashOf({ view: 'ride', rest: level.id })}
          >
            {say('home-ride')}
          </a>
          <DoingButton data-own="edit" doing={say('home-edit')} what={what} onClick={props.onEdit} />
          <DoingButton
            data-own="duplicate"
            doing={say('home-duplicate')}
            what={what}
            onClick={props.onDuplicate}
          />
          <DoingButton data-own="remove" doing={say('home-remove')} what={what} onClick={props.onRemove} />
        </div>
      </div>
    </article>
  );
}

/** The title with a number that no other own level has. */
function nextTitle(title: string, taken: readonly Level[]): string {
  const bare = title.replace(/ \d+$/, '').slice(0, 74);
  let number = 2;
  while (taken.some((level) => level.title === `${bare} ${number}`)) number += 1;
  return `${bare} ${number}`;
}
