/**
 * A bike from the side, cut from paper: wheels, rings and sprockets in true proportion. Pure drawing, in
 * millimetres; a `BikePicture` puts it on a ground, the start page puts a rider on it.
 */
import type { JSX } from 'preact';
import { PI } from '../../core/math/numbers.ts';
import { hubShellMm } from '../../core/model/hubKinds.ts';
import type { Bike } from '../../core/model/types.ts';

/** `M x y L x y …` through points. */
export function pathThrough(points: readonly Point[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(1)} ${y.toFixed(1)}`).join('');
}

/** A straight piece of a drawing, ink unless it has another colour. */
export function Straight(props: {
  readonly from: Point;
  readonly to: Point;
  readonly colour?: string;
  readonly width: number;
}): JSX.Element {
  const { from, to, colour = 'var(--ink)', width } = props;
  return <path d={pathThrough([from, to])} stroke={colour} stroke-width={width} />;
}

function Wheel({ at, frame, tyreMm }: { at: Point; frame: BikeFrame; tyreMm: number }): JSX.Element {
  const spokes = Array.from({ length: 14 }, (_, i) => {
    const angle = (2 * PI * i) / 14;
    const [x, y] = [Math.cos(angle), Math.sin(angle)];
    const side = i % 2 === 0 ? 16 : -16;
    return `M${(-y * side).toFixed(1)} ${(x * side).toFixed(1)}L${(x * frame.rimRadiusMm).toFixed(1)} ${(y * frame.rimRadiusMm).toFixed(1)}`;
  }).join('');
  return (
    <g transform={`translate(${at[0].toFixed(1)} ${at[1].toFixed(1)})`}>
      <path d={spokes} stroke="var(--ink-soft)" stroke-width="5" opacity="0.6" />
      <circle r={frame.rimRadiusMm} fill="none" stroke="var(--sand-dark)" stroke-width="14" />
      <circle
        r={frame.wheelRadiusMm - tyreMm / 2}
        fill="none"
        stroke="var(--ink)"
        stroke-width={Math.max(26, tyreMm)}
      />
      <circle r="22" fill="var(--ink)" />
    </g>
  );
}

/** Rings or sprockets one over the other, biggest behind. */
function Cluster({ at, teeth }: { at: Point; teeth: readonly number[] }): JSX.Element {
  const shown = teeth.toReversed();
  return (
    <g transform={`translate(${at[0].toFixed(1)} ${at[1].toFixed(1)})`}>
      {shown.map((count, i) => (
        <circle
          r={toothedRadiusMm(count)}
          fill={i % 2 === 0 ? 'var(--sand)' : 'var(--paper-shade)'}
          stroke="var(--ink)"
          stroke-width="7"
        />
      ))}
      <circle r="9" fill="var(--ink)" />
    </g>
  );
}

/** Upper and lower run of the chain, round the biggest ring and a middle sprocket; with a hub straight back again. */
function chainPath(bike: Bike, frame: BikeFrame): string {
  const ring = toothedRadiusMm(bike.chainringsTeeth.at(-1) ?? 36);
  const sprocket = toothedRadiusMm(bike.sprocketsTeeth[Math.floor(bike.sprocketsTeeth.length / 2)] ?? 18);
  const [x, y] = frame.rear;
  const low = bike.hub === undefined ? `${x + 22} ${y + sprocket + 62}` : `${x} ${y + sprocket}`;
  return `M${x} ${y - sprocket}L0 ${-ring}M0 ${ring}L${low}`;
}

/** The bike alone, in millimetres round its bottom bracket. `turn` is where the cranks point (radians from upright). */
export function BikeDrawing(props: {
  readonly bike: Bike;
  readonly turn?: number;
  /** Of the frame; children's bikes are green and others dark without it. */
  readonly paint?: string;
}): JSX.Element {
  const { bike, turn = 1.9 } = props;
  const frame = frameOfBike(bike);
  const small = bike.beadSeatMm < 560;
  const tube = bike.massKg > 12 || small ? 40 : 34;
  const paint = props.paint ?? (small ? 'var(--leaf-deep)' : 'var(--ink)');
  const crank: Point = [Math.sin(turn) * bike.crankLengthMm, -Math.cos(turn) * bike.crankLengthMm];
  const [rx, ry] = frame.rear;
  const [sx, sy] = frame.saddle;
  const lines = [
    [frame.rear, [0, 0], frame.headLow],
    [frame.rear, frame.seatTop, frame.headTop],
    [[0, 0], frame.saddle],
    [frame.headTop, frame.headLow],
  ] as readonly (readonly Point[])[];
  return (
    <g stroke-linecap="round" stroke-linejoin="round" fill="none">
      <Straight from={[0, 0]} to={[-crank[0], -crank[1]]} colour="var(--ink-soft)" width={26} />
      <Wheel at={frame.rear} frame={frame} tyreMm={bike.tyreWidthMm} />
      <Wheel at={frame.front} frame={frame} tyreMm={bike.tyreWidthMm} />
      <Fork frame={frame} paint={paint} width={tube - 8} />
      {lines.map((points) => (
        <path d={pathThrough(points)} stroke={paint} stroke-width={tube} />
      ))}
      <Battery bike={bike} frame={frame} />
      <HubShell bike={bike} at={frame.rear} />
      <Motor bike={bike} frame={frame} />
      <Cluster at={frame.rear} teeth={bike.sprocketsTeeth} />
      <Cluster at={[0, 0]} teeth={bike.chainringsTeeth} />
      <path d={chainPath(bike, frame)} stroke="var(--ink)" stroke-width="9" stroke-dasharray="13 8" />
      {bike.hub === undefined && <Straight from={[rx + 14, ry + 40]} to={[rx + 26, ry + 96]} width={24} />}
      <Straight from={[sx - 120, sy - 8]} to={[sx + 110, sy]} width={40} />
      <Bar frame={frame} />
      <Straight from={[0, 0]} to={crank} width={28} />
      <Straight from={[crank[0] - 46, crank[1]]} to={[crank[0] + 46, crank[1]]} width={22} />
    </g>
  );
}

/** The shell of a hub bulges out behind its sprocket, and is drawn bigger than it is. */
function HubShell({ bike, at: [x, y] }: { bike: Bike; at: Point }): JSX.Element | null {
  const shellMm = hubShellMm(bike);
  return shellMm === null ? null : (
    <circle cx={x} cy={y} r={shellMm * 1.65} fill="var(--ink-soft)" stroke="var(--ink)" stroke-width="8" />
  );
}

/** A motor where it sits: a box round the bottom bracket, or a thick hub in the front wheel. */
function Motor({ bike: { motor }, frame }: { bike: Bike; frame: BikeFrame }): JSX.Element | null {
  if (motor === undefined) return null;
  const [x, y] = motor.place === 'wheel' ? frame.front : [0, 0];
  return motor.place === 'wheel' ? (
    <circle cx={x} cy={y} r="88" fill="var(--ink-soft)" stroke="var(--ink)" stroke-width="10" />
  ) : (
    <path
      d="M-104 -44Q-60 -112 30 -118L104 -96Q138 -30 96 40Q40 96 -40 84Q-104 40 -104 -44Z"
      fill="var(--ink-soft)"
      stroke="var(--ink)"
      stroke-width="10"
    />
  );
}

/** Its battery: along the down tube, or behind the seat where the motor is in the wheel. */
function Battery({ bike: { motor }, frame }: { bike: Bike; frame: BikeFrame }): JSX.Element | null {
  if (motor === undefined) return null;
  const along = ([x, y]: Point, share: number, side: number): Point => {
    const length = Math.sqrt(x * x + y * y);
    return [x * share - (y / length) * side, y * share + (x / length) * side];
  };
  const points: readonly Point[] =
    motor.place === 'crank'
      ? [along(frame.headLow, 0.3, -46), along(frame.headLow, 0.82, -46)]
      : [along(frame.saddle, 0.22, -58), along(frame.saddle, 0.62, -58)];
  return (
    <>
      <path d={pathThrough(points)} stroke="var(--ink)" stroke-width="84" />
      <path d={pathThrough(points)} stroke="var(--ink-soft)" stroke-width="62" />
    </>
  );
}

function Fork({ frame, paint, width }: { frame: BikeFrame; paint: string; width: number }): JSX.Element {
  const [x, y] = frame.headLow;
  const [fx, fy] = frame.front;
  const d = `M${x} ${y}Q${(x + fx) / 2 - 6} ${(y + fy) / 2 + 60} ${fx} ${fy}`;
  return <path d={d} stroke={paint} stroke-width={width} />;
}

function Bar({ frame }: { frame: BikeFrame }): JSX.Element {
  const [hx, hy] = frame.headTop;
  const [sx, sy] = frame.stem;
  const [gx, gy] = frame.grip;
  const d = frame.dropBar
    ? `M${hx} ${hy}L${sx} ${sy}L${gx} ${gy}q46 30 14 92q-22 36 -74 34`
    : `M${hx} ${hy}L${sx} ${sy}L${gx} ${gy}L${gx - 40} ${gy + 6}`;
  return <path d={d} stroke="var(--ink)" stroke-width="32" />;
}

/** A bike on its ground, all bikes to one scale, so that a child's bike is small. Its name stands beside it. */
export function BikePicture({ bike }: { readonly bike: Bike }): JSX.Element {
  const { groundY } = frameOfBike(bike);
  return (
    <svg class="bike-picture" viewBox="-860 -860 1900 1180" aria-hidden="true">
      <ellipse cx="90" cy="262" rx="820" ry="26" fill="var(--sand)" />
      <g transform={`translate(0 ${(258 - groundY).toFixed(1)})`}>
        <BikeDrawing bike={bike} />
      </g>
    </svg>
  );
}

export type Point = readonly [x: number, y: number];

/** Points of a side view (mm from the bottom bracket, x forward, y down). */
interface BikeFrame {
  readonly wheelRadiusMm: number;
  readonly rimRadiusMm: number;
  readonly rear: Point;
  readonly front: Point;
  readonly seatTop: Point;
  readonly saddle: Point;
  readonly headTop: Point;
  readonly headLow: Point;
  readonly grip: Point;
  readonly stem: Point;
  readonly dropBar: boolean;
  readonly groundY: number;
}

const CHAIN_PITCH_MM = 12.7;

/** Radius of a wheel with so many teeth on a half-inch chain (mm). */
function toothedRadiusMm(teeth: number): number {
  return (CHAIN_PITCH_MM * teeth) / (2 * PI);
}

/**
 * Where the parts of a drawn bike are, worked out from wheel and chainstay. Frames of a size class are ordinary ones; only
 * wheels and gears are measured.
 */
export function frameOfBike(bike: Bike): BikeFrame {
  const wheelRadiusMm = bike.beadSeatMm / 2 + bike.tyreWidthMm;
  const size = bike.beadSeatMm / 622;
  const dropMm = 70 * size * size - 5;
  const dropBar = /^(road|gravel)/.test(bike.id);
  const backMm = Math.sqrt(bike.chainstayMm * bike.chainstayMm - dropMm * dropMm);
  const rear: Point = [-backMm, -dropMm];
  const front: Point = [(dropBar ? 590 : 630) * (0.35 + 0.65 * size), -dropMm];
  const along = (from: Point, length: number, lean: number): Point => [
    from[0] - length * lean,
    from[1] - length * Math.sqrt(1 - lean * lean),
  ];
  const seatTop = along([0, 0], (dropBar ? 510 : 490) * size * size + 20, 0.292);
  const saddle = along([0, 0], 700 * (0.28 + 0.72 * size), 0.292);
  const headLow = along([front[0] - 42 * size, front[1]], wheelRadiusMm + 48 * size, 0.309);
  const headTop = along(headLow, dropBar ? 150 : 150 * size + 10, 0.309);
  const stem: Point = dropBar
    ? [headTop[0] + 62, headTop[1] - 34]
    : [headTop[0] - 4, headTop[1] - 88 * size - 30];
  const grip: Point = dropBar ? [stem[0] + 78, stem[1] + 10] : [stem[0] - 52 * size, stem[1] - 6];
  return {
    wheelRadiusMm,
    rimRadiusMm: bike.beadSeatMm / 2 - 8,
    rear,
    front,
    seatTop,
    saddle,
    headTop,
    headLow,
    grip,
    stem,
    dropBar,
    groundY: wheelRadiusMm - dropMm,
  };
}
