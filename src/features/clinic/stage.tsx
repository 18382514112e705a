/**
 * The slim frame round everything of one session: way back, title, tabs. It leaves the screen to what is shown. Also the
 * tab from which several devices are joined.
 */
import type { ComponentChildren, JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { Icon, SettingsButton, WayWords } from '../../ui/parts.tsx';
import type { SavedRound } from '../../core/group/savedRound.ts';
import { sessionPlace } from '../../state/groupTurn.ts';
import type { InSession } from './services.ts';
import { planTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

export type Tab = 'round' | 'picture' | 'report' | 'tablets';
const TABS: readonly Tab[] = ['round', 'picture', 'report', 'tablets'];

/** Where a session's tab is found. */
export function placeOfStage(session: SavedRound, tab: Tab): string {
  return sessionPlace(session.plan.id, tab === 'round' ? '' : tab);
}

export function SessionStage(
  props: InSession & { readonly tab: Tab; readonly children: ComponentChildren },
): JSX.Element {
  const { session, tab, children } = props;
  const { onPlace } = props.props;
  return (
    <div class="clinic clinic-stage">
      <header class="row stage-bar">
        <Button look="round with-word" onClick={() => onPlace('')}>
          <Icon name="back" />
          {say('back')}
        </Button>
        <h1 tabIndex={-1}>{planTitle(session.plan)}</h1>
        <nav class="wrap stage-tabs" aria-label={say('tabs-label')}>
          {TABS.map((one) => (
            <Button
              look=""
              key={one}
              aria-current={one === tab ? 'page' : undefined}
              data-tab={one}
              onClick={() => onPlace(placeOfStage(session, one))}
            >
              {say(`tabs-${one}`)}
            </Button>
          ))}
        </nav>
        <SettingsButton />
      </header>
      <main class="stage-main">
        {children}
        {props.props.outgoing}
      </main>
    </div>
  );
}

/** Places of a session that carry something. */
export const CARRY_TABS = ['out', 'back', 'collect'] as const;
export type CarryTab = (typeof CARRY_TABS)[number];

/** Several devices in one session: three ways, and what each is for. */
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
          onClick={() => onPlace(sessionPlace(session.plan.id, tab))}
        >
          <WayWords title={say(`tablets-${tab}-title`)} hint={say(`tablets-${tab}-hint`)} />
        </Button>
      ))}
    </div>
  );
}
