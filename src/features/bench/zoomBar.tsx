/** Buttons that bring a part of a drawn road nearer, and say which part is shown. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { metric } from './say.ts';
import { benchWords } from './words.ts';
import { along, closer, shownOf, type View, wider } from './zoom.ts';

export function ZoomBar(props: {
  readonly view: View | null;
  readonly lengthM: number;
  /** What "closer" goes to (m); the middle of what is shown where that is null. */
  readonly aroundM: number | null;
  readonly onView: (view: View | null) => void;
}): JSX.Element {
  const { view, lengthM, aroundM, onView } = props;
  const say = benchWords.zoom;
  const { fromM, toM } = shownOf(view, lengthM);
  const middleM = aroundM !== null && aroundM >= fromM && aroundM <= toM ? aroundM : (fromM + toM) / 2;
  const nearest = closer(view, lengthM, middleM);
  const canCloser = nearest !== null && nearest.toM - nearest.fromM < toM - fromM;
  const button = (name: string, label: string, enabled: boolean, to: () => View | null): JSX.Element => (
    <Button look="small-button" data-zoom={name} disabled={!enabled} onClick={() => onView(to())}>
      {label}
    </Button>
  );
  return (
    <fieldset class="zoom-bar" aria-label={say.title}>
      {button('closer', say.closer, canCloser, () => nearest)}
      {button('wider', say.wider, view !== null, () => wider(view, lengthM))}
      {button('back', say.back, fromM > 0, () => along(view, lengthM, -1))}
      {button('on', say.on, toM < lengthM, () => along(view, lengthM, 1))}
      {button('whole', say.whole, view !== null, () => null)}
      <output class="quiet">
        {view === null ? '' : say.shown(metric.distance(fromM), metric.distance(toM))}
      </output>
    </fieldset>
  );
}
