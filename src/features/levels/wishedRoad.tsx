/** The road that will be ridden, from the side, with its feet and what there is to know of it. */
import type { JSX } from 'preact';
import { useId, useMemo } from 'preact/hooks';
import type { Course, Pitch } from '../../core/course/types.ts';
import { px } from '../../charts/lines.ts';
import { roadPaths } from '../../charts/road.ts';
import { useWidth } from '../../ui/useWidth.ts';
import type { Format } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';

const say = words('levels');

const HEIGHT = 170;
const TOP = 30;
const LABEL_PX = 44;

/** The drawing. */
export function WishedRoad(props: {
  readonly course: Course;
  readonly facts: string;
  readonly format: Format;
}): JSX.Element {
  const { course, facts, format } = props;
  const [width, paper] = useWidth();
  const id = useId();
  const road = useMemo(
    () =>
      roadPaths(course, { fromM: 0, toM: course.lengthM, left: 0, right: width, top: TOP, bottom: HEIGHT }),
    [course, width],
  );
  const x = (m: number): number => (m / course.lengthM) * width;
  /** The highest ink under a number. */
  const topAround = (atX: number): number => {
    let top = HEIGHT;
    for (let at = -LABEL_PX / 2; at <= LABEL_PX / 2; at += 2)
      top = Math.min(top, road.y(((atX + at) / width) * course.lengthM));
    return top;
  };
  return (
    <div class="free-road">
      <div ref={paper}>
        <svg viewBox={`0 0 ${width} ${HEIGHT}`} role="img" aria-labelledby={id}>
          <title id={id}>{say('free-profile', { facts })}</title>
          <path d={road.ground} fill="var(--sand)" />
          <path d={road.hatching} stroke="var(--ink)" stroke-width="1.1" />
          <Stroke d={road.outline} width={2.6} />
          <path
            d={course.pitches
              .map(({ footM }) => `M${px(x(footM))} ${px(road.y(footM) - 3)}l-5 -9h10Z`)
              .join('')}
            fill="var(--rider-deep)"
          />
          <g font-size="14" font-weight="800" fill="var(--ink)">
            {labelled(course, width).map(({ footM, steepestRatio }) => (
              <text key={footM} x={px(x(footM))} y={px(topAround(x(footM)) - 8)} text-anchor="middle">
                {format.percent(steepestRatio)}
              </text>
            ))}
          </g>
        </svg>
      </div>
      <output>{facts}</output>
    </div>
  );
}

/** Pitches whose number has room beside that of the one before. */
function labelled({ pitches, lengthM }: Course, width: number): Pitch[] {
  const kept: Pitch[] = [];
  for (const pitch of pitches) {
    const last = kept.at(-1);
    const gap = last === undefined ? LABEL_PX : ((pitch.footM - last.footM) / lengthM) * width;
    if (gap >= LABEL_PX) kept.push(pitch);
  }
  return kept;
}
