/** A late-comer: some animals to choose from, or a few characters of one's own. */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { deriveSeed } from '../../core/math/random.ts';
import { refusalOf, type QueueAction } from '../../core/group/turnQueue.ts';
import { offerNicknames, OWN_NICKNAME_CHARACTERS, ownNickname } from '../../core/group/nicknames.ts';
import { Dialog } from '../../ui/parts.tsx';
import { AnimalCards } from './animal.tsx';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { InSession } from './services.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

const OFFERED = 8;

/** The dialog. */
export function AddRider(
  props: InSession & {
    readonly act: (action: QueueAction) => void;
    readonly onClose: () => void;
  },
): JSX.Element {
  const { session, act, onClose } = props;
  const { newSeed } = props.props;
  const [seed, setSeed] = useState(() => deriveSeed(session.plan.seed, session.deviceId) >>> 0);
  const taken = session.round.riders.map((rider) => rider.nickname);
  const add = (nickname: string): void => {
    act({ kind: 'add', nickname });
    onClose();
  };
  return (
    <Dialog title={say('round-addTitle')} class="clinic" onClose={onClose}>
      <AnimalCards small nicknames={offerNicknames(taken, OFFERED, seed)} onPush={add} />
      <Button look="quiet-button" onClick={() => setSeed(newSeed())}>
        {say('round-others')}
      </Button>
      <OwnName {...{ session, add }} />
    </Dialog>
  );
}

/** A few characters of the rider's own choice. */
function OwnName(props: {
  readonly session: SavedRound;
  readonly add: (nickname: string) => void;
}): JSX.Element {
  const { session, add } = props;
  const [text, setText] = useState('');
  const own = ownNickname(text);
  const refusal = own === null ? null : refusalOf(session.round, { kind: 'add', nickname: own });
  return (
    <form
      class="own-name"
      onSubmit={(event) => {
        event.preventDefault();
        if (own !== null && refusal === null) add(own);
      }}
    >
      <label class="field">
        <span>{say('round-addOwn')}</span>
        <input
          type="text"
          name="nickname"
          autocomplete="off"
          maxLength={OWN_NICKNAME_CHARACTERS}
          value={text}
          onInput={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <Button submit disabled={own === null || refusal !== null}>
        {say('round-addThis')}
      </Button>
      <output class="hint">
        {refusal === null
          ? say('round-addOwnHint')
          : refusal === 'too-many-riders'
            ? say('round-fullRound')
            : say('round-taken')}
      </output>
    </form>
  );
}
