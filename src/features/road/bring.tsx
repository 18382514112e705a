/** Which bike it was, and the files. */
import type { JSX } from 'preact';
import type { RoadRider } from '../../core/recorded/rideFigures.ts';
import { Tick } from '../../ui/controls.tsx';
import { FileButton, RIDE_FILES } from '../../ui/fileButton.tsx';
import { PageLink } from '../../ui/parts.tsx';
import type { Format } from '../../words/format.ts';
import { Paper } from '../../ui/paper.tsx';
import { words } from '../../words/words.ts';

const say = words('road');

/** The card on top. */
export function Bring(props: {
  readonly who: RoadRider;
  readonly onTeethKnown: (known: boolean) => void;
  readonly onFiles: (files: readonly File[]) => void;
  readonly format: Format;
}): JSX.Element {
  const { who, onTeethKnown, onFiles, format } = props;
  const { bike, teethKnown } = who;
  return (
    <Paper look="road-bring" title={say('bring-title')}>
      <p>
        {say('bring-bike', { parts: format.parts(bike), tyre: format.tyre(bike) })}{' '}
        <PageLink to="bike" class="road-other-bike">
          {say('bring-otherBike')}
        </PageLink>
      </p>
      <Tick label={say('bring-teeth')} checked={!teethKnown} onChange={(unknown) => onTeethKnown(!unknown)} />
      <div class="buttons">
        <FileButton
          name="data-ride-files"
          class="button strong"
          accept={RIDE_FILES}
          multiple
          onFiles={onFiles}
        >
          {say('bring-files')}
        </FileButton>
      </div>
      <p class="quiet">{say('bring-what')}</p>
      <p class="road-privacy">{say('bring-privacy')}</p>
    </Paper>
  );
}
