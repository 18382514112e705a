/** What is always at hand while a level is on the bench: its title, save, undo and redo, and the test ride. */
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { Course } from '../../core/course/types.ts';
import { ascentM } from '../../core/gpx/smooth.ts';
import type { Level } from '../../core/level/schema.ts';
import { type Draft, LEAST_TRY_M, levelEditor, isUnsaved } from './levelEditor.ts';
import { freshId } from './fresh.ts';
import { NumberField, TextField } from './inputs.tsx';
import { notKept, useFormat } from './say.ts';
import { spokenLanguage, words } from '../../words/words.ts';
import type { BenchServices } from './services.ts';

const say = words('bench');

interface ToolbarProps {
  readonly draft: Draft;
  readonly course: Course;
  readonly services: BenchServices;
  /** The level cannot be ridden, so it is not saved either. */
  readonly faulty: boolean;
  readonly onTry: () => void;
}

export function Toolbar(props: ToolbarProps): JSX.Element {
  const { draft, course } = props;
  const level = draft.history.present;
  const format = useFormat();
  return (
    <section class="paper bench-tools">
      <Names level={level} />
      <Doing {...props} />
      <p class="quiet" data-road-sum>
        {say('edit-facts', {
          length: format.road(course.lengthM),
          climbed: format.distance(ascentM(course.heightM)),
          pitches: course.pitches.length,
        })}
      </p>
      <TryOut {...props} />
    </section>
  );
}

function Names({ level }: { readonly level: Level }): JSX.Element {
  const set = (values: { readonly title?: string; readonly sentence?: string }, gesture: string): void =>
    levelEditor.edit({ kind: 'set', values: { ...values, lang: spokenLanguage() } }, gesture);
  return (
    <div class="bench-names">
      <TextField
        data-level-title
        label={say('edit-titleField')}
        maxLength={80}
        lang={level.lang}
        value={level.title}
        onType={(title) => set({ title }, 'title')}
      />
      <TextField
        label={say('edit-sentenceField')}
        maxLength={240}
        lang={level.lang}
        value={level.sentence}
        onType={(sentence) => set({ sentence }, 'sentence')}
      />
    </div>
  );
}

/** Save, undo, redo, and whether it is kept. */
function Doing({ draft, services, faulty }: ToolbarProps): JSX.Element {
  const { history } = draft;
  const save = async (): Promise<void> => {
    if (faulty) return;
    const level = history.present;
    // What is kept has its own id for good, whatever the text beside the form says.
    const mine = { ...level, id: draft.kept?.id ?? freshId(level.title), rung: 0 };
    const answer = await services.keep(mine);
    if (answer.saved) levelEditor.markKept(level, mine);
    else levelEditor.markNotKept(answer.code);
  };
  useShortcuts(() => void save());
  const step = (label: string, count: number, doing: () => void, name: object): JSX.Element => (
    <Button {...name} disabled={count === 0} onClick={doing}>
      {label}
    </Button>
  );
  return (
    <div class="row bench-buttons">
      <Button strong data-save disabled={faulty} onClick={() => void save()}>
        {say('keep-save')}
      </Button>
      {step(say('edit-undo'), history.past.length, () => levelEditor.undo(), { 'data-undo': '' })}
      {step(say('edit-redo'), history.future.length, () => levelEditor.redo(), { 'data-redo': '' })}
      <a class="button" href="#bench">
        {say('edit-list')}
      </a>
      <output class="told" data-keep-state={isUnsaved(draft) ? 'unsaved' : 'saved'}>
        {keepWords(draft, faulty)}
      </output>
    </div>
  );
}

function TryOut({ draft, course, faulty, onTry }: ToolbarProps): JSX.Element {
  return (
    <fieldset class="row try-out">
      <legend>{say('try-title')}</legend>
      <NumberField
        label={say('try-from')}
        unit="m"
        name="try-from"
        value={Math.min(draft.tryFromM, course.lengthM)}
        low={0}
        high={Math.max(0, course.lengthM - LEAST_TRY_M)}
        step={10}
        onValue={(tryFromM) => levelEditor.change({ tryFromM })}
      />
      <Button data-try disabled={faulty} onClick={onTry}>
        {say('try-ride')}
      </Button>
      <span class="quiet">{say('try-hint')}</span>
    </fieldset>
  );
}

function keepWords(draft: Draft, faulty: boolean): string {
  if (faulty) return say('keep-faulty');
  if (!isUnsaved(draft)) return say('keep-saved');
  if (draft.notKept !== null) return notKept(draft.notKept);
  return draft.kept === null ? say('keep-unsaved') : say('keep-changed');
}

/**
 * Ctrl or ⌘ with Z, Y and S. The fields of the bench have no undo of their own beside this one: what a browser would take
 * back is whatever was typed last, not what was done last. Only text that is no level yet is left to the browser.
 */
function useShortcuts(save: () => void): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      const key = event.key.toLowerCase();
      const unread = event.target instanceof Element && event.target.closest('[data-unread]') !== null;
      if (key === 's') save();
      else if (unread) return;
      else if (key === 'y' || (key === 'z' && event.shiftKey)) levelEditor.redo();
      else if (key === 'z') levelEditor.undo();
      else return;
      event.preventDefault();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  });
}
