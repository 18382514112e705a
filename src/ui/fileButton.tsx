/** A field for a file that looks like the buttons beside it; keyboards and screen readers find the field itself. */
import type { ComponentChildren, JSX } from 'preact';

const JSON_FILES = '.json,application/json';
/** What the reader of recorded roads takes, packed or not. */
export const RIDE_FILES = '.gpx,.gz,.zip,application/gpx+xml';

/** `children` is what stands on it, `name` the data attribute by which tests find the field. */
export function FileButton(props: {
  readonly name: string;
  /** Gets at least one file. */
  readonly onFiles: (files: readonly File[]) => void;
  readonly accept?: string;
  readonly multiple?: boolean;
  readonly class?: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { name, onFiles, accept = JSON_FILES, multiple = false, children } = props;
  return (
    <label class={`${props.class ?? 'button'} file-button`}>
      {children}
      <input
        type="file"
        accept={accept}
        multiple={multiple}
        {...{ [name]: true }}
        onChange={({ currentTarget }) => {
          const files = [...(currentTarget.files ?? [])];
          // The same file can be chosen again.
          currentTarget.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </label>
  );
}
