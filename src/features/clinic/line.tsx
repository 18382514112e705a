/**
 * Everybody in the round: who waits, who comes back later, who has gone home, who comes late, and what a coach can do with
 * each.
 */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { type QueueAction, refusalOf, turnsLeft } from '../../core/group/turnQueue.ts';
import { AnimalCards, AnimalPicture } from './animal.tsx';
import { RoundMinutes } from './minutes.tsx';
import { counts } from './session.ts';
import type { InSession } from './services.ts';
import { nameOf } from '../../words/group.ts';
import { words } from '../../words/words.ts';
import { Stroke } from '../../ui/pictures/stroke.tsx';
import { useState } from 'preact/hooks';
import { deriveSeed } from '../../core/math/random.ts';
import { offerNicknames, OWN_NICKNAME_CHARACTERS, ownNickname } from '../../core/group/nicknames.ts';
import { Dialog } from '../../ui/parts.tsx';
import type { SavedRound } from '../../core/group/savedRound.ts';

const say = words('clinic');

interface LineProps extends InSession {
  readonly act: (action: QueueAction) => void;
  readonly onAdd: () => void;
  readonly onUndo: () => void;
}

export function WaitingLine(props: LineProps): JSX.Element {
  const { session, onAdd, onUndo } = props;
  const { round } = session;
  const { ridden, all } = counts(round);
  const away = round.riders.filter((rider) => rider.presence === 'later').map((rider) => rider.nickname);
  const gone = round.riders.filter((rider) => rider.presence === 'gone').map((rider) => rider.nickname);
  return (
    <section class="paper line" aria-label={say('round-line')}>
      <div class="row line-head">
        <h2>{say('round-line')}</h2>
        <span class="hint">{say('home-waiting', { ridden, all })}</span>
      </div>
      <progress
        class="line-progress"
        max={Math.max(1, all)}
        value={ridden}
        aria-label={say('home-waiting', { ridden, all })}
      />
      <RoundMinutes session={session} props={props.props} />
      <ol class="line-list">
        {round.line.map((nickname) => (
          <Waiting key={nickname} {...props} nickname={nickname} />
        ))}
        {round.line.length === 0 && <li class="hint">{say('round-nobodyInLine')}</li>}
      </ol>
      <Absent {...props} title={say('round-away')} nicknames={away} kind="back" />
      {gone.length > 0 && (
        <details class="line-gone">
          <summary>{say('round-gone', { riders: gone.length })}</summary>
          <Absent {...props} title={null} nicknames={gone} kind="add" />
        </details>
      )}
      <div class="buttons">
        <Button data-add onClick={onAdd}>
          {say('round-addPlus')}
        </Button>
        <Button data-undo disabled={refusalOf(round, { kind: 'undo' }) !== null} onClick={onUndo}>
          {say('round-undo')}
        </Button>
      </div>
    </section>
  );
}

function Waiting(props: LineProps & { readonly nickname: string }): JSX.Element {
  const { nickname, session, act } = props;
  const name = nameOf(nickname);
  const who = (
    <>
      <AnimalPicture nickname={nickname} />
      <span class="line-name">
        <b>{name}</b>
        <small>{say('round-left', { rides: turnsLeft(session.round, nickname) })}</small>
      </span>
    </>
  );
  const tool = (kind: 'later' | 'remove') => ({
    kind,
    disabled: refusalOf(session.round, { kind, nickname }) !== null,
    onClick: (): void => act({ kind, nickname }),
  });
  return (
    <li data-line={nickname}>
      <Button
        look="line-who"
        aria-pressed={session.round.line[0] === nickname}
        title={say('round-chooseWho', { name })}
        onClick={() => act({ kind: 'pick', nickname })}
      >
        {who}
      </Button>
      <LineTool name={say('round-laterWho', { name })} title={say('round-later')} {...tool('later')}>
        <Stroke
          d="M12 3a9 9 0 1 0 0 18a9 9 0 0 0 0-18ZM12 7v5.500l4 2.500"
          colour="currentColor"
          width={2.5}
        />
      </LineTool>
      <LineTool name={say('round-removeWho', { name })} title={say('round-remove')} {...tool('remove')}>
        <path d="M5 5L19 19M19 5L5 19" stroke="currentColor" stroke-width="3" />
      </LineTool>
    </li>
  );
}

function LineTool(props: {
  readonly kind: string;
  readonly name: string;
  readonly title: string;
  readonly disabled: boolean;
  readonly onClick: () => void;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <Button
      look="line-tool"
      data-tool={props.kind}
      disabled={props.disabled}
      aria-label={props.name}
      title={props.title}
      onClick={props.onClick}
    >
      <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
        {props.children}
      </svg>
    </Button>
  );
}

function Absent(
  props: LineProps & {
    readonly title: string | null;
    readonly nicknames: readonly string[];
    readonly kind: 'back' | 'add';
  },
): JSX.Element | null {
  const { title, nicknames, kind, act } = props;
  if (nicknames.length === 0) return null;
  return (
    <>
      {title !== null && <h3>{title}</h3>}
      <ul class="line-list">
        {nicknames.map((nickname) => (
          <li key={nickname}>
            <span class="line-who">
              <AnimalPicture nickname={nickname} />
              <span class="line-name">{nameOf(nickname)}</span>
            </span>
            <Button
              look="quiet-button"
              data-back={nickname}
              aria-label={say('round-backWho', { name: nameOf(nickname) })}
              onClick={() => act({ kind, nickname })}
            >
              {say('round-back')}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

const OFFERED = 8;

/** A late-comer: some animals to choose from, or a few characters of one's own. */
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
      class="row own-name"
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
