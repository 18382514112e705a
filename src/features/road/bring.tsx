/** Which bike it was, and the files. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { RoadRider } from '../../core/recorded/rideFigures.ts';
import { Tick } from '../../ui/controls.tsx';
import { FileButton, RIDE_FILES } from '../../ui/fileButton.tsx';
import { PageLink } from '../../ui/parts.tsx';
import type { Format } from '../../words/format.ts';
import type { RoadWords } from './words.ts';

/** The card on top. */
export function Bring(props: {
  readonly who: RoadRider;
  readonly onTeethKnown: (known: boolean) => void;
  readonly onFiles: (files: readonly File[]) => void;
  readonly words: RoadWords;
  readonly format: Format;
}): JSX.Element {
  const { who, onTeethKnown, onFiles, words, format } = props;
  const { bike, teethKnown } = who;
  const id = useId();
  const { bring } = words;
  return (
    <section class="paper road-bring" aria-labelledby={id}>
      <h2 id={id}>{bring.title}</h2>
      <p>
        {bring.bike(format.parts(bike), format.tyre(bike))}{' '}
        <PageLink to="bike" class="road-other-bike">
          {bring.otherBike}
        </PageLink>
      </p>
      <Tick
        label={`${bring.teeth}. ${bring.teethHint}`}
        checked={!teethKnown}
        onChange={(unknown) => onTeethKnown(!unknown)}
      />
      <div class="buttons">
        <FileButton
          name="data-ride-files"
          class="button strong"
          accept={RIDE_FILES}
          multiple
          onFiles={onFiles}
        >
          {bring.files}
        </FileButton>
      </div>
      <p class="quiet">{bring.what}</p>
      <p class="road-privacy">{bring.privacy}</p>
    </section>
  );
}
