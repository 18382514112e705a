/** Ways a level leaves this device in somebody's hands: link, code, file. */
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { CodePicture } from '../../ui/pictures/codePicture.tsx';
import { useAnswer } from '../../ui/hooks.ts';
import { Fold } from '../../ui/parts.tsx';
import type { Level } from '../../core/level/schema.ts';
import { offerFile } from '../../ui/file.ts';
import { levelToJson } from './jsonText.ts';
import { useTold } from './say.ts';
import { words } from '../../words/words.ts';
import { linkOf } from './shareLink.ts';

const say = words('bench');

/** Longer links make codes that phones do not read from a screen (characters). */
const LONGEST_CODE_LINK = 1_400;

/** @param level a level that can be ridden, or null */
export function SharePanel({ level }: { readonly level: Level | null }): JSX.Element {
  return (
    <Fold look="paper fold" data-share title={<h2>{say('share-title')}</h2>}>
      {() => (level === null ? <p>{say('reference-waits')}</p> : <Ways level={level} />)}
    </Fold>
  );
}

function Ways({ level }: { readonly level: Level }): JSX.Element {
  const made = useAnswer(async () => ({ link: await linkOf(level) }), [level]);
  const link = typeof made === 'string' ? '' : made.link;
  const [told, tell] = useTold();
  useEffect(() => tell(() => ''), [level]);
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
      <div class="row thing-doing">
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
      {link.length > LONGEST_CODE_LINK && <p data-no-code>{say('share-tooLong')}</p>}
      {link !== '' && link.length <= LONGEST_CODE_LINK && (
        <CodePicture look="level-code" text={link} label={say('share-code')} dense />
      )}
    </>
  );
}

/** Offers a level as a file that the game, its command line and editors read. */
function saveLevelFile(level: Level): void {
  offerFile(new Blob([levelToJson(level)], { type: 'application/json' }), `${level.id}.level.json`);
}
