/**
 * "On the road": recorded rides are brought, looked at pitch by pitch, and what is to be kept of them is kept as numbers.
 * The files lie only here, as long as the page is open.
 */
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { HeightUnit } from '../../core/gpx/choose.ts';
import type { KeptResult } from '../../core/coach/results.ts';
import { againId } from '../../core/recorded/againId.ts';
import { keptRide, type KeptRoadRide } from '../../core/recorded/kept.ts';
import type { RoadRideFigures, RoadRider } from '../../core/recorded/rideFigures.ts';
import { type PageProps, type Page, PageLink, Paper, Sheet } from '../../ui/parts.tsx';
import { useAnswer } from '../../ui/hooks.ts';
import { common } from '../../words/common.ts';
import { createFormat, type Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { AllRides } from './allRides.tsx';
import { Brought, type BroughtFile } from './brought.tsx';
import type { RoadDesk, RoadServices } from './services.ts';
import { FileButton, RIDE_FILES, Tick } from '../../ui/controls.tsx';
import './road.css';

const say = words('road');

/** Five to seven seconds at the speed of a new rider: how late gradients came in five of six open rides (MARKS.md). */
const LATE_HEIGHTS_M = 30;

export const roadPage: Page<RoadServices> = (state, send, services) => (
  <Sheet title={common('nav-road')} intro={say('intro')}>
    <Opening {...{ state, send, services }} />
  </Sheet>
);

function Opening({ state, send, services }: PageProps<RoadServices>): JSX.Element {
  const desk = useAnswer(() => services.onTheRoad(), [services]);
  if (typeof desk === 'string') return <output>{say(desk === 'failed' ? 'openFailed' : 'opening')}</output>;
  const { settings, results } = state;
  return (
    <RoadPage
      desk={desk}
      who={{ bike: settings.bike, rider: settings.rider, teethKnown: true }}
      results={results}
      format={createFormat(settings.units)}
      onRide={(levelId) => send({ kind: 'ask-ride', rest: levelId })}
    />
  );
}

/** The page below its head. */
export function RoadPage(props: {
  readonly desk: RoadDesk;
  readonly who: RoadRider;
  readonly results: readonly KeptResult[];
  readonly format: Format;
  readonly onRide: (levelId: string) => void;
}): JSX.Element {
  const { desk, results, format, onRide } = props;
  const [teethKnown, setTeethKnown] = useState(true);
  const who = { ...props.who, teethKnown };
  const { files, firstId, bring, change, readIn } = useFiles(desk);
  const kept = useKept(desk);
  const { rides } = kept;
  const keepNumbers = async (file: BroughtFile, ride: KeptRoadRide): Promise<void> =>
    change(file.id, { told: (await kept.keep(ride)) ? 'kept' : 'notKept' });
  const again = async (file: BroughtFile, index: number): Promise<void> => {
    const { outcome } = file;
    if (outcome?.kind !== 'ride') return;
    const numbers = keptRide(outcome.figures, file.who.bike, file.who.teethKnown);
    const pitch = outcome.figures.pitches[index];
    const written = numbers.pitches[index];
    if (pitch === undefined || written === undefined) return;
    const id = againId(numbers.id, index);
    const title = say('level-title', {
      slope: format.percent(written.slopePercent / 100),
      length: format.distance(written.lengthM),
    });
    const made = await desk.again(file, file.who, pitch, { id, title, sentence: say('level-sentence') });
    if (!made.ok || !(await desk.keepLevel(made.level))) {
      change(file.id, { told: written });
      return;
    }
    const known = rides.find((ride) => ride.id === numbers.id) ?? numbers;
    await kept.keep({
      ...known,
      pitches: known.pitches.map((one, i) => (i === index ? { ...one, levelId: id } : one)),
    });
    onRide(id);
  };
  return (
    <div class="papers road-page">
      <Bring {...{ who, format }} onTeethKnown={setTeethKnown} onFiles={(list) => bring(list, who)} />
      {files.map((file) => (
        <Brought
          key={file.id}
          isFirst={file.id === firstId}
          {...{ file, results, format }}
          kept={rides}
          onHeights={(unit) => readIn(file, unit)}
          onKeep={(ride) => void keepNumbers(file, ride)}
          onAgain={(index) => void again(file, index)}
        />
      ))}
      <AllRides {...{ rides, results, format }} onForget={(id) => void kept.forget(id)} />
      <p class="quiet road-limits">
        {say('limits')} {say('late-heights', { way: format.distance(LATE_HEIGHTS_M) })}
      </p>
    </div>
  );
}

/** What is known of a file before it is read. */
const UNREAD = { share: 0, outcome: null, feet: null, done: false, told: null } as const;

/** The files of this visit, read one after the other. */
function useFiles(desk: RoadDesk) {
  const [files, setFiles] = useState<readonly BroughtFile[]>([]);
  const last = useRef(0);
  const firstId = useRef(0);
  const change = (id: number, changed: Partial<BroughtFile>): void =>
    setFiles((known) => known.map((one) => (one.id === id ? { ...one, ...changed } : one)));
  const bring = (list: readonly File[], who: RoadRider): void => {
    firstId.current = last.current + 1;
    const fresh = list.map((file): BroughtFile => {
      last.current += 1;
      return { id: last.current, file, name: file.name, who, heights: null, ...UNREAD };
    });
    setFiles((known) => [...fresh, ...known]);
    void readAll(desk, fresh, change);
  };
  const readIn = (file: BroughtFile, heights: HeightUnit): void => {
    change(file.id, { heights, ...UNREAD });
    void readAll(desk, [{ ...file, heights }], change);
  };
  return { files, firstId: firstId.current, bring, change, readIn } as const;
}

async function readAll(
  desk: RoadDesk,
  files: readonly BroughtFile[],
  change: (id: number, changed: Partial<BroughtFile>) => void,
): Promise<void> {
  for (const ride of files) {
    const { id, who } = ride;
    const outcome = await desk.read(ride, who, {
      onShare: (share) => change(id, { share }),
      onFeet: (feet) => change(id, { feet }),
      onFigures: (figures: RoadRideFigures) => change(id, { outcome: { kind: 'ride', figures } }),
    });
    change(id, { outcome, done: true });
  }
}

/** The rides that are kept on this device. */
function useKept(desk: RoadDesk) {
  const [rides, setRides] = useState<readonly KeptRoadRide[]>([]);
  const refresh = async (): Promise<void> => setRides(await desk.rides());
  useEffect(() => void refresh(), [desk]);
  return {
    rides,
    async keep(ride: KeptRoadRide): Promise<boolean> {
      const saved = await desk.keep(ride);
      await refresh();
      return saved;
    },
    async forget(id: string): Promise<void> {
      await desk.forget(id);
      await refresh();
    },
  } as const;
}

/** Which bike it was, and the files. */
function Bring(props: {
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
