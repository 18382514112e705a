/** The first page of the clinic: go on with a session, or choose a plan. Ready plans come first. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { isDone, nextUp } from '../../core/group/turnQueue.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { READY_PLANS } from '../../core/group/readyPlans.ts';
import { levelOfRide } from '../../core/group/turn.ts';
import type { Course } from '../../core/course/types.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import { Icon, Sheet } from '../../ui/parts.tsx';
import { Profile } from '../../ui/pictures/profile.tsx';
import { AnimalPicture } from './animal.tsx';
import { Minutes, USUAL_COUNT } from './minutes.tsx';
import { dayOf, nameOf, planFacts, rideTitle } from './say.ts';
import { counts, ridesOf } from './session.ts';
import { placeOfStage } from './stage.tsx';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicProps } from './services.ts';

/** The page. */
export function ClinicHome(props: ClinicProps): JSX.Element {
  const { words, saved, onPlace } = props;
  const sessions = saved.rounds.toSorted((a, b) => b.startedAtMs - a.startedAtMs);
  const open = sessions.find(({ round }) => !isDone(round));
  return (
    <Sheet title={words.title} intro={words.intro}>
      <div class="clinic clinic-home">
        {open !== undefined && <GoOn session={open} props={props} />}
        <Plans title={words.home.ready} plans={READY_PLANS} props={props} />
        <Plans title={words.home.saved} plans={saved.plans} props={props} own={true}>
          <li>
            <Button look="plan-new" data-new-plan onClick={() => onPlace('plan')}>
              <span aria-hidden="true">+</span>
              <strong>{words.home.own}</strong>
              <span class="hint">{words.home.ownHint}</span>
            </Button>
          </li>
        </Plans>
        <Others props={props} />
        {sessions.length > 0 && <Sessions sessions={sessions} props={props} />}
      </div>
    </Sheet>
  );
}

/** Ways that need another device. */
function Others({ props }: { readonly props: ClinicProps }): JSX.Element {
  const { words, onPlace } = props;
  return (
    <div class="tablet-ways">
      <a class="way" href="#teach" data-teach aria-label={`${words.home.teach} ${words.home.teachHint}`}>
        <span class="way-words">
          <strong>{words.home.teach}</strong> <span>{words.home.teachHint}</span>
        </span>
      </a>
      <a class="way" href="#join" data-join aria-label={`${words.home.join} ${words.home.joinHint}`}>
        <span class="way-words">
          <strong>{words.home.join}</strong> <span>{words.home.joinHint}</span>
        </span>
      </a>
      <Button
        look="way"
        data-club-store
        aria-label={`${words.home.store} ${words.home.storeHint}`}
        onClick={() => onPlace('store')}
      >
        <span class="way-words">
          <strong>{words.home.store}</strong> <span>{words.home.storeHint}</span>
        </span>
      </Button>
    </div>
  );
}

function GoOn({
  session,
  props,
}: {
  readonly session: SavedRound;
  readonly props: ClinicProps;
}): JSX.Element {
  const { words, onPlace } = props;
  const next = nextUp(session.round);
  const { ridden, all } = counts(session.round);
  return (
    <Button look="big-button go-on" data-go-on onClick={() => onPlace(placeOfStage(session, 'round'))}>
      {next.kind === 'rider' ? <AnimalPicture nickname={next.nickname} /> : <Icon name="go" />}
      <span>
        <strong>
          {words.home.goOn}: {session.plan.title}
        </strong>
        <span class="big-button-level">
          {next.kind === 'rider'
            ? words.home.next(nameOf(next.nickname, words), ridden, all)
            : words.home.waiting(ridden, all)}
        </span>
      </span>
    </Button>
  );
}

function Plans(props: {
  readonly title: string;
  readonly plans: readonly ClinicPlan[];
  readonly props: ClinicProps;
  readonly own?: boolean;
  readonly children?: JSX.Element;
}): JSX.Element {
  return (
    <section aria-label={props.title}>
      <h2>{props.title}</h2>
      <ul class="plan-list">
        {props.plans.map((plan) => (
          <li key={plan.id}>
            <PlanCard plan={plan} props={props.props} own={props.own === true} />
          </li>
        ))}
        {props.children}
      </ul>
    </section>
  );
}

