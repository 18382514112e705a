/**
 * The rider of the start page, cut from paper and bent to fit any bike: hips on the saddle, hands on the bar,
 * one foot on each pedal. Millimetres round the bottom bracket, like the bike.
 */
import type { JSX } from 'preact';
import { PI } from '../../core/math/numbers.ts';
import type { Bike } from '../../core/model/types.ts';
import { FRAME_TONES, JERSEY_CLOTHS, type Outfit, USUAL_OUTFIT } from '../../core/settings/outfit.ts';
import { BikeDrawing, frameOfBike, pathThrough, type Point, Straight } from './bike.tsx';

/** Lengths of a grown-up (mm); a child is the same drawing, smaller. */
const THIGH = 440;
const SHANK = 445;
const TRUNK = 560;
const UPPER_ARM = 300;
const LOWER_ARM = 285;

/**
 * The joint between two bones that join `from` to `to`; `side` says which way it bends. Bones too short for
 * the way are drawn straight.
 */
export function jointBetween(from: Point, to: Point, first: number, second: number, side: 1 | -1): Point {
  const dx = to[0] - from[0];
  const dy = to[1] - from[1];
  const way = Math.max(1, Math.sqrt(dx * dx + dy * dy));
  const reach = Math.min(way, first + second);
  const along = (first * first - second * second + reach * reach) / (2 * reach);
  const off = side * Math.sqrt(Math.max(0, first * first - along * along));
  return [from[0] + (dx * along - dy * off) / way, from[1] + (dy * along + dx * off) / way];
}

function Leg({ hip, pedal, far }: { hip: Point; pedal: Point; far: boolean }): JSX.Element {
  const ankle: Point = [pedal[0] - 74, pedal[1] - 86];
  const knee = jointBetween(hip, ankle, THIGH, SHANK - 60, -1);
  const middle: Point = [hip[0] + (knee[0] - hip[0]) * 0.74, hip[1] + (knee[1] - hip[1]) * 0.74];
  return (
    <g class={far ? 'far' : undefined}>
      <Straight from={hip} to={knee} colour="var(--skin)" width={104} />
      <Straight from={knee} to={ankle} colour="var(--skin)" width={78} />
      <Straight from={hip} to={middle} colour="var(--shorts)" width={142} />
      <path
        d={`M${ankle[0] - 34} ${ankle[1] - 26}L${ankle[0] - 44} ${pedal[1] - 8}L${pedal[0] + 96} ${pedal[1] - 8}q14 -34 -30 -50L${ankle[0] + 40} ${ankle[1] - 26}Z`}
        fill="var(--paper)"
        stroke="var(--paper)"
        stroke-width="12"
      />
    </g>
  );
}

/** Colours of the kit for everything inside; the usual ones stay those of the theme. */
function tonesOf({ jersey, frame }: Outfit): Readonly<Record<string, string>> {
  const cloth = JERSEY_CLOTHS[jersey];
  return {
    '--jersey': jersey === USUAL_OUTFIT.jersey ? 'var(--rider)' : cloth.tone,
    '--jersey-dark': jersey === USUAL_OUTFIT.jersey ? 'var(--rider-deep)' : cloth.dark,
    '--frame': frame === 'usual' ? 'var(--ink)' : FRAME_TONES[frame].tone,
  };
}

/** A rider in this kit on a bike. */
export function RiderDrawing(props: {
  readonly bike: Bike;
  readonly turn: number;
  readonly kit: Outfit;
}): JSX.Element {
  const { bike, turn, kit } = props;
  const frame = frameOfBike(bike);
  const [sx, sy] = frame.saddle;
  const hip: Point = [sx + 20, sy - 86];
  const shoulder: Point = [hip[0] + TRUNK * 0.74, hip[1] - TRUNK * 0.672];
  const hand: Point = [frame.grip[0] + 16, frame.grip[1] - 26];
  const elbow = jointBetween(shoulder, hand, UPPER_ARM, LOWER_ARM, 1);
  const head: Point = [shoulder[0] + 118, shoulder[1] - 172];
  const crank = bike.crankLengthMm;
  const near: Point = [Math.sin(turn) * crank, -Math.cos(turn) * crank];
  const far: Point = [-near[0], -near[1]];
  return (
    <g class="rider" style={tonesOf(kit)} stroke-linecap="round" stroke-linejoin="round" fill="none">
      <Leg hip={hip} pedal={far} far={true} />
      <BikeDrawing bike={bike} turn={turn} paint="var(--frame)" />
      <Trunk hip={hip} shoulder={shoulder} pattern={kit.pattern} />
      <Leg hip={hip} pedal={near} far={false} />
      <Straight from={shoulder} to={elbow} colour="var(--jersey-dark)" width={98} />
      <Straight from={elbow} to={hand} colour="var(--skin)" width={66} />
      <Straight from={[hand[0] - 16, hand[1]]} to={[hand[0] + 26, hand[1] + 6]} width={66} />
      <Head at={head} neck={shoulder} helmet={kit.helmet} />
    </g>
  );
}

