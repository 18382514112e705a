/**
 * The ladder of levels with what each teaches and the best mark so far, the children's row, and free rides.
 * Choosing one begins its ride.
 */
import type { JSX } from 'preact';
import type { Course } from '../../core/course/types.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import type { Lesson, Level } from '../../core/level/schema.ts';
import { hashOf } from '../../state/address.ts';
import { createFormat, type Format } from '../../words/format.ts';
import { FreeRideForm } from './freeRideForm.tsx';
import { decodeFreeRide, encodeFreeRide, isFreeRide } from '../../core/level/freeRide.ts';
import { bestTotal, everPassed, rowsOf } from '../../core/coach/ladder.ts';
import { Icon, type Page, Sheet } from '../../ui/parts.tsx';
import { earnedPatches } from '../../core/coach/patches.ts';
import { PatchList } from '../../ui/pictures/patch.tsx';
import '../../ui/pictures/patches.css';
import { Profile } from '../../ui/pictures/profile.tsx';
import { levelForButton } from '../../state/nextRide.ts';
import type { State } from '../../state/store.ts';
import { words } from '../../words/words.ts';
import { common, lessonName } from '../../words/common.ts';

const say = words('levels');

/** What the form for a free ride begins with. */
const USUAL_WISH = { seed: 1, hilliness: 0.5, lengthM: 2000 };

/** Roads do not change while the game is open, and drawing all of them anew for a settings dialog would be felt. */
const courses = new WeakMap<Level, Course>();

function courseFor(level: Level): Course {
  const known = courses.get(level) ?? courseOfLevel(level);
  courses.set(level, known);
  return known;
}

export const levelsPage: Page = (state, send) => {
  const { everyone, children } = rowsOf(state.levels);
  const format = createFormat(state.settings.units);
  const { rest } = state;
  const linked = decodeFreeRide(rest);
  return (
    <Sheet title={common('nav-levels')} intro={say('intro')}>
      {state.levels.length === 0 && <p>{say('none')}</p>}
      <Row title={common('ladder-everyone')} levels={everyone} state={state} format={format} />
      {children.length > 0 && (
        <Row title={common('ladder-children')} levels={children} state={state} format={format} />
      )}
      <PatchRow lessons={earnedPatches(state.levels, state.results)} />
      {state.ownLevels.length > 0 && (
        <Row title={say('own')} levels={state.ownLevels} state={state} format={format} />
      )}
      <FreeRideForm
        key={rest}
        wish={linked.ok ? linked.wish : USUAL_WISH}
        badLink={isFreeRide(rest) && !linked.ok ? linked.code : null}
        onRide={(wish) => send({ kind: 'ask-ride', rest: encodeFreeRide(wish) })}
        onLink={(wish) => new URL(hashOf({ view: 'ride', rest: encodeFreeRide(wish) }), location.href).href}
        format={format}
      />
    </Sheet>
  );
};

/** The patches a child has collected: one for each lesson, however well it was ridden and however often. */
function PatchRow({ lessons }: { readonly lessons: readonly Lesson[] }): JSX.Element | null {
  if (lessons.length === 0) return null;
  return (
    <section class="patch-row" aria-label={say('patches')}>
      <h3>{say('patches')}</h3>
      <PatchList lessons={lessons} look="wrap" />
    </section>
  );
}

function Row(props: {
  readonly title: string;
  readonly levels: readonly Level[];
  readonly state: State;
  readonly format: Format;
}): JSX.Element {
  const { title, levels, state, format } = props;
  const nextId = levelForButton(state)?.id;
  return (
    <section class="level-row" aria-label={title}>
      <h2>{title}</h2>
      <ol class="level-list">
        {levels.map((level, i) => (
          <li key={level.id}>
            <LevelCard {...{ level, state, format }} number={i + 1} next={level.id === nextId} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function LevelCard(props: {
  readonly level: Level;
  readonly state: State;
  readonly number: number;
  readonly next: boolean;
  readonly format: Format;
}): JSX.Element {
  const { level, state, number, next, format } = props;
  const done = state.doneIds.includes(level.id);
  const best = bestTotal(state.results, level.id);
  const passed = everPassed(state.results, level.id);
  const course = courseFor(level);
  const steepest = course.slopeRatio.reduce((a, b) => Math.max(a, b), 0);
  return (
    <a class="cut level-card" href={hashOf({ view: 'ride', rest: level.id })} data-level={level.id}>
      <Profile course={course} />
      <span class="level-words">
        <span class="level-number" aria-hidden="true">
          {number}
        </span>
        {/* Whoever goes from level to level by ear hears the title first. */}
        <strong lang={level.lang}>{level.title}</strong>
        <span class="lesson">{lessonName(level.teaches)}</span>
        <span lang={level.lang}>{level.sentence}</span>
        <span class="level-facts">
          {say('length', { length: format.road(course.lengthM) })}
          {course.pitches.length > 0 && ` · ${say('pitches', { count: course.pitches.length })}`}
          {steepest >= 0.03 && ` · ${format.percent(steepest)}`}
          {level.needs !== undefined && ` · ${say(`needs-${level.needs}`)}`}
        </span>
      </span>
      {done && (
        <span class="flag">
          {passed && <Icon name="done" />}
          {best === null
            ? say('ridden')
            : say(passed ? 'best' : 'best-not-passed', { total: format.number(best) })}
        </span>
      )}
      {next && !done && <span class="flag next">{say('next')}</span>}
    </a>
  );
}
