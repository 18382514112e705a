/**
 * The outline of a sprocket or chainring as roller chain wants it: a seat for every roller, rounded flanks and
 * a narrow crown between two seats. Pure geometry in millimetres.
 */
/** Roller chain pitch and roller diameter of bicycle chain (mm). */
export const CHAIN_PITCH_MM = 12.7;
const ROLLER_MM = 7.75;

/** Radius of the circle the rollers' centres lie on (mm). */
export function pitchRadiusMm(teeth: number): number {
  return CHAIN_PITCH_MM / (2 * Math.sin(Math.PI / teeth));
}

/** The same in metres. */
export function pitchRadiusM(teeth: number): number {
  return pitchRadiusMm(teeth) / 1000;
}

const SEAT_STEPS = 6;
const CROWN_RISE_MM = 3.3;
const CROWN_HALF_MM = 1.15;

/**
 * Points (x, y, x, y, …) of the outline around the centre, clockwise on screen. A roller seat lies at angle
 * `k · 360° / teeth`, a crown half a step further.
 */
export function toothOutline(teeth: number): Float64Array {
  const radius = pitchRadiusMm(teeth);
  const seat = ROLLER_MM / 2 + 0.15;
  const perTooth = SEAT_STEPS + 1 + 4;
  const points = new Float64Array(teeth * perTooth * 2);
  const step = (Math.PI * 2) / teeth;
  let at = 0;
  const put = (x: number, y: number) => {
    points[at++] = x;
    points[at++] = y;
  };
  for (let tooth = 0; tooth < teeth; tooth++) {
    const turn = tooth * step;
    const cx = Math.cos(turn) * radius;
    const cy = Math.sin(turn) * radius;
    for (let i = 0; i <= SEAT_STEPS; i++) {
      const around = turn + Math.PI + (i / SEAT_STEPS - 0.5) * -2 * 1.02;
      put(cx + Math.cos(around) * seat, cy + Math.sin(around) * seat);
    }
    const crown = turn + step / 2;
    const tip = radius + CROWN_RISE_MM;
    const half = CROWN_HALF_MM / tip;
    const shoulder = half * 2.05;
    put(Math.cos(crown - shoulder) * (tip - 1.5), Math.sin(crown - shoulder) * (tip - 1.5));
    put(Math.cos(crown - half) * tip, Math.sin(crown - half) * tip);
    put(Math.cos(crown + half) * tip, Math.sin(crown + half) * tip);
    put(Math.cos(crown + shoulder) * (tip - 1.5), Math.sin(crown + shoulder) * (tip - 1.5));
  }
  return points;
}

/** Adds the outline to a path, rounded at its corners by quadratic curves. */
export function traceTeeth(path: Path2D, outline: Float64Array): void {
  const count = outline.length / 2;
  const x = (i: number) => outline[(i % count) * 2] ?? 0;
  const y = (i: number) => outline[(i % count) * 2 + 1] ?? 0;
  path.moveTo((x(0) + x(1)) / 2, (y(0) + y(1)) / 2);
  for (let i = 1; i <= count; i++)
    path.quadraticCurveTo(x(i), y(i), (x(i) + x(i + 1)) / 2, (y(i) + y(i + 1)) / 2);
  path.closePath();
}
