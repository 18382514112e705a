/**
 * The level bench: which of its parts an address shows. `#bench` is the list, `#bench/edit` the level that lies on
 * it, `#bench/road` a road from a file, `#bench/level.…` a level that came by link.
 */
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { ParseResult } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { type PageProps, type Page, Question, Sheet } from '../../ui/parts.tsx';
import { useAnswer } from '../../ui/hooks.ts';
import { isUnsaved, levelEditor, useDraft } from './levelEditor.ts';
import { Editor } from './editor.tsx';
import { BenchHome } from './home.tsx';
import { keepDraft } from './keepDraft.ts';
import { Opened, OpenedLink } from './opened.tsx';
import { RoadImport } from './roadImport.tsx';
import { levelOfFile } from './jsonText.ts';
import { sharedText } from './shareLink.ts';
import { common } from '../../words/common.ts';
import { Units } from './say.ts';
import { words } from '../../words/words.ts';
import type { BenchPageServices, BenchServices } from './services.ts';
import './bench.css';
import './forms.css';
import './road.css';

const say = words('bench');

export const benchPage: Page<BenchPageServices> = (state, send, services) => (
  <Bench {...{ state, send, services }} />
);

function Bench({ state, send, services }: PageProps<BenchPageServices>): JSX.Element {
  const mine = useAnswer(async () => {
    const bench = await services.bench();
    await keepDraft(levelEditor, bench);
    return bench;
  }, []);
  return (
    <Sheet {...titleOf(state.rest)}>
      {typeof mine === 'string' ? (
        <output>{say(mine === 'failed' ? 'openFailed' : 'opening')}</output>
      ) : (
        <Units.Provider value={state.settings.units}>
          <Part state={state} send={send} services={mine} />
        </Units.Provider>
      )}
    </Sheet>
  );
}

function titleOf(rest: string): { readonly title: string; readonly intro?: string } {
  // Whoever is at work knows what the bench is for, and wants the road on the first screen.
  if (rest === 'edit' && levelEditor.draft() !== null) return { title: common('nav-bench') };
  if (rest === 'road') return { title: say('road-title'), intro: say('road-intro') };
  if (sharedText(rest) !== null) return { title: say('opened-title'), intro: say('opened-intro') };
  return { title: common('nav-bench'), intro: say('intro') };
}

function Part({ state, send, services }: PageProps<BenchServices>): JSX.Element {
  const { rest, levels, ownLevels } = state;
  const draft = useDraft();
  /** A level from a file, shown before it is kept. */
  const [file, setFile] = useState<ParseResult | null>(null);
  /** What is to be done once the unsaved level may go. */
  const [waiting, setWaiting] = useState<(() => void) | null>(null);
  const go = (to: string): void => send({ kind: 'address', address: { view: 'bench', rest: to } });
  const open = async (level: Level, kept: boolean): Promise<void> => {
    const recorded = kept ? await services.recordedOf(level.id) : null;
    levelEditor.open(level, kept, recorded);
    go('edit');
  };
  const askFirst = (level: Level, kept: boolean): void => {
    const doing = (): void => void open(level, kept);
    if (draft !== null && isUnsaved(draft) && draft.history.past.length > 0) setWaiting(() => doing);
    else doing();
  };
  /** A recorded ride that was dropped on the page. */
  const [dropped, setDropped] = useState<File | null>(null);
  const take = async (given: File): Promise<void> => {
    const isLevel = /\.json$/i.test(given.name);
    if (isLevel) setFile(await levelOfFile(given));
    else setDropped(given);
    go(isLevel ? '' : 'road');
  };
  const over = usePageDrop((given) => void take(given));
  // Another part of the bench begins at its top, however far down the last one was left.
  useEffect(() => window.scrollTo(0, 0), [rest]);
  const shared = sharedText(rest);
  const opened = { ownLevels, services, send };
  const dialog = waiting !== null && draft !== null && (
    <Question
      title={say('leave-title')}
      text={say('leave-text', { title: draft.history.present.title })}
      keep={say('leave-keep')}
      onKeep={() => {
        setWaiting(null);
        go('edit');
      }}
      onClose={() => setWaiting(null)}
    >
      <Button
        data-drop-changes
        onClick={() => {
          setWaiting(null);
          waiting();
        }}
      >
        {say('leave-drop')}
      </Button>
    </Question>
  );
  if (shared !== null) return <OpenedLink {...opened} text={shared} onLeave={() => go('')} />;
  if (rest === 'road')
    return <RoadImport {...{ services, send, dropped, over }} onTaken={() => setDropped(null)} />;
  if (rest === 'edit' && draft !== null) return <Editor {...{ draft, state, services, send }} />;
  if (file !== null) return <Opened {...opened} result={file} onLeave={() => setFile(null)} />;
  return (
    <>
      <BenchHome
        {...{ levels, ownLevels, draft, services, send }}
        onDrop={() => setWaiting(() => () => levelEditor.close())}
        onOpen={askFirst}
        onFile={setFile}
      />
      {dialog}
    </>
  );
}

/** Text that is dragged from one field to another is none of ours. */
function hasFiles({ dataTransfer }: DragEvent): boolean {
  return dataTransfer?.types.includes('Files') ?? false;
}

/**
 * Hands over the first file of every drop; answers whether one hangs over the page. Beside a place that takes them a
 * browser would open the file in the place of the page, so the whole page takes them.
 */
function usePageDrop(onFile: (file: File) => void): boolean {
  const [over, setOver] = useState(false);
  const take = useRef(onFile);
  take.current = onFile;
  useEffect(() => {
    const ends = new AbortController();
    const { signal } = ends;
    addEventListener(
      'dragover',
      (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        setOver(true);
      },
      { signal },
    );
    addEventListener('dragleave', (event) => event.relatedTarget === null && setOver(false), { signal });
    addEventListener(
      'drop',
      (event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        setOver(false);
        const file = event.dataTransfer?.files[0];
        if (file !== undefined) take.current(file);
      },
      { signal },
    );
    return () => ends.abort();
  }, []);
  return over;
}
