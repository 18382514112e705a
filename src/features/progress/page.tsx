/** Progress as a page of the game: kept results go in, a wished check ride goes to the store. */
import type { UnmarkedRide } from '../../core/coach/results.ts';
import { checkedApart } from '../../core/coach/ladder.ts';
import { rideSeconds } from '../../core/group/minutes.ts';
import { checkLevel } from '../../core/level/generate.ts';
import { createFormat } from '../../words/format.ts';
import { KeptSection, type KeptServices } from '../../ui/kept.tsx';
import type { State } from '../../state/store.ts';
import type { Page } from '../../ui/page.ts';
import { PageLink, Sheet } from '../../ui/parts.tsx';
import { ProgressPage } from './progress.tsx';
import { checkAddress } from '../../state/rideLevel.ts';
import { bikeName, levelWords } from '../../words/common.ts';
import { words } from '../../words/words.ts';

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
      bikeName={(id) => bikeName(id)}
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
