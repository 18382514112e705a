/**
 * Progress: check rides and what they can show, marks of all rides, and what is kept. Kept results go in, a wished check
 * ride goes to the store.
 */
import type { KeptResult, UnmarkedRide } from '../../core/coach/results.ts';
import { checkedApart } from '../../core/coach/ladder.ts';
import { rideSeconds } from '../../core/group/minutes.ts';
import { checkLevel } from '../../core/level/generate.ts';
import { createFormat } from '../../words/format.ts';
import { KeptSection, type KeptServices } from '../../ui/kept.tsx';
import type { State } from '../../state/store.ts';
import { Lines, type Page, PageLink, Paper, Sheet } from '../../ui/parts.tsx';
import { checkAddress } from '../../state/rideLevel.ts';
import { levelWords } from '../../words/common.ts';
import { words } from '../../words/words.ts';
import type { ComponentChildren, JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { writeDate } from '../../words/dates.ts';
import { CheckCard, type CheckCardProps } from './checkCard.tsx';
import { checkGroups } from './checks.ts';
import { type LangOf, Multiples } from './multiples.tsx';
import './progress.css';

const say = words('progress');

/** A road nobody has seen. */
const freshSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;

/** Records say what a level was called when it was ridden. */
const titled = <Ride extends Pick<UnmarkedRide, 'levelId' | 'levelTitle'>>(
  rides: readonly Ride[],
  { levels }: State,
): readonly Ride[] =>
  rides.map((ride) => ({
    ...ride,
    levelTitle: levelWords({ id: ride.levelId, title: ride.levelTitle, sentence: '' }, levels).title,
  }));

export const progressPage: Page<KeptServices> = (state, send, services) => (
  <Sheet title={say('title')} intro={say('intro')}>
    <PageLink to="road" class="button progress-road">
      {say('road')}
    </PageLink>
    <ProgressPage
      rides={titled(state.results, state)}
      unmarked={titled(state.unmarked, state)}
      kept={<KeptSection services={services} rides={state.results.length + state.unmarked.length} />}
      langOf={(id) => state.ownLevels.find((level) => level.id === id)?.lang}
      needs={checkedApart(state.settings.bike, 'everyone')}
      secondsOf={(audience) => {
        const { bike, rider } = state.settings;
        // Every seed has the same pitches, in another order.
        return rideSeconds(checkLevel(1, audience, 'alone', checkedApart(bike, audience)), bike, rider);
      }}
      onCheckRide={(audience) => {
        const needs = checkedApart(state.settings.bike, audience);
        send({ kind: 'ask-ride', rest: checkAddress(audience, freshSeed(), needs) });
      }}
      format={createFormat(state.settings.units)}
    />
  </Sheet>
);

interface ProgressProps extends Omit<CheckCardProps, 'groups'> {
  /** Kept results in any order. */
  readonly rides: readonly KeptResult[];
  /** Rides that are kept without marks, newest first. */
  readonly unmarked: readonly UnmarkedRide[];
  /** Saving, taking back and deleting. */
  readonly kept: ComponentChildren;
  readonly langOf: LangOf;
}

/** The page below its head. It compares nothing that must not be compared, and keeps nothing itself. */
export function ProgressPage(props: ProgressProps): JSX.Element {
  const { rides, unmarked, kept, langOf, format } = props;
  const sorted = useMemo(() => rides.toSorted((a, b) => a.atMs - b.atMs), [rides]);
  const groups = useMemo(() => checkGroups(rides.filter((ride) => ride.older !== true)), [rides]);
  const older = rides.filter((ride) => ride.older === true).length;
  return (
    <div class="papers progress-page">
      <CheckCard {...props} groups={groups} />
      <Limits />
      {older > 0 && (
        <p class="paper" data-older={older}>
          {say('older', { rides: older })}
        </p>
      )}
      {sorted.length === 0 ? (
        <p class="paper">{say('empty')}</p>
      ) : (
        <Multiples rides={sorted} langOf={langOf} format={format} />
      )}
      {unmarked.length > 0 && <Unmarked rides={unmarked} langOf={langOf} />}
      {kept}
    </div>
  );
}

/** What is kept and counts nowhere, because it has no marks. */
function Unmarked(props: { readonly rides: readonly UnmarkedRide[]; readonly langOf: LangOf }): JSX.Element {
  return (
    <Paper title={say('unmarked-title')} data-unmarked>
      <ul>
        {props.rides.map(({ id: key, atMs, levelId, levelTitle, standing }) => (
          <li key={key} data-standing={standing}>
            <b lang={props.langOf(levelId)}>{levelTitle}</b>,{' '}
            {say(`standing-${standing}`, { date: writeDate(atMs) })}
          </li>
        ))}
      </ul>
    </Paper>
  );
}

function Limits(): JSX.Element {
  return (
    <Paper look="progress-limits" title={say('limits-title')}>
      <Lines lines={say.lines('limits')} />
    </Paper>
  );
}
