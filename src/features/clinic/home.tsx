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
import { Icon, Sheet, WayWords } from '../../ui/parts.tsx';
import { Profile } from '../../ui/pictures/profile.tsx';
import { AnimalPicture } from './animal.tsx';
import { Minutes, USUAL_COUNT } from './minutes.tsx';
import { writeDay } from '../../words/dates.ts';
import { planFacts, rideTitle } from './say.ts';
import { counts, ridesOf } from './session.ts';
import { placeOfStage } from './stage.tsx';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicProps, InSession } from './services.ts';
import { nameOf, planTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

export function ClinicHome(props: ClinicProps): JSX.Element {
  const { saved, onPlace } = props;
  const sessions = saved.rounds.toSorted((a, b) => b.startedAtMs - a.startedAtMs);
  const open = sessions.find(({ round }) => !isDone(round));
  return (
    <Sheet title={say('title')} intro={say('intro')}>
      <div class="clinic clinic-home">
        {open !== undefined && <GoOn session={open} props={props} />}
        <Plans title={say('home-ready')} plans={READY_PLANS} props={props} />
        <Plans title={say('home-saved')} plans={saved.plans} props={props} own={true}>
          <li>
            <Button look="plan-new" data-new-plan onClick={() => onPlace('plan')}>
              <span aria-hidden="true">+</span>
              <strong>{say('home-own')}</strong>
              <span class="hint">{say('home-ownHint')}</span>
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
  const { onPlace } = props;
  return (
    <div class="tablet-ways">
      <a class="cut way" href="#teach" data-teach>
        <WayWords title={say('home-teach')} hint={say('home-teachHint')} />
      </a>
      <a class="cut way" href="#join" data-join>
        <WayWords title={say('home-join')} hint={say('home-joinHint')} />
      </a>
      <Button look="cut way" data-club-store onClick={() => onPlace('store')}>
        <WayWords title={say('home-store')} hint={say('home-storeHint')} />
      </Button>
    </div>
  );
}

function GoOn({ session, props }: InSession): JSX.Element {
  const { onPlace } = props;
  const next = nextUp(session.round);
  const { ridden, all } = counts(session.round);
  return (
    <Button look="big-button go-on" data-go-on onClick={() => onPlace(placeOfStage(session, 'round'))}>
      {next.kind === 'rider' ? <AnimalPicture nickname={next.nickname} /> : <Icon name="go" />}
      <span>
        <strong>{say('home-goOn', { plan: planTitle(session.plan) })}</strong>
        <span class="big-button-level">
          {next.kind === 'rider'
            ? say('home-next', { name: nameOf(next.nickname), ridden, all })
            : say('home-waiting', { ridden, all })}
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
  const { levels, onPlace, onDeletePlan } = props.props;
  const titles = plan.rides.map((ride) => rideTitle(ride, levels));
  const here = titles.every((title) => title !== null);
  const course = courseOf(plan, props.props);
  return (
    <article class="cut plan-card">
      <Button
        look="plan-choose"
        data-plan={plan.id}
        disabled={!here}
        onClick={() => onPlace(`go/${plan.id}`)}
      >
        <span class="plan-picture" aria-hidden="true">
          {course !== null && <Profile course={course} label={planTitle(plan)} />}
        </span>
        <span class="plan-words">
          <span class="lesson">
            {plan.audience === 'children' ? say('home-children') : say('home-everyone')}
          </span>
          <strong>{planTitle(plan)}</strong>
          {/* A check ride alone would only say its own title again. */}
          {titles.length > 1 && <span>{titles.map((title) => title ?? '?').join(' · ')}</span>}
          {!here && <span class="plan-missing">{say('home-missing')}</span>}
          <span class="level-facts">{planFacts(plan)}</span>
          <Minutes plan={plan} riders={USUAL_COUNT} props={props.props} />
        </span>
      </Button>
      <span class="wrap plan-tools">
        <Button look="quiet-button" onClick={() => onPlace(`plan/${plan.id}`)}>
          {say('home-change')}
        </Button>
        {own && <ForgetPlan onDelete={() => onDeletePlan(plan.id)} />}
      </span>
    </article>
  );
}

/** The button that asked is gone; whoever came by keyboard goes on from the easy answer. */
const takeFocus = (button: HTMLButtonElement | null): void => button?.focus();

/** A plan is somebody's evening of work: the first push only asks. */
function ForgetPlan(props: { readonly onDelete: () => void }): JSX.Element {
  const [asked, setAsked] = useState(false);
  if (!asked)
    return (
      <Button look="quiet-button" data-forget onClick={() => setAsked(true)}>
        {say('home-forget')}
      </Button>
    );
  return (
    <>
      <Button look="quiet-button" data-forget-keep ref={takeFocus} onClick={() => setAsked(false)}>
        {say('home-forgetKeep')}
      </Button>
      <Button look="quiet-button" data-forget-sure onClick={props.onDelete}>
        {say('home-forgetSure')}
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
  const { onPlace, saved } = props.props;
  return (
    <section aria-label={say('home-sessions')}>
      <h2>{say('home-sessions')}</h2>
      <ul class="session-list">
        {props.sessions.map((session) => (
          <li key={session.plan.id} class="paper row">
            <span class="session-words">
              <strong>{planTitle(session.plan)}</strong>
              <span class="hint">
                {say('home-session', {
                  date: writeDay(session.startedAtMs),
                  riders: session.round.riders.length,
                  rides: ridesOf(session, saved.records).length,
                })}
              </span>
            </span>
            {(['round', 'picture', 'report'] as const).map((tab) => (
              <Button
                look="quiet-button"
                key={tab}
                aria-label={say(`home-open-${tab}`, { plan: planTitle(session.plan) })}
                onClick={() => onPlace(placeOfStage(session, tab))}
              >
                {say(`tabs-${tab}`)}
              </Button>
            ))}
          </li>
        ))}
      </ul>
    </section>
  );
}
