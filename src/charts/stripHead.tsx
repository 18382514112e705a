/** Over the strip: what its lines and shapes mean, which stretch of road it shows, and the buttons that choose it. */
import type { ComponentChildren, JSX } from 'preact';
import { Button } from '../ui/controls.tsx';
import { words } from '../words/words.ts';
import type { Domain } from './stripLayout.ts';
import type { StripData } from './tracks.tsx';
import { MishapMark, MISHAPS, ShiftMark } from './shiftMark.tsx';

const say = words('charts');

/** The whole road, a pitch by its number, or any stretch the cursor was led to. */
export type ZoomedPart = 'whole' | number | Domain;

/** Road shown around a pitch: before its foot and after its end (m). */
const BEFORE_M = 90;
const AFTER_M = 60;
/** A stretch as long as another, with a place in its middle. */
export function around(atM: number, like: Domain, lengthM: number): Domain {
  const length = like.toM - like.fromM;
  const fromM = Math.max(0, Math.min(lengthM - length, atM - length / 2));
  return { fromM, toM: fromM + length };
}

/** The stretch of road a view shows. */
export function domainOf(data: Pick<StripData, 'course'>, view: ZoomedPart): Domain {
  const { lengthM, pitches } = data.course;
  if (typeof view === 'object') return view;
  const pitch = view === 'whole' ? undefined : pitches[view];
  if (pitch === undefined) return { fromM: 0, toM: lengthM };
  return { fromM: Math.max(0, pitch.footM - BEFORE_M), toM: Math.min(lengthM, pitch.endM + AFTER_M) };
}

/** One button for the road, one for each pitch. */
export function ZoomButtons(props: {
  readonly data: StripData;
  readonly view: ZoomedPart;
  readonly onChoose: (view: ZoomedPart) => void;
}): JSX.Element | null {
  const { pitches } = props.data.course;
  if (pitches.length === 0) return null;
  const views: readonly ('whole' | number)[] = ['whole', ...pitches.keys()];
  return (
    <fieldset class="strip-zoom">
      <legend class="unseen">{say('zoom')}</legend>
      {views.map((view) => (
        <Button
          look="small"
          key={String(view)}
          aria-pressed={view === props.view}
          onClick={() => props.onChoose(view)}
        >
          {view === 'whole'
            ? say('zoom-whole')
            : say('zoom-to', { audience: props.data.audience, pitch: view + 1 })}
        </Button>
      ))}
    </fieldset>
  );
}

/** What lines and shapes of the strip mean. Only says what can be seen at the moment. */
export function StripLegend(props: { readonly data: StripData }): JSX.Element {
  return (
    <ul class="strip-legend">
      <Key name={say('legend-you')}>
        <path d="M1 8H23" stroke="var(--ink)" stroke-width="2.4" />
      </Key>
      {props.data.reference !== null && (
        <Key name={say('legend-best')}>
          <path d="M1 8H23" stroke="var(--sand-dark)" stroke-width="4" />
        </Key>
      )}
      {props.data.shifts !== null &&
        (['clean', 'fair', 'heavy'] as const).map((kind) => (
          <Key key={kind} name={say(`legend-${kind}`)}>
            <ShiftMark kind={kind} x={12} y={8} />
          </Key>
        ))}
      {MISHAPS.filter((kind) => props.data.trace.events.some((event) => event.kind === kind)).map((kind) => (
        <Key key={kind} name={say(`legend-${kind}`)}>
          <MishapMark kind={kind} x={12} y={8} />
        </Key>
      ))}
    </ul>
  );
}

function Key({
  name,
  children,
}: {
  readonly name: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <li>
      <svg width="24" height="16" viewBox="0 0 24 16" aria-hidden="true">
        {children}
      </svg>
      {name}
    </li>
  );
}
