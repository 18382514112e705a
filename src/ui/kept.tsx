/**
 * What is kept on this device, in a person's hands: save everything as a file, take a file back, delete it all.
 * Asks before it deletes, and offers the file first; asks before it takes a file that was changed.
 */
import { Button, FileButton } from './controls.tsx';
import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { Question } from './parts.tsx';
import type { ToldOutcome } from '../state/outcome.ts';
import { words } from '../words/words.ts';

const say = words('kept');

/** How a copy is taken back. */
export interface TakingBack {
  readonly evenIfChanged: boolean;
  /** Told how far it is (0 to 1). */
  readonly onShare: (share: number) => void;
  readonly signal: AbortSignal;
}

/** What the section asks of the app. */
export interface KeptServices {
  /** Everything kept on this device as one file, offered for saving. */
  saveEverything(): Promise<ToldOutcome>;
  /**
   * Takes back a file made by `saveEverything`; what is already here stays once. Of a file that was changed since
   * nothing is taken unless `evenIfChanged` is true. What was taken before it is stopped stays.
   */
  takeBack(file: Blob, how: TakingBack): Promise<ToldOutcome>;
  /** Deletes everything of the game on this device. */
  deleteEverything(): Promise<ToldOutcome>;
}

/** The section about what is kept. */
export function KeptSection({
  services,
  rides,
}: {
  readonly services: KeptServices;
  readonly rides: number;
}): JSX.Element {
  const [told, setTold] = useState<ToldOutcome | null>(null);
  const [asking, setAsking] = useState(false);
  const tell = (doing: Promise<ToldOutcome>): void => {
    doing.then(setTold, () => setTold({ ok: false, sentence: say('failed') }));
  };
  return (
    <section class="paper kept">
      <h2>{say('title')}</h2>
      <p>{say('count', { rides })}</p>
      <div class="buttons">
        <Button data-save-everything onClick={() => tell(services.saveEverything())}>
          {say('save')}
        </Button>
        <TakeBack services={services} tell={tell} />
        <Button data-delete-everything onClick={() => setAsking(true)}>
          {say('remove')}
        </Button>
      </div>
      <output class="kept-told" data-told={told === null ? '' : String(told.ok)}>
        {told?.sentence}
        {told?.more !== undefined && (
          <>
            {' '}
            <a href={told.more.href}>{told.more.word}</a>
          </>
        )}
      </output>
      {asking && (
        <Question
          title={say('sureTitle')}
          text={say('sure', { rides })}
          keep={say('keep')}
          onKeep={() => setAsking(false)}
        >
          <Button onClick={() => tell(services.saveEverything())}>{say('saveFirst')}</Button>
          <Button
            data-delete-sure
            onClick={() => {
              setAsking(false);
              tell(services.deleteEverything());
            }}
          >
            {say('removeSure')}
          </Button>
        </Question>
      )}
    </section>
  );
}

/** The button that takes a file back, and the question where that file was changed. */
function TakeBack(props: {
  readonly services: KeptServices;
  readonly tell: (doing: Promise<ToldOutcome>) => void;
}): JSX.Element {
  const [changed, setChanged] = useState<Blob | null>(null);
  const [share, setShare] = useState<number | null>(null);
  const stopping = useRef(new AbortController());
  const takeBack = async (file: Blob, evenIfChanged: boolean): Promise<ToldOutcome> => {
    stopping.current = new AbortController();
    setShare(0);
    const how = { evenIfChanged, onShare: setShare, signal: stopping.current.signal };
    const answer = await props.services.takeBack(file, how).finally(() => setShare(null));
    setChanged(answer.askAboutChanged === true ? file : null);
    return answer;
  };
  return (
    <>
      <FileButton name="data-take-back" onFiles={([file]) => file && props.tell(takeBack(file, false))}>
        {say('takeBack')}
      </FileButton>
      {share !== null && (
        <>
          <label>
            {say('takingBack')} <progress value={share} max={1} />
          </label>
          <Button data-stop-taking onClick={() => stopping.current.abort()}>
            {say('stopTaking')}
          </Button>
        </>
      )}
      {changed !== null && (
        <Question
          title={say('changedTitle')}
          text={say('changedSure')}
          keep={say('changedLeave')}
          onKeep={() => setChanged(null)}
        >
          <Button
            data-take-changed
            onClick={() => {
              setChanged(null);
              props.tell(takeBack(changed, true));
            }}
          >
            {say('changedTake')}
          </Button>
        </Question>
      )}
    </>
  );
}
