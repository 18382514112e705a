/** Ways a level leaves this device in somebody's hands: link, code, file. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { Level } from '../../core/level/schema.ts';
import { offerFile } from '../../charts/file.ts';
import { levelToJson } from './jsonText.ts';
import { LevelCode } from './levelCode.tsx';
import { useTold } from './say.ts';
import { words } from '../../words/words.ts';
import { linkOf } from './shareLink.ts';

const say = words('bench');

/** @param level a level that can be ridden, or null */
export function SharePanel({ level }: { readonly level: Level | null }): JSX.Element {
  const [open, setOpen] = useState(false);
  return (
    <details class="paper" data-share onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        <h2>{say('share-title')}</h2>
      </summary>
      {open && (level === null ? <p>{say('reference-waits')}</p> : <Ways level={level} />)}
    </details>
  );
}

function Ways({ level }: { readonly level: Level }): JSX.Element {
  const [link, setLink] = useState('');
  const [told, tell] = useTold();
  useEffect(() => {
    let wanted = true;
    tell(() => '');
    void linkOf(level).then((made) => wanted && setLink(made));
    return () => {
      wanted = false;
    };
  }, [level]);
  const copy = (): void => {
    navigator.clipboard.writeText(link).then(
      () => tell(() => say('share-copied')),
      () => tell(() => say('share-copyFailed')),
    );
  };
  return (
    <>
      <p>{say('share-intro')}</p>
      <label class="text-field">
        <span>{say('share-link')}</span>
        <input
          type="text"
          readOnly
          value={link}
          data-link
          onFocus={({ currentTarget }) => currentTarget.select()}
        />
      </label>
      <div class="thing-doing">
        {'clipboard' in navigator && (
          <Button look="small-button" onClick={copy}>
            {say('share-copy')}
          </Button>
        )}
        <Button look="small-button" data-download onClick={() => saveLevelFile(level)}>
          {say('share-file')}
        </Button>
      </div>
      <output class="told">{told}</output>
      {link !== '' && <LevelCode link={link} />}
    </>
  );
}

/** Offers a level as a file that the game, its command line and editors read. */
function saveLevelFile(level: Level): void {
  offerFile(new Blob([levelToJson(level)], { type: 'application/json' }), `${level.id}.level.json`);
}
