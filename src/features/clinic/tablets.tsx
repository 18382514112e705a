/** Several devices in one session: three ways, and what each is for. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { sessionPlace } from '../../state/groupTurn.ts';
import type { InSession } from './services.ts';
import { WayWords } from '../../ui/paper.tsx';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** Places of a session that carry something. */
export const CARRY_TABS = ['out', 'back', 'collect'] as const;
export type CarryTab = (typeof CARRY_TABS)[number];

/** The three ways. */
export function Tablets({ props, session }: InSession): JSX.Element {
  const { onPlace } = props;
  return (
    <div class="tablet-ways">
      <p class="hint">{say('tablets-intro')}</p>
      {CARRY_TABS.map((tab) => (
        <Button
          look="cut way"
          key={tab}
          data-carry={tab}
          aria-label={`${say(`tablets-${tab}-title`)} ${say(`tablets-${tab}-hint`)}`}
          onClick={() => onPlace(sessionPlace(session.plan.id, tab))}
        >
          <WayWords title={say(`tablets-${tab}-title`)} hint={say(`tablets-${tab}-hint`)} />
        </Button>
      ))}
    </div>
  );
}
