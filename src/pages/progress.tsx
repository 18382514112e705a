/** Progress as a page of the game: kept results go in, a wished check ride goes to the store. */
import { createFormat } from '../ui/format.ts';
import { Kept } from './kept.tsx';
import type { Page } from '../app/page.ts';
import { Sheet } from '../ui/parts.tsx';
import { ProgressPage } from '../features/progress/page.tsx';
import { checkAddress } from '../app/rideLevel.ts';
import { words } from './words.ts';
import { progressWords } from '../features/progress/words.ts';

/** A road nobody has seen. */
const freshSeed = (): number => crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;

export const progressPage: Page = (state, send, services) => (
  <Sheet title={progressWords.title} intro={progressWords.intro}>
    <ProgressPage
      rides={state.results}
      unmarked={state.unmarked}
      health={state.keeping === null ? null : (words.after.health[state.keeping] ?? null)}
      kept={<Kept services={services} rides={state.results.length + state.unmarked.length} />}
      bikeName={(id) => words.bike.names[id] ?? words.bike.own}
      onCheckRide={(audience) => send({ kind: 'ask-ride', levelId: checkAddress(audience, freshSeed()) })}
      words={progressWords}
      format={createFormat(state.settings.units)}
    />
  </Sheet>
);
