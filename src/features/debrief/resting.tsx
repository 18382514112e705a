/** Who is there at the other end of a ride: nobody hurries. A sheep looks round, and something warm stands in the grass. */
import type { JSX } from 'preact';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const WOOL = [
  [0, 0, 11],
  [12, -3, 12],
  [25, -1, 12],
  [36, 2, 9],
  [8, 7, 10],
  [24, 8, 11],
] as const;

export function Resting(): JSX.Element {
  return (
    <g>
      <path d="M182 62v14M192 62v14M206 62v14M214 62v14" stroke="var(--ink)" stroke-width="3" />
      <g transform="translate(180 52)" fill="var(--paper)">
        {WOOL.map(([x, y, radius]) => (
          <circle key={x} cx={x} cy={y} r={radius} />
        ))}
      </g>
      <g class="end-sheep" fill="var(--ink)">
        <ellipse cx="168" cy="44" rx="9" ry="7" />
        <ellipse cx="178" cy="40" rx="6" ry="2.500" transform="rotate(-24 178 40)" />
        <circle cx="165" cy="42" r="2" fill="var(--paper)" />
      </g>
      <path d="M268 72l62 -5 12 8 -70 4Z" fill="var(--rider)" />
      <path
        d="M286 70v-13h13v12q-6 4 -13 1ZM299 60q7 0 6 5t-6 4"
        fill="var(--paper)"
        stroke="var(--ink)"
        stroke-width="2"
      />
      <Stroke
        class="end-steam"
        d="M290 52q-4 -5 0 -9t0 -9M296 52q-4 -5 0 -9t0 -9"
        colour="var(--paper)"
        width={2.5}
        round
      />
      <circle cx="318" cy="65" r="6" fill="#cf3a2c" />
      <Stroke d="M318 60q1 -4 4 -5" width={2} />
    </g>
  );
}
