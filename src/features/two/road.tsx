/** The road that several ride, seen as a whole: its gates, and how far each has come. */
import type { JSX, Ref } from 'preact';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Level } from '../../core/level/schema.ts';
import { Profile } from '../../ui/pictures/profile.tsx';
import { words } from '../../words/words.ts';

const say = words('two');

/** The picture: with gates, each part has the number of who rides it. */
export function SharedRoad(props: {
  readonly level: Level;
  readonly gatesM?: readonly number[];
  /** Leg that is ridden next, from 0. */
  readonly now?: number;
}): JSX.Element {
  const { level, gatesM = [], now } = props;
  const course = courseOfLevel(level);
  const endsM = [0, ...gatesM, course.lengthM];
  return (
    <figure class="shared-road">
      <Profile course={course} label={say('roadWithGates', { road: level.title, gates: gatesM.length })} />
      {gatesM.length > 0 &&
        endsM.slice(1).map((endM, i) => (
          <span
            key={endM}
            class="shared-leg"
            data-now={i === now ? 'yes' : undefined}
            style={{
              insetInlineStart: `${(100 * (endsM[i] ?? 0)) / course.lengthM}%`,
              inlineSize: `${(100 * (endM - (endsM[i] ?? 0))) / course.lengthM}%`,
            }}
          >
            {i + 1}
          </span>
        ))}
    </figure>
  );
}

/** The same between two halves, with a mark for each rider that whoever rides moves by its `--share`. */
export function RoadBetween(props: {
  readonly level: Level;
  readonly marks: Ref<HTMLElement>;
  readonly letters: readonly string[];
}): JSX.Element {
  const { level, marks, letters } = props;
  return (
    <figure class="shared-road two-between" ref={marks}>
      <Profile course={courseOfLevel(level)} label={say('roadOfBoth', { road: level.title })} />
      {letters.map((mark, i) => (
        <span key={mark} class="shared-mark" data-mark={i} aria-hidden="true">
          <i>{mark}</i>
        </span>
      ))}
    </figure>
  );
}
