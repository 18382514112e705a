/** What lines and shapes of the strip mean. Only says what can be seen at the moment. */
import type { ComponentChildren, JSX } from 'preact';
import { words } from '../words/words.ts';
import { MISHAPS, MishapMark, ShiftMark } from './shiftMark.tsx';
import type { StripData } from './tracks.tsx';

const say = words('charts');

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
