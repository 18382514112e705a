/** A link to be copied: by a button where the browser lets it, by hand where not. */
import type { JSX } from 'preact';
import { useId, useRef, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import type { FreeRideWords } from './freeRideWords.ts';

/** The field with its button. */
export function RoadLink({
  link,
  words,
}: {
  readonly link: string;
  readonly words: FreeRideWords;
}): JSX.Element {
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
      <label for={id}>{words.link}</label>
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
          {words.copy}
        </Button>
      </div>
      <output>{tried?.link === link ? (tried.copied ? words.copied : words.notCopied) : ''}</output>
    </div>
  );
}
