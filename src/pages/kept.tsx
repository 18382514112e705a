/**
 * What is kept on this device, in a person's hands: save everything as a file, take a file back, delete it all.
 * Asks before it deletes, and offers the file first.
 */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Dialog } from '../ui/parts.tsx';
import type { Services, Told } from '../app/services.ts';
import { words } from './words.ts';

/** The section about what is kept. */
export function Kept({
  services,
  rides,
}: {
  readonly services: Services;
  readonly rides: number;
}): JSX.Element {
  const say = words.services;
  const [told, setTold] = useState<Told | null>(null);
  const [asking, setAsking] = useState(false);
  const tell = (doing: Promise<Told>): void => {
    doing.then(setTold, () => setTold({ ok: false, sentence: say.failed }));
  };
  return (
    <section class="paper kept">
      <h2>{say.title}</h2>
      <p>{say.count(rides)}</p>
      <div class="buttons">
        <button
          type="button"
          class="button"
          data-save-everything
          onClick={() => tell(services.saveEverything())}
        >
          {say.save}
        </button>
        <label class="button file-button">
          {say.takeBack}
          <input
            type="file"
            accept=".json,application/json"
            data-take-back
            onChange={({ currentTarget }) => {
              const file = currentTarget.files?.[0];
              if (file !== undefined) tell(services.takeBack(file));
              // The same file can be chosen again.
              currentTarget.value = '';
            }}
          />
        </label>
        <button type="button" class="button" data-delete-everything onClick={() => setAsking(true)}>
          {say.remove}
        </button>
      </div>
      <output class="kept-told" data-told={told === null ? '' : String(told.ok)}>
        {told?.sentence}
      </output>
      {asking && (
        <AskBeforeDeleting
          rides={rides}
          onKeep={() => setAsking(false)}
          onSave={() => tell(services.saveEverything())}
          onDelete={() => {
            setAsking(false);
            tell(services.deleteEverything());
          }}
        />
      )}
    </section>
  );
}

/** Says what would go, and makes keeping the easy answer. */
function AskBeforeDeleting(props: {
  readonly rides: number;
  readonly onKeep: () => void;
  readonly onSave: () => void;
  readonly onDelete: () => void;
}): JSX.Element {
  const say = words.services;
  return (
    <Dialog title={say.sureTitle} onClose={props.onKeep}>
      <p>{say.sure(props.rides)}</p>
      <div class="buttons">
        <button type="button" class="button strong" autofocus onClick={props.onKeep}>
          {say.keep}
        </button>
        <button type="button" class="button" onClick={props.onSave}>
          {say.saveFirst}
        </button>
        <button type="button" class="button" data-delete-sure onClick={props.onDelete}>
          {say.removeSure}
        </button>
      </div>
    </Dialog>
  );
}
