/**
 * The picture of the start page: a rider at the foot of a hill, layers of cut paper. It paints before any
 * engine is loaded and moves only a little, once, and not for those who want less.
 */
import type { JSX } from 'preact';
import { BIKES } from '../../core/model/presets.ts';
import type { Bike } from '../../core/model/types.ts';
import type { Outfit } from '../../core/settings/outfit.ts';
import { frameOfBike } from '../../ui/pictures/bike.tsx';
import { RiderDrawing } from '../../ui/pictures/rider.tsx';
import { words } from '../../words/words.ts';

const say = words('start');

const ROAD =
  'M-20 548C180 540 380 556 560 552S780 556 860 540C980 514 1040 420 1150 388C1200 374 1250 372 1310 380';
const PX_PER_MM = 0.176;

function tree(x: number, y: number, size: number, round: boolean): string {
  if (round)
    return `M${x} ${y}v${-size * 0.5}M${x - size * 0.32} ${y - size * 0.75}a${size * 0.32} ${size * 0.48} 0 1 1 ${size * 0.64} 0a${size * 0.32} ${size * 0.48} 0 1 1 ${-size * 0.64} 0Z`;
  return `M${x - size * 0.28} ${y - size * 0.12}L${x} ${y - size * 1.15}L${x + size * 0.28} ${y - size * 0.12}Z`;
}

const FAR_TREES = [
  [150, 410, 34, false],
  [182, 404, 44, false],
  [420, 436, 40, true],
  [456, 440, 30, true],
  [1010, 330, 34, true],
  [1046, 326, 44, false],
  [1180, 322, 38, true],
] as const;

const NEAR_TREES = [
  [64, 508, 92, true],
  [118, 512, 66, true],
  [166, 514, 74, false],
  [520, 520, 60, true],
  [566, 524, 78, false],
  [1004, 440, 70, true],
  [1216, 372, 84, false],
  [1254, 372, 60, true],
] as const;

function Layer(props: { readonly d: string; readonly fill: string; readonly depth: number }): JSX.Element {
  return <path class="layer" style={{ '--depth': props.depth }} d={props.d} fill={`var(${props.fill})`} />;
}

/** Hatching under the steep part: the steeper, the denser. Ink, not colour, tells a gradient. */
function Hatching(): JSX.Element {
  const lines = Array.from({ length: 17 }, (_, i) => {
    const t = i / 16;
    const x = 900 + 240 * t;
    const y = 534 - 152 * t * t * (3 - 2 * t) + 16;
    return `M${x.toFixed(0)} ${y.toFixed(0)}l-14 ${(24 + 22 * Math.sin(t * 3)).toFixed(0)}`;
  }).join('');
  return <path d={lines} stroke="var(--leaf-pale)" stroke-width="3" stroke-linecap="round" opacity="0.7" />;
}

function Sky(): JSX.Element {
  return (
    <>
      <rect x="-400" y="-400" width="2080" height="1120" fill="url(#hero-sky)" />
      <circle class="layer" style={{ '--depth': 1 }} cx="1085" cy="150" r="76" fill="var(--sun)" />
      <path
        class="cloud"
        d="M690 142q10 -34 48 -30q18 -34 62 -22q30 -22 58 6q44 -4 46 30q10 22 -16 22H704q-20 0 -14 -6Z"
        fill="var(--cloud)"
      />
      <path
        class="cloud slow"
        d="M1096 248q6 -22 34 -20q16 -26 48 -10q36 -6 40 22q8 16 -10 16H1106q-16 0 -10 -8Z"
        fill="var(--cloud)"
      />
    </>
  );
}

function Hills(): JSX.Element {
  return (
    <>
      <Layer
        depth={1}
        fill="--hill-far"
        d="M-400 440C-180 300 40 300 240 352S560 400 720 330S1010 246 1180 300S1480 330 1680 300V720H-400Z"
      />
      <Layer
        depth={2}
        fill="--hill-middle"
        d="M-400 430C-120 400 90 380 250 420S520 470 700 420S960 310 1120 322S1400 360 1680 330V720H-400Z"
      />
      <g class="layer" style={{ '--depth': 2 }} fill="var(--hill-near)">
        {FAR_TREES.map(([x, y, size, round]) => (
          <path d={tree(x, y, size, round)} stroke="var(--hill-near)" stroke-width="4" />
        ))}
      </g>
      <Layer
        depth={3}
        fill="--hill-near"
        d="M-400 520C-160 470 20 470 200 496S480 520 640 498S860 440 1000 410S1240 330 1400 352S1600 380 1680 370V720H-400Z"
      />
      <g class="layer" style={{ '--depth': 3 }} fill="var(--hill-front)">
        {NEAR_TREES.map(([x, y, size, round]) => (
          <path d={tree(x, y, size, round)} stroke="var(--hill-front)" stroke-width="5" />
        ))}
      </g>
    </>
  );
}

function RoadUp(): JSX.Element {
  return (
    <>
      <Layer
        depth={4}
        fill="--hero-ground"
        d={`${ROAD.replace('M-20 548', 'M-400 556L-20 548')}L1680 400V760H-400Z`}
      />
      <Hatching />
      <path
        d={`M-400 556L-20 548${ROAD.slice(8)}L1680 400`}
        fill="none"
        stroke="var(--road)"
        stroke-width="13"
      />
      <path d="M566 553v-30M1010 458v-30M1188 378v-30" stroke="var(--paper)" stroke-width="9" />
      <path d="M566 531v-3M1010 436v-3M1188 356v-3" stroke="var(--ink)" stroke-width="9" />
    </>
  );
}

/** The whole picture, 1280 × 720, with the player's own rider. */
export function Hero({ kit }: { readonly kit: Outfit }): JSX.Element {
  const bike = BIKES.find((one) => one.id === 'gravel-1x12') ?? (BIKES[0] as Bike);
  const { groundY } = frameOfBike(bike);
  return (
    <svg
      class="hero-picture"
      viewBox="0 0 1280 720"
      preserveAspectRatio="xMidYMax slice"
      role="img"
      aria-label={say('picture')}
    >
      <defs>
        <linearGradient id="hero-sky" x1="0" y1="0" x2="0" y2="1">
          <stop offset="0" stop-color="var(--sky)" />
          <stop offset="0.75" stop-color="var(--sky-low)" />
        </linearGradient>
      </defs>
      <Sky />
      <Hills />
      <RoadUp />
      <g
        class="hero-rider"
        transform={`translate(735 ${(548.5 - groundY * PX_PER_MM).toFixed(1)}) rotate(-0.6) scale(${PX_PER_MM})`}
      >
        <RiderDrawing bike={bike} turn={1.75} kit={kit} />
      </g>
    </svg>
  );
}
