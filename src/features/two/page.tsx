/**
 * Several riders on one device as a page of the game: choosing who rides how, riding at once or one after the other,
 * and looking at the rides. What is chosen lives as long as the page is open, and rides until others are begun or chosen.
 */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { BIKES } from '../../core/model/presets.ts';
import { courseOfLevel } from '../../core/level/build.ts';
import { relayGates, relayLegs } from '../../core/level/relay.ts';
import type { Level } from '../../core/level/schema.ts';
import { inLearningOrder, playRoads, suitsBike } from '../../core/coach/ladder.ts';
import { type Page, type PageProps, Sheet } from '../../ui/parts.tsx';
import type { RiderChoice, TwoServices } from './services.ts';
import { isChild, playing, riderFor } from '../../core/settings/settings.ts';
import type { State } from '../../state/store.ts';
import { After, ChangeOver } from './after.tsx';
import { Choosing } from './choosing.tsx';
import { canRide, Riding } from './riding.tsx';
import { mostOn, movedOn, ridersTogether, SERIES, type TogetherChoice, useRounds } from './rounds.ts';
import './two.css';
import { spokenLanguage, words } from '../../words/words.ts';

const say = words('two');

export const twoPage: Page<TwoServices> = (state, send, services) => <Two {...{ state, send, services }} />;

function Two({ state, send, services }: PageProps<TwoServices>): JSX.Element {
  const rounds = useRounds(() => usualChoice(state));
  const { choice, phase, setPhase, before, now, ride } = rounds;
  const riders = useMemo(() => ridersTogether(choice), [choice]);
  const roads = useMemo(() => roadsOf(choice, riders), [choice, riders, spokenLanguage()]);
  const { gatesM } = roads;
  const toChoosing = (): void => setPhase({ kind: 'choosing' });
  const hasLegs = phase.kind !== 'choosing' && phase.rides.length > 0;
  /** Legs that are ridden are marked, though not all are. */
  const leave = (): void => (hasLegs ? setPhase({ ...phase, kind: 'after' }) : toChoosing());
  const toGate = (): void => (hasLegs ? setPhase({ ...phase, kind: 'gate' }) : toChoosing());
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
        onFailed={hasLegs ? toGate : undefined}
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
      <Sheet title={say('title')} intro={say('intro')}>
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
    <Sheet title={say('title')} intro={say('series', { ride: before.length + 1, of: SERIES })}>
      <After
        {...{ services, send, before, now }}
        way={choice.way}
        units={state.settings.units}
        rides={phase.rides}
        onTotal={rounds.setTotal}
        onGoOn={toGate}
        onAgain={() => ride(choice, true)}
        onMoveOn={() => ride(movedOn(choice), false)}
        onOther={toChoosing}
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
    // A part of a road is another road: neither its name nor its marks are those of the whole.
    id: `${level.id.slice(0, 50)}-leg-${i + 1}`,
    title: say('leg', { road: level.title, leg: i + 1, legs: riders.length }),
  }));
  return { gatesM: relayGates(courseOfLevel(level), riders.length), legs };
}

function roadsToChoose(state: State): readonly Level[] {
  return [...inLearningOrder(state.levels), ...state.ownLevels];
}

/**
 * All on the bike of the device, on the first road that suits it and how they ride; children are spared the easing.
 * `#two/relay` is the children's way in: one after the other, as they play alone.
 */
function usualChoice(state: State): TogetherChoice {
  const isPlay = state.rest === 'relay';
  const { bike, rider } = isPlay ? playing(state.settings) : state.settings;
  const child = isChild(rider);
  const audience = child ? 'children' : 'everyone';
  const way = !isPlay && canRide('beside') ? 'beside' : 'relay';
  const all = isPlay ? [...playRoads(state.levels), ...roadsToChoose(state)] : roadsToChoose(state);
  const fitting = all.filter((one) => suitsBike(one, bike) && (way === 'beside' || mostOn(one) > 1));
  const level = fitting.find((one) => one.audience === audience) ?? fitting[0] ?? state.levels[0] ?? null;
  const own = { bike, rider };
  const other = BIKES.some(({ id }) => id === bike.id) ? own : { bike, rider: riderFor(bike) };
  return { level, way, riders: [own, other], autoEase: child, headStart: true };
}
