/** Who rides: a number, and an animal for everybody. The second and last step before a session begins. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { deriveSeed } from '../../core/math/random.ts';
import { Button } from '../../ui/controls.tsx';
import { MOST_RIDERS } from '../../core/group/roundFile.ts';
import { offerNicknames } from '../../core/group/nicknames.ts';
import type { ClinicPlan } from '../../core/group/plan.ts';
import { Icon, Sheet } from '../../ui/parts.tsx';
import { AnimalCards } from './animal.tsx';
import { Minutes, TooLong, USUAL_COUNT } from './minutes.tsx';
import { newSession } from './session.ts';
import { placeOfStage, type Tab } from './stage.tsx';
import type { ClinicProps } from './services.ts';
import { nameOf, planTitle } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** The same plan offers the same animals each time it is opened. */
const seedOf = (text: string): number => deriveSeed(1, text) >>> 0;

export function Riders({
  props,
  plan: template,
}: {
  readonly props: ClinicProps;
  readonly plan: ClinicPlan;
}): JSX.Element {
  const { onPlace, onSaveRound } = props;
  const [plan, setPlan] = useState(template);
  const [offer, setOffer] = useState(() => offerNicknames([], MOST_RIDERS, seedOf(template.id)));
  const [count, setCount] = useState(USUAL_COUNT);
  const shown = offer.slice(0, count);
  const swap = (nickname: string): void => {
    const seed = props.newSeed();
    const [other] = offerNicknames(shown, 1, seed);
    if (other === undefined) return;
    const kept = shown.map((one) => (one === nickname ? other : one));
    // Whoever comes still is offered what these have not taken.
    setOffer([...kept, ...offerNicknames(kept, MOST_RIDERS - kept.length, seed)]);
  };
  const go = (tab: Tab, nicknames: readonly string[] = shown): void => {
    const session = newSession(plan, nicknames, {
      id: props.newId(),
      deviceId: props.newId(),
      seed: props.newSeed(),
      atMs: props.now(),
    });
    const open = (): void => onPlace(placeOfStage(session, tab));
    onSaveRound(session).then(open, open);
  };
  return (
    <Sheet title={say('go-title')} intro={say('go-intro')}>
      <div class="clinic clinic-go">
        <div class="row go-row">
          <div class="paper">
            <Stepper
              label={say('go-count')}
              fewer={say('go-fewer')}
              more={say('go-more')}
              value={count}
              low={1}
              high={MOST_RIDERS}
              onChange={setCount}
            />
          </div>
          <Button look="big-button" data-go onClick={() => go('round')}>
            <Icon name="go" />
            <span>
              <strong>{say('go-start')}</strong>
              <span class="big-button-level">
                {say('go-startHint', { plan: planTitle(plan), riders: count })}
              </span>
            </span>
          </Button>
        </div>
        <Button look="quiet-button go-out" data-only-hand-out onClick={() => go('tablets', [])}>
          {say('go-onlyHandOut')}
        </Button>
        <p class="go-minutes">
          <Minutes plan={plan} riders={count} props={props} />
        </p>
        <TooLong plan={plan} riders={count} props={props} onPlan={setPlan} onTablets={() => go('tablets')} />
        <AnimalCards
          nicknames={shown}
          labelOf={(nickname) => say('go-swap', { name: nameOf(nickname) })}
          onPush={swap}
        />
      </div>
    </Sheet>
  );
}

/** A small whole number between two buttons. */
export function Stepper(props: {
  readonly label: string;
  readonly fewer: string;
  readonly more: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly onChange: (value: number) => void;
}): JSX.Element {
  const { label, value, low, high, onChange } = props;
  return (
    <fieldset class="row stepper" aria-label={label}>
      <span class="stepper-label">{label}</span>
      <Button look="" aria-label={props.fewer} disabled={value <= low} onClick={() => onChange(value - 1)}>
        −
      </Button>
      <output>{value}</output>
      <Button look="" aria-label={props.more} disabled={value >= high} onClick={() => onChange(value + 1)}>
        +
      </Button>
    </fieldset>
  );
}
