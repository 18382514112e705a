/** What a plan has its riders ride: levels, own levels, check rides, numbered in the order they were chosen. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { MOST_RIDES, type PlanRide } from '../../core/group/plan.ts';
import { rowsOf } from '../../core/coach/ladder.ts';
import type { ClinicProps } from './services.ts';
import { common } from '../../words/common.ts';
import { type PlannedCheck, checkTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** Check rides a plan can have; no child of ours rides with a motor. */
const CHECKS: readonly PlannedCheck[] = [
  { kind: 'check', audience: 'everyone' },
  { kind: 'check', audience: 'children' },
  { kind: 'check', audience: 'everyone', needs: 'hub' },
  { kind: 'check', audience: 'children', needs: 'hub' },
  { kind: 'check', audience: 'everyone', needs: 'crank-motor' },
  { kind: 'check', audience: 'everyone', needs: 'wheel-motor' },
];
const group = words('group');

/** Tells rides apart. */
function keyOf(ride: PlanRide): string {
  if (ride.kind === 'check') return ['check', ride.audience, ride.needs ?? ''].join(' ').trim();
  return ride.kind === 'own' ? `own ${ride.level.id}` : `bundled ${ride.levelId}`;
}

/** The choice. */
export function RideChoice(props: {
  readonly rides: readonly PlanRide[];
  readonly props: ClinicProps;
  readonly onChange: (rides: readonly PlanRide[]) => void;
}): JSX.Element {
  const { rides, onChange } = props;
  const { levels, ownLevels } = props.props;
  const { everyone, children } = rowsOf(levels);
  const bundled = (list: typeof levels): Offer[] =>
    list.map((level) => ({ title: level.title, ride: { kind: 'bundled', levelId: level.id } }));
  const groups: readonly (readonly [string, readonly Offer[]])[] = [
    [group('check-everyone'), CHECKS.map((ride) => ({ title: checkTitle(ride), ride }))],
    [common('ladder-children'), bundled(children)],
    [common('ladder-everyone'), bundled(everyone)],
    [say('form-ownLevels'), ownLevels.map((level) => ({ title: level.title, ride: { kind: 'own', level } }))],
  ];
  const toggle = (ride: PlanRide): void => {
    const without = rides.filter((one) => keyOf(one) !== keyOf(ride));
    onChange(without.length < rides.length ? without : [...rides, ride].slice(0, MOST_RIDES));
  };
  return (
    <fieldset class="ride-choice wide">
      <legend>{say('form-rides')}</legend>
      <p class="hint">{say('form-ridesHint')}</p>
      {groups.map(
        ([title, offers]) =>
          offers.length > 0 && <Group key={title} {...{ title, offers, rides }} onToggle={toggle} />,
      )}
    </fieldset>
  );
}

interface Offer {
  readonly title: string;
  readonly ride: PlanRide;
}

function Group(props: {
  readonly title: string;
  readonly offers: readonly Offer[];
  readonly rides: readonly PlanRide[];
  readonly onToggle: (ride: PlanRide) => void;
}): JSX.Element {
  return (
    <div class="ride-group">
      <span class="ride-group-title">{props.title}</span>
      <div class="ride-row">
        {props.offers.map(({ title, ride }) => {
          const place = props.rides.findIndex((one) => keyOf(one) === keyOf(ride));
          return (
            <Button
              look="pick ride-pick"
              key={keyOf(ride)}
              aria-pressed={place >= 0}
              data-ride={keyOf(ride)}
              onClick={() => props.onToggle(ride)}
            >
              {place >= 0 && <b>{place + 1}</b>}
              {title}
            </Button>
          );
        })}
      </div>
    </div>
  );
}
