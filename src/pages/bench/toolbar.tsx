/** What is always at hand while a level is on the bench: its title, save, undo and redo, and the test ride. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Course } from '../../core/course/types.ts';
import { ascentM } from '../../core/level/gpx/smooth.ts';
import { levelHash } from '../../core/level/build.ts';
import { benchWords } from '../words/bench.ts';
import { type Draft, desk, isUnsaved } from './desk.ts';
import { freshId } from './fresh.ts';
import { NumberField } from './numberField.tsx';
import { metric } from './say.ts';
import type { BenchServices } from './types.ts';

export function Toolbar(props: {
  readonly draft: Draft;
  readonly course: Course;
  readonly services: BenchServices;
  /** The level cannot be ridden, so it is not saved either. */
  readonly faulty: boolean;
  readonly onTry: () => void;
}): JSX.Element {
  const { draft, course, services, faulty, onTry } = props;
  const { history } = draft;
  const level = history.present;
  const say = benchWords.edit;
  const [failed, setFailed] = useState('');
  const save = async (): Promise<void> => {
    if (faulty) return;
    // What is kept has its own id for good, whatever the text beside the form says.
    const mine = { ...level, id: draft.kept?.id ?? freshId(level.title), rung: 0 };
    const answer = await services.keep(mine);
    setFailed(answer.saved ? '' : (benchWords.keep.codes[answer.code] ?? benchWords.keep.failed));
    if (answer.saved) desk.markKept(mine);
  };
  useShortcuts(() => void save());
  const set = (values: { readonly title?: string; readonly sentence?: string }, gesture: string): void =>
    desk.edit({ kind: 'set', values }, gesture);
  return (
    <section class="paper bench-tools" data-hash={levelHash(level)}>
      <div class="bench-names">
        <label class="text-field">
          <span>{say.titleField}</span>
          <input
            type="text"
            maxLength={80}
            data-level-title
            value={level.title}
            onInput={({ currentTarget }) => set({ title: currentTarget.value }, 'title')}
          />
        </label>
        <label class="text-field">
          <span>{say.sentenceField}</span>
          <input
            type="text"
            maxLength={240}
            value={level.sentence}
            onInput={({ currentTarget }) => set({ sentence: currentTarget.value }, 'sentence')}
          />
        </label>
      </div>
      <div class="bench-buttons">
        <button type="button" class="button strong" data-save disabled={faulty} onClick={() => void save()}>
          {benchWords.keep.save}
        </button>
        <button
          type="button"
          class="button"
          data-undo
          disabled={history.past.length === 0}
          onClick={() => desk.undo()}
        >
          {say.undo}
        </button>
        <button
          type="button"
          class="button"
          data-redo
          disabled={history.future.length === 0}
          onClick={() => desk.redo()}
        >
          {say.redo}
        </button>
        <a class="button" href="#bench">
          {say.list}
        </a>
        <output class="told" data-keep-state={isUnsaved(draft) ? 'unsaved' : 'saved'}>
          {failed === '' ? keepWords(draft, faulty) : failed}
        </output>
      </div>
      <p class="quiet" data-road-sum>
        {say.facts(
          metric.road(course.lengthM),
          metric.distance(ascentM(course.heightM)),
          course.pitches.length,
        )}
      </p>
      <fieldset class="try-out">
        <legend>{benchWords.tryOut.title}</legend>
        <NumberField
          label={benchWords.tryOut.from}
          unit={benchWords.units.m}
          name="try-from"
          value={Math.min(draft.tryFromM, course.lengthM)}
          low={0}
          high={Math.max(0, course.lengthM - 100)}
          step={10}
          onValue={(tryFromM) => desk.change({ tryFromM })}
        />
        <button type="button" class="button" data-try disabled={faulty} onClick={onTry}>
          {benchWords.tryOut.ride}
        </button>
        <span class="quiet">{benchWords.tryOut.hint}</span>
      </fieldset>
    </section>
  );
}

function keepWords(draft: Draft, faulty: boolean): string {
  if (faulty) return benchWords.keep.faulty;
  if (!isUnsaved(draft)) return benchWords.keep.saved;
  return draft.kept === null ? benchWords.keep.unsaved : benchWords.keep.changed;
}

/** Ctrl or ⌘ with Z, Y and S, but not while a text is being typed, which has an undo of its own. */
function useShortcuts(save: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const typing = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
      if (key === 's') save();
      else if (typing) return;
      else if (key === 'y' || (key === 'z' && event.shiftKey)) desk.redo();
      else if (key === 'z') desk.undo();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
}
