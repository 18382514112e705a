/** A small picture of one pitch: the road, the rider's shifts above it, those of the best ride below it. */
import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { ShiftReport } from '../core/coach/types.ts';
import type { Course, Pitch } from '../core/course/types.ts';
import { px, roadPaths } from './paths.ts';
import { BestMark, ShiftMark } from './shiftMark.tsx';
import { Stroke } from '../ui/pictures/stroke.tsx';

/** The paper; `lane` is kept over and under the road for marks (units of the drawing). */
const PAPER = { width: 300, height: 118, edge: 8, lane: 24 };
/** Road shown before the foot and behind the end (m). */
const BEFORE_M = 45;
const AFTER_M = 15;

interface PitchPictureProps {
  readonly course: Course;
  readonly pitch: Pitch;
  readonly own: readonly ShiftReport[];
  readonly best: readonly ShiftReport[];
  readonly title: string;
  readonly desc: string;
  readonly you: string;
  readonly bestName: string;
}

/** Stretch of road around a pitch that its card speaks of. */
export function cardStretch(course: Course, pitch: Pitch): { readonly fromM: number; readonly toM: number } {
  return {
    fromM: Math.max(0, pitch.footM - BEFORE_M),
    toM: Math.min(course.lengthM, pitch.endM + AFTER_M),
  };
}

export function PitchPicture(props: PitchPictureProps): JSX.Element {
  const { course, pitch, own, best } = props;
  const id = useId();
  const { fromM, toM } = cardStretch(course, pitch);
  const box = {
    fromM,
    toM,
    left: PAPER.edge,
    right: PAPER.width - PAPER.edge,
    top: PAPER.lane + 4,
    bottom: PAPER.height - PAPER.lane,
  };
  const paths = roadPaths(course, box);
  const x = (m: number): number =>
    PAPER.edge + ((m - fromM) / (toM - fromM)) * (PAPER.width - 2 * PAPER.edge);
  const inside = (shift: ShiftReport): boolean => shift.startedAtM >= fromM && shift.startedAtM <= toM;
  const label = { 'font-size': 12, fill: 'var(--ink-soft)', style: { fontFamily: 'var(--font)' } };
  return (
    <svg
      class="pitch-picture"
      viewBox={`0 0 ${PAPER.width} ${PAPER.height}`}
      role="img"
      aria-labelledby={`t-${id} d-${id}`}
    >
      <title id={`t-${id}`}>{props.title}</title>
      <desc id={`d-${id}`}>{props.desc}</desc>
      <path d={paths.ground} fill="var(--sand)" />
      <path d={paths.hatching} stroke="var(--ink)" stroke-width="1.1" />
      <Stroke d={paths.outline} width={2.4} />
      <path
        d={`M${px(x(pitch.footM))} 4V${PAPER.height - 4}`}
        stroke="var(--ink)"
        stroke-width="1.4"
        stroke-dasharray="2 4"
      />
      <text x={PAPER.edge} y="16" {...label}>
        {props.you}
      </text>
      <text x={PAPER.edge} y={PAPER.height - 6} {...label}>
        {props.bestName}
      </text>
      {own.filter(inside).map((shift) => (
        <ShiftMark
          kind={shift.kind}
          x={x(shift.startedAtM)}
          y={Math.max(PAPER.lane / 2, paths.y(shift.startedAtM) - 13)}
        />
      ))}
      {best.filter(inside).map((shift) => (
        <BestMark x={x(shift.startedAtM)} y={PAPER.height - PAPER.lane / 2} />
      ))}
    </svg>
  );
}
