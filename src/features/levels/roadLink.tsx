/** A link to be copied: by a button where the browser lets it, by hand where not. */
import type { JSX } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { words } from '../../words/words.ts';

const say = words('levels');

/** The field with its button. */
export function RoadLink({ link }: { readonly link: string }): JSX.Element {
  const id = useId();
  const field = useRef<HTMLInputElement | null>(null);
  /** The link that was tried to copy, and whether that worked. */
  const [tried, setTried] = useState<{ readonly link: string; readonly copied: boolean } | null>(null);
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(link);
      setTried({ link, copied: true });
    } catch {
      field.current?.select();
      setTried({ link, copied: false });
    }
  };
  return (
    <div class="free-link">
      <label for={id}>{say('free-link')}</label>
      <div class="free-name-row">
        <input
          id={id}
          ref={field}
          type="text"
          readOnly
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
        <Button data-copy-link onClick={() => void copy()}>
          {say('free-copy')}
        </Button>
      </div>
      <output>{tried?.link === link ? say(tried.copied ? 'free-copied' : 'free-notCopied') : ''}</output>
    </div>
  );
}
