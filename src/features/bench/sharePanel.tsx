/** Ways a level leaves this device in somebody's hands: link, code, file. */
import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { Level } from '../../core/level/schema.ts';
import { offerFile } from '../../charts/file.ts';
import { benchWords } from './words.ts';
import { levelToJson } from './jsonText.ts';
import { LevelCode } from './levelCode.tsx';
import { linkOf } from './shareLink.ts';

/** @param level a level that can be ridden, or null */
export function SharePanel({ level }: { readonly level: Level | null }): JSX.Element {
  const [open, setOpen] = useState(false);
  const say = benchWords.share;
  return (
    <details class="paper" data-share onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        <h2>{say.title}</h2>
      </summary>
      {open && (level === null ? <p>{say.waits}</p> : <Ways level={level} />)}
    </details>
  );
}

function Ways({ level }: { readonly level: Level }): JSX.Element {
  const say = benchWords.share;
  const [link, setLink] = useState('');
  const [told, setTold] = useState('');
  useEffect(() => {
    let wanted = true;
    setTold('');
    void linkOf(level).then((made) => wanted && setLink(made));
    return () => {
      wanted = false;
    };
  }, [level]);
  const copy = (): void => {
    navigator.clipboard.writeText(link).then(
      () => setTold(say.copied),
      () => setTold(say.copyFailed),
    );
  };
  return (
    <>
      <p>{say.intro}</p>
      <label class="text-field">
        <span>{say.link}</span>
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
            {say.copy}
          </Button>
        )}
        <Button look="small-button" data-download onClick={() => saveLevelFile(level)}>
          {say.file}
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
