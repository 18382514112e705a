/** Buttons that bring a part of a drawn road nearer, and say which part is shown. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { useFormat } from './say.ts';
import { words } from '../../words/words.ts';
import { along, closer, shownOf, type Span, wider } from './zoom.ts';

const say = words('bench');

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
    <fieldset class="zoom-bar" aria-label={say('zoom-title')}>
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