function Trunk(props: {
  readonly hip: Point;
  readonly shoulder: Point;
  readonly pattern: Outfit['pattern'];
}): JSX.Element {
  const { hip, shoulder, pattern } = props;
  const outline = `M${hip[0] - 104} ${hip[1] + 36}C${hip[0] - 118} ${hip[1] - 210} ${shoulder[0] - 250} ${shoulder[1] - 40} ${shoulder[0] - 20} ${shoulder[1] - 58}C${shoulder[0] + 66} ${shoulder[1] - 48} ${shoulder[0] + 82} ${shoulder[1] + 50} ${shoulder[0] + 22} ${shoulder[1] + 92}C${shoulder[0] - 90} ${shoulder[1] + 170} ${hip[0] + 130} ${hip[1] - 90} ${hip[0] + 96} ${hip[1] + 62}Z`;
  return (
    <g>
      <clipPath id="rider-jersey">
        <path d={outline} />
      </clipPath>
      <path d={outline} fill="var(--jersey)" />
      <path
        d={`M${shoulder[0] - 60} ${shoulder[1] + 70}C${shoulder[0] - 130} ${shoulder[1] + 170} ${hip[0] + 130} ${hip[1] - 90} ${hip[0] + 96} ${hip[1] + 62}L${hip[0] + 10} ${hip[1] + 50}C${hip[0] + 60} ${hip[1] - 100} ${shoulder[0] - 190} ${shoulder[1] + 110} ${shoulder[0] - 60} ${shoulder[1] + 70}Z`}
        fill="var(--jersey-dark)"
        opacity="0.55"
      />
      {pattern !== 'plain' && (
        <path
          d={pattern === 'band' ? bandOver(hip, shoulder) : dotsOver(hip, shoulder)}
          stroke="var(--helmet)"
          stroke-width={pattern === 'band' ? 96 : 54}
          clip-path="url(#rider-jersey)"
        />
      )}
    </g>
  );
}

/** Across the back, half way up. */
function bandOver(hip: Point, shoulder: Point): string {
  const [x, y] = [(hip[0] + shoulder[0]) / 2, (hip[1] + shoulder[1]) / 2];
  return `M${x - 150} ${y - 160}L${x + 150} ${y + 160}`;
}

/** Dots are lines of no length with round ends. */
function dotsOver(hip: Point, shoulder: Point): string {
  const across: Point = [0.67, 0.74];
  return Array.from({ length: 15 }, (_, i) => {
    const row = (i % 3) - 1;
    const along = -0.1 + Math.floor(i / 3) * 0.25 + (row === 0 ? 0.12 : 0);
    const x = hip[0] + (shoulder[0] - hip[0]) * along + across[0] * row * 92 - 20;
    const y = hip[1] + (shoulder[1] - hip[1]) * along + across[1] * row * 92 - 24;
    return `M${x.toFixed(0)} ${y.toFixed(0)}h.1`;
  }).join('');
}

function Head({ at, neck, helmet }: { at: Point; neck: Point; helmet: Outfit['helmet'] }): JSX.Element {
  const [x, y] = at;
  return (
    <g>
      <Straight from={[neck[0] + 18, neck[1] - 24]} to={[x - 8, y + 24]} colour="var(--skin)" width={96} />
      <path
        d={`M${x - 104} ${y - 10}C${x - 100} ${y + 92} ${x - 22} ${y + 126} ${x + 44} ${y + 118}C${x + 84} ${y + 112} ${x + 92} ${y + 78} ${x + 96} ${y + 48}L${x + 122} ${y + 34}L${x + 102} ${y - 14}Z`}
        fill="var(--skin)"
      />
      {helmet === 'crest' && (
        <path
          d={`M${x - 128} ${y - 60}Q${x - 130} ${y - 196} ${x + 30} ${y - 184}Q${x + 86} ${y - 176} ${x + 112} ${y - 116}Z`}
          fill="var(--jersey)"
        />
      )}
      <path
        d={`M${x - 132} ${y + 16}C${x - 150} ${y - 122} ${x - 20} ${y - 176} ${x + 66} ${y - 128}C${x + 122} ${y - 98} ${x + 150} ${y - 48} ${x + 146} ${y - 6}Q${x + 20} ${y - 30} ${x - 132} ${y + 16}Z`}
        fill="var(--helmet)"
      />
      <path
        d={`M${x - 128} ${y - 22}Q${x + 10} ${y - 78} ${x + 142} ${y - 40}`}
        stroke="var(--jersey)"
        stroke-width="22"
      />
      {helmet === 'star' && <path d={starAt(x + 2, y - 96, 44)} fill="var(--jersey-dark)" />}
      <path
        d={`M${x - 36} ${y - 10}Q${x - 20} ${y + 80} ${x + 34} ${y + 116}`}
        stroke="var(--ink)"
        stroke-width="11"
      />
    </g>
  );
}

function starAt(x: number, y: number, size: number): string {
  const points = Array.from({ length: 10 }, (_, i): Point => {
    const reach = i % 2 === 0 ? size : size * 0.45;
    return [x + Math.sin((i * PI) / 5) * reach, y - Math.cos((i * PI) / 5) * reach];
  });
  return `${pathThrough(points)}Z`;
}
