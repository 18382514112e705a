/** How to play, why it feels like riding, privacy, what is kept, and care. */
import { shiftsInFront } from '../../core/model/shifters.ts';
import { Lines, type Page, Sheet } from '../../ui/parts.tsx';
import { KeptSection, type KeptServices } from '../../ui/kept.tsx';
import { KeyList } from '../../ui/keyList.tsx';
import { Button } from '../../ui/controls.tsx';
import type { Send } from '../../state/store.ts';
import { helpLimit } from '../../words/cues.ts';
import { createFormat } from '../../words/format.ts';
import { words } from '../../words/words.ts';

const say = words('about');

/** The road on which the first steps with the levers are done, once more. */
const LEVERS_LEVEL = 'two-levers';

function tryLevers(send: Send): void {
  send({ kind: 'set', settings: { leversKnown: false } });
  send({ kind: 'ask-ride', rest: LEVERS_LEVEL });
}

export const aboutPage: Page<KeptServices> = (state, send, services) => {
  return (
    <Sheet title={say('title')}>
      <div class="about">
        <section class="paper">
          <h2>{say('playTitle')}</h2>
          <ol class="steps">
            {say.lines('play', { speed: helpLimit(createFormat(state.settings.units)) }).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ol>
        </section>
        <section class="paper">
          <h2>{say('keys')}</h2>
          <KeyList keys={state.settings.keys} twoShifters={shiftsInFront(state.settings.bike)} />
          <Button data-first-steps-again onClick={() => tryLevers(send)}>
            {say('tryLevers')}
          </Button>
        </section>
        <section class="paper">
          <h2>{say('privacyTitle')}</h2>
          <p>{say('privacy')}</p>
          <h2>{say('modelTitle')}</h2>
          <p>{say('model')}</p>
          <p>{say('honest')}</p>
        </section>
        <KeptSection services={services} rides={state.results.length + state.unmarked.length} />
        <section class="paper">
          <h2>{say('creditsTitle')}</h2>
          <Lines lines={say.lines('credits')} />
        </section>
        <section class="paper care">
          <h2>{say('careTitle')}</h2>
          <Lines lines={say.lines('care')} />
        </section>
      </div>
    </Sheet>
  );
};