function PlanCard(props: {
  readonly plan: ClinicPlan;
  readonly props: ClinicProps;
  readonly own: boolean;
}): JSX.Element {
  const { plan, own } = props;
  const { words, levels, onPlace, onDeletePlan } = props.props;
  const titles = plan.rides.map((ride) => rideTitle(ride, levels, words));
  const here = titles.every((title) => title !== null);
  const course = courseOf(plan, props.props);
  return (
    <article class="plan-card">
      <Button
        look="plan-choose"
        data-plan={plan.id}
        disabled={!here}
        onClick={() => onPlace(`go/${plan.id}`)}
      >
        <span class="plan-picture" aria-hidden="true">
          {course !== null && <Profile course={course} label={plan.title} />}
        </span>
        <span class="plan-words">
          <span class="lesson">
            {plan.audience === 'children' ? words.home.children : words.home.everyone}
          </span>
          <strong>{plan.title}</strong>
          {/* A check ride alone would only say its own title again. */}
          {titles.length > 1 && <span>{titles.map((title) => title ?? '?').join(' · ')}</span>}
          {!here && <span class="plan-missing">{words.home.missing}</span>}
          <span class="level-facts">{planFacts(plan, words)}</span>
          <Minutes plan={plan} riders={USUAL_COUNT} props={props.props} />
        </span>
      </Button>
      <span class="plan-tools">
        <Button look="quiet-button" onClick={() => onPlace(`plan/${plan.id}`)}>
          {words.home.change}
        </Button>
        {own && <ForgetPlan words={words} onDelete={() => onDeletePlan(plan.id)} />}
      </span>
    </article>
  );
}

/** The button that asked is gone; whoever came by keyboard goes on from the easy answer. */
const takeFocus = (button: HTMLButtonElement | null): void => button?.focus();

/** A plan is somebody's evening of work: the first push only asks. */
function ForgetPlan(props: {
  readonly words: ClinicProps['words'];
  readonly onDelete: () => void;
}): JSX.Element {
  const { home } = props.words;
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <Button look="quiet-button" data-forget onClick={() => setAsked(true)}>
        {home.forget}
      </Button>
    );
  return (
    <>
      <Button look="quiet-button" data-forget-keep ref={takeFocus} onClick={() => setAsked(false)}>
        {home.forgetKeep}
      </Button>
      <Button look="quiet-button" data-forget-sure onClick={props.onDelete}>
        {home.forgetSure}
      </Button>
    </>
  );
}

/** Roads do not change, and drawing them anew with every change of the page would be felt. */
const courses = new Map<string, Course>();

function courseOf(plan: ClinicPlan, props: ClinicProps): Course | null {
  const [ride] = plan.rides;
  if (ride === undefined) return null;
  const level = levelOfRide(ride, plan.seed, (id) => props.levels.find((one) => one.id === id));
  if (level === null) return null;
  const key = `${plan.id} ${level.id} ${level.seed}`;
  const course = courses.get(key) ?? courseOfLevel(level);
  courses.set(key, course);
  return course;
}

function Sessions(props: {
  readonly sessions: readonly SavedRound[];
  readonly props: ClinicProps;
}): JSX.Element {
  const { words, onPlace, saved } = props.props;
  return (
    <section aria-label={words.home.sessions}>
      <h2>{words.home.sessions}</h2>
      <ul class="session-list">
        {props.sessions.map((session) => (
          <li key={session.plan.id} class="paper">
            <span class="session-words">
              <strong>{session.plan.title}</strong>
              <span class="hint">
                {words.home.session(
                  dayOf(session.startedAtMs),
                  session.round.riders.length,
                  ridesOf(session, saved.records).length,
                )}
              </span>
            </span>
            {(['round', 'picture', 'report'] as const).map((tab) => (
              <Button
                look="quiet-button"
                key={tab}
                aria-label={`${words.tabs[tab]}: ${session.plan.title}`}
                onClick={() => onPlace(placeOfStage(session, tab))}
              >
                {words.tabs[tab]}
              </Button>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}
