/** How to play, why it feels like riding, privacy, what is kept, and care. */
import { shiftsInFront } from '../../core/model/shifters.ts';
import type { Page } from '../../ui/page.ts';
import { KeptSection, type KeptServices } from '../../ui/kept.tsx';
import { KeyList } from '../../ui/keyList.tsx';
import { Sheet } from '../../ui/parts.tsx';
import { Button } from '../../ui/controls.tsx';
import type { Send } from '../../state/store.ts';
import { aboutWords } from './words.ts';

/** The road on which the first steps with the levers are done, once more. */
const LEVERS_LEVEL = 'two-levers';

function tryLevers(send: Send): void {
  send({ kind: 'set', settings: { leversKnown: false } });
  send({ kind: 'ask-ride', levelId: LEVERS_LEVEL });
}

export const aboutPage: Page<KeptServices> = (state, send, services) => {
  const about = aboutWords;
  return (
    <Sheet title={about.title}>
      <div class="about">
        <section class="paper">
          <h2>{about.playTitle}</h2>
          <ol class="steps">
            {about.play.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ol>
        </section>
        <section class="paper">
          <h2>{aboutWords.keys}</h2>
          <KeyList keys={state.settings.keys} twoShifters={shiftsInFront(state.settings.bike)} />
          <Button data-first-steps-again onClick={() => tryLevers(send)}>
            {about.tryLevers}
          </Button>
        </section>
        <section class="paper">
          <h2>{about.privacyTitle}</h2>
          <p>{about.privacy}</p>
          <h2>{about.modelTitle}</h2>
          <p>{about.model}</p>
          <p>{about.honest}</p>
        </section>
        <KeptSection services={services} rides={state.results.length + state.unmarked.length} />
        <section class="paper">
          <h2>{about.creditsTitle}</h2>
          <ul>
            {about.credits.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
        <section class="paper care">
          <h2>{about.careTitle}</h2>
          <ul>
            {about.care.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      </div>
    </Sheet>
  );
};
