/**
 * Several riders on one device as a page of the game: choosing who rides how, riding at once or one after the other,
 * and looking at the rides. What is chosen lives as long as the page is open; a ride that is looked at goes to the store.
 */
import type { JSX } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { RideResult } from '../../core/coach/results.ts';
import { BIKES } from '../../core/model/presets.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import { relayGates, relayLegs } from '../../core/level/relay.ts';
import type { Level } from '../../core/level/schema.ts';
import { inLearningOrder } from '../../core/coach/ladder.ts';
import type { Page } from '../../ui/page.ts';
import { Sheet } from '../../ui/parts.tsx';
import type { RiderChoice, TwoServices } from './services.ts';
import { isChild, riderFor } from '../../core/settings/settings.ts';
import type { Send, State } from '../../state/store.ts';
import { After, SERIES, type Totals } from './after.tsx';
import { Choosing } from './choosing.tsx';
import { ChangeOver } from './changeOver.tsx';
import { canRide, Riding } from './riding.tsx';
import { movedOn, ridersOf, type TogetherChoice } from './choice.ts';
import { twoWords } from './words.ts';
import './two.css';

export const twoPage: Page<TwoServices> = (state, send, services) => <Two {...{ state, send, services }} />;

/** In a relay `rides` are the legs that are ridden; whoever comes next rides, or is asked to the gate. */
type Phase =
  | { readonly kind: 'choosing' }
  | { readonly kind: 'gate' | 'riding' | 'after'; readonly rides: readonly RideResult[] };

interface Props {
  readonly state: State;
  readonly send: Send;
  readonly services: TwoServices;
}

/** What was chosen, how far its rides have come, and the totals of the series. */
function useRounds(first: () => TogetherChoice) {
  const [choice, setChoice] = useState(first);
  const [phase, setPhase] = useState<Phase>({ kind: 'choosing' });
  /** Rounds of rides since the page was opened; each is drawn anew. */
  const [round, setRound] = useState(0);
  /** Totals of the series so far, and those of the rides that are looked at. */
  const [before, setBefore] = useState<readonly Totals[]>([]);
  const [now, setNow] = useState<Totals>([]);
  const ride = (next: TogetherChoice, goesOn: boolean): void => {
    const count = goesOn && before.length + 1 < SERIES;
    setBefore(count ? [...before, now] : []);
    setNow(ridersOf(next).map(() => null));
    setChoice(next);
    setRound(round + 1);
    setPhase({ kind: 'riding', rides: [] });
  };
  const setTotal = (rider: number, total: number): void =>
    setNow((all) => all.map((one, i) => (i === rider ? total : one)));
  return { choice, setChoice, phase, setPhase, round, before, now, setTotal, ride };
}

function Two({ state, send, services }: Props): JSX.Element {
  const rounds = useRounds(() => usualChoice(state));
  const { choice, phase, setPhase, before, now, ride } = rounds;
  const riders = useMemo(() => ridersOf(choice), [choice]);
  const roads = useMemo(() => roadsOf(choice, riders), [choice, riders]);
  const { gatesM } = roads;
  const leave = (): void => setPhase({ kind: 'choosing' });
  if (phase.kind === 'riding') {
    const { rides } = phase;
    const first = rides.length;
    return (
      <Riding
        key={`${rounds.round} ${first}`}
        {...{ choice, services, first }}
        level={roads.legs[first]}
        riders={choice.way === 'relay' ? riders.slice(first, first + 1) : riders}
        dialogOpen={state.dialog !== null}
        onLeave={leave}
        onDone={(done) => {
          const all = [...rides, ...done];
          setPhase({ kind: all.length < riders.length ? 'gate' : 'after', rides: all });
        }}
      />
    );
  }
  if (phase.kind === 'gate')
    return (
      <ChangeOver
        {...{ riders, gatesM }}
        level={choice.level}
        next={phase.rides.length}
        onRide={() => setPhase({ ...phase, kind: 'riding' })}
        onLeave={leave}
      />
    );
  if (phase.kind === 'choosing')
    return (
      <Sheet title={twoWords.title} intro={twoWords.intro}>
        <Choosing
          levels={roadsToChoose(state)}
          own={state.settings.bike}
          {...{ choice, riders, gatesM }}
          onChoice={rounds.setChoice}
          onRide={() => ride(choice, false)}
        />
      </Sheet>
    );
  return (
    <Sheet title={twoWords.title} intro={twoWords.series(before.length + 1, SERIES)}>
      <After
        {...{ services, send, before, now }}
        way={choice.way}
        units={state.settings.units}
        rides={phase.rides}
        onTotal={rounds.setTotal}
        onAgain={() => ride(choice, true)}
        onMoveOn={() => ride(movedOn(choice), false)}
        onOther={leave}
      />
    </Sheet>
  );
}

/** The gates of a relay with its legs, or the one road of those who ride at once. */
function roadsOf({ level, way }: TogetherChoice, riders: readonly RiderChoice[]) {
  if (level === null || riders.length === 0) return { gatesM: [], legs: [] };
  if (way !== 'relay') return { gatesM: [], legs: [level] };
  const legs = relayLegs(level, riders.length).map((leg, i) => ({
    ...leg,
    title: twoWords.leg(level.title, i, riders.length),
  }));
  return { gatesM: relayGates(courseOfLevel(level), riders.length), legs };
}

function roadsToChoose(state: State): readonly Level[] {
  return [...inLearningOrder(state.levels), ...state.ownLevels];
}

/** All on the bike of the device, on the first road that suits it; children are spared the easing. */
function usualChoice(state: State): TogetherChoice {
  const { bike, rider } = state.settings;
  const child = isChild(rider);
  const audience = child ? 'children' : 'everyone';
  const level = roadsToChoose(state).find((one) => one.audience === audience) ?? state.levels[0] ?? null;
  const own = { bike, rider };
  const other = BIKES.some(({ id }) => id === bike.id) ? own : { bike, rider: riderFor(bike) };
  const way = canRide('beside') ? 'beside' : 'relay';
  return { level, way, riders: [own, other], autoEase: child, headStart: true };
}
