/**
 * A road from the side in a small strip, steep parts hatched in ink: the denser, the steeper. Also the strip of
 * paper hills on top of every page. Pure drawing.
 */
import type { JSX } from 'preact';
import type { Course } from '../../core/course/types.ts';
import { Stroke } from './stroke.tsx';

const WIDTH = 320;
const HEIGHT = 76;
const BASE = 72;
/** From this slope on a road is hatched. */
export const HATCHED_RATIO = 0.025;

/** Outline of a road and its hatching, as path data in a box of 320 × 76. Pure. */
export function profilePaths(course: Course): { readonly outline: string; readonly hatching: string } {
  const { lengthM, heightM, slopeRatio } = course;
  const low = heightM.reduce((a, b) => Math.min(a, b), Number.POSITIVE_INFINITY);
  const high = heightM.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const scale = 46 / Math.max(9, high - low);
  const x = (m: number): number => (m / lengthM) * WIDTH;
  const y = (m: number): number => BASE - 14 - ((heightM[Math.round(m)] ?? 0) - low) * scale;
  const points: string[] = [];
  for (let i = 0; i <= 160; i += 1)
    points.push(`${x((i / 160) * lengthM).toFixed(1)} ${y((i / 160) * lengthM).toFixed(1)}`);
  let hatching = '';
  let ink = 0;
  for (let px = 0; px < WIDTH; px += 1) {
    const m = (px / WIDTH) * lengthM;
    const slope = slopeRatio[Math.round(m)] ?? 0;
    ink = slope < HATCHED_RATIO ? 0 : ink + slope * 3.2;
    if (ink < 1) continue;
    ink -= 1;
    hatching += `M${px} ${(y(m) + 3).toFixed(1)}V${BASE}`;
  }
  return { outline: points.join('L'), hatching };
}

export function Profile({
  course,
  label,
}: {
  readonly course: Course;
  readonly label?: string;
}): JSX.Element {
  const { outline, hatching } = profilePaths(course);
  return (
    <svg
      class="profile"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      preserveAspectRatio="none"
      {...(label === undefined ? { 'aria-hidden': true } : { role: 'img', 'aria-label': label })}
    >
      <path d={`M0 ${BASE}L${outline}L${WIDTH} ${BASE}Z`} fill="var(--sand)" />
      <path d={hatching} stroke="var(--ink)" stroke-width="1.6" vector-effect="non-scaling-stroke" />
      <Stroke d={`M${outline}`} width={3} vector-effect="non-scaling-stroke" />
      {course.stopLinesM.map((atM) => (
        <path
          d={`M${((atM / course.lengthM) * WIDTH).toFixed(1)} 8V${BASE}`}
          stroke="var(--rider-deep)"
          stroke-width="3"
          stroke-dasharray="5 3"
          vector-effect="non-scaling-stroke"
        />
      ))}
    </svg>
  );
}

/** Hills along the lower edge of a page's head. */
export function HillStrip(): JSX.Element {
  return (
    <svg class="hill-strip" viewBox="0 0 1280 120" preserveAspectRatio="none" aria-hidden="true">
      <path d="M0 70C160 10 330 20 480 58S800 84 960 40S1200 16 1280 30V120H0Z" fill="var(--hill-middle)" />
      <path d="M0 92C200 58 380 66 560 88S900 98 1060 66S1230 60 1280 70V120H0Z" fill="var(--hill-front)" />
      <path d="M0 112C240 92 420 100 640 110S1080 112 1280 94V121H0Z" fill="var(--ground)" />
    </svg>
  );
}
