/** Which part of a road is shown: nearer, further, along it (`null` is the whole road), and the buttons that choose it. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { useFormat } from './say.ts';
import { words } from '../../words/words.ts';

/** From one place to another (m from the start). */
export interface Span {
  readonly fromM: number;
  readonly toM: number;
}

/** Nearer than this nothing more is to be seen (m). */
const LEAST_VIEW_M = 100;
const CLOSER = 0.5;
/** Moving along leaves this much of what was shown in sight. */
const STAYS = 0.25;

/** What is shown of a road of this length. */
export function shownOf(view: Span | null, lengthM: number): Span {
  if (view === null || lengthM <= LEAST_VIEW_M) return { fromM: 0, toM: lengthM };
  const spanM = Math.min(view.toM - view.fromM, lengthM);
  const fromM = Math.min(Math.max(0, view.fromM), lengthM - spanM);
  return { fromM, toM: fromM + spanM };
}

/** Half as much, round a place. */
function closer(view: Span | null, lengthM: number, aroundM: number): Span | null {
  const { fromM, toM } = shownOf(view, lengthM);
  return round(aroundM, Math.max(LEAST_VIEW_M, (toM - fromM) * CLOSER), lengthM);
}

/** Twice as much, round the middle. */
function wider(view: Span | null, lengthM: number): Span | null {
  const { fromM, toM } = shownOf(view, lengthM);
  return round((fromM + toM) / 2, (toM - fromM) / CLOSER, lengthM);
}

/** The next part, or the one before. */
function along(view: Span | null, lengthM: number, direction: 1 | -1): Span | null {
  const { fromM, toM } = shownOf(view, lengthM);
  const byM = direction * (toM - fromM) * (1 - STAYS);
  return round((fromM + toM) / 2 + byM, toM - fromM, lengthM);
}

/** The same, moved so that a place is in it; as it was where it is. */
export function withPlace(view: Span | null, lengthM: number, place: Span): Span | null {
  if (view === null) return null;
  const { fromM, toM } = shownOf(view, lengthM);
  if (place.toM >= fromM && place.fromM <= toM) return view;
  return round((place.fromM + place.toM) / 2, toM - fromM, lengthM);
}

function round(middleM: number, spanM: number, lengthM: number): Span | null {
  if (spanM >= lengthM) return null;
  const fromM = Math.min(Math.max(0, middleM - spanM / 2), lengthM - spanM);
  return { fromM, toM: fromM + spanM };
}

const say = words('bench');

/** Buttons that bring a part of a drawn road nearer, and say which part is shown. */
export function ZoomBar(props: {
  readonly view: Span | null;
  readonly lengthM: number;
  /** What "closer" goes to (m); the middle of what is shown where that is null. */
  readonly aroundM: number | null;
  readonly onView: (view: Span | null) => void;
}): JSX.Element {
  const { view, lengthM, aroundM, onView } = props;
  const format = useFormat();
  const { fromM, toM } = shownOf(view, lengthM);
  const middleM = aroundM !== null && aroundM >= fromM && aroundM <= toM ? aroundM : (fromM + toM) / 2;
  const nearest = closer(view, lengthM, middleM);
  const canCloser = nearest !== null && nearest.toM - nearest.fromM < toM - fromM;
  const button = (name: string, label: string, enabled: boolean, to: () => Span | null): JSX.Element => (
    <Button look="small-button" data-zoom={name} disabled={!enabled} onClick={() => onView(to())}>
      {label}
    </Button>
  );
  return (
    <fieldset class="row zoom-bar" aria-label={say('zoom-title')}>
      {button('closer', say('zoom-closer'), canCloser, () => nearest)}
      {button('wider', say('zoom-wider'), view !== null, () => wider(view, lengthM))}
      {button('back', say('zoom-back'), fromM > 0, () => along(view, lengthM, -1))}
      {button('on', say('zoom-on'), toM < lengthM, () => along(view, lengthM, 1))}
      {button('whole', say('zoom-whole'), view !== null, () => null)}
      <output class="quiet">
        {view === null ? '' : say('range', { low: format.distance(fromM), high: format.distance(toM) })}
      </output>
    </fieldset>
  );
}
