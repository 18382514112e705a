/** The gear check as a page of the game: rider, bike and roads of the state go in, wishes go to the store. */
import { createFormat } from '../../words/format.ts';
import { GearCheckPage } from './gearCheck.tsx';
import { levelForButton } from '../../state/nextRide.ts';
import type { GearCheckServices } from './services.ts';
import type { Page } from '../../ui/page.ts';
import { Sheet } from '../../ui/parts.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';

const say = words('gearcheck');

export const gearCheckPage: Page<GearCheckServices> = (state, send, services) => (
  <Sheet title={common('nav-gearcheck')} intro={say('intro')}>
    <GearCheckPage
      bike={state.settings.bike}
      rider={state.settings.rider}
      levels={state.levels}
      ownLevels={state.ownLevels}
      chosenLevelId={state.rest || (levelForButton(state)?.id ?? '')}
      onCompute={services.checkGears}
      onChooseLevel={(rest) => send({ kind: 'address', address: { view: 'gearcheck', rest } })}
      onTakeBike={(bike) => send({ kind: 'choose-bike', bike })}
      format={createFormat(state.settings.units)}
    />
  </Sheet>
);
