/** One pitch as a small cut-paper hill: where the first easier gear came, how surely, and where that of the best ride lies. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import { px } from '../../charts/lines.ts';
import { footX } from './feet.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const WIDTH = 240;
const HEIGHT = 44;
const GROUND = 34;
const EDGE = 8;

/** The picture; `said` is what it shows, in words. */
export function FootPicture(props: {
  readonly firstEasierM: number | null;
  readonly plusMinusM: number | null;
  readonly bestM: number | null;
  readonly said: string;
}): JSX.Element {
  const { firstEasierM, plusMinusM, bestM, said } = props;
  const id = useId();
  const x = (m: number): number => footX(m, WIDTH, EDGE);
  const foot = x(0);
  return (
    <svg class="foot-picture" viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={id}>
      <title id={id}>{said}</title>
      <path d={`M0 ${GROUND}H${px(foot)}L${WIDTH} 12V${HEIGHT}H0Z`} fill="var(--sand)" />
      <Stroke d={`M0 ${GROUND}H${px(foot)}L${WIDTH} 12`} width={2.4} />
      <path d={`M${px(foot)} ${GROUND + 2}v8`} stroke="var(--ink)" stroke-width="2.4" />
      {bestM !== null && (
        <Stroke
          data-best
          d={`M${px(x(bestM))} ${GROUND - 2}l-6 -12h12Z`}
          colour="var(--ink-soft)"
          width={1.8}
        />
      )}
      {firstEasierM !== null && (
        <g data-own>
          {plusMinusM !== null && (
            <path
              d={`M${px(x(firstEasierM - plusMinusM))} 10H${px(x(firstEasierM + plusMinusM))}`}
              stroke="var(--rider-deep)"
              stroke-width="2"
            />
          )}
          <path d={`M${px(x(firstEasierM))} ${GROUND - 2}l-7 -18h14Z`} fill="var(--rider-deep)" />
        </g>
      )}
    </svg>
  );
}
