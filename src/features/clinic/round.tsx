/**
 * Handing one device round: who is next in letters that are read across a room, one line after each ride. Every
 * change is kept before anything else happens, so that a reload finds everything as it was.
 */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { nextUp, type QueueAction } from '../../core/group/turnQueue.ts';
import { RIDERS } from '../../core/model/presets.ts';
import { Button, Choice } from '../../ui/controls.tsx';
import { Icon } from '../../ui/parts.tsx';
import { AddRider, WaitingLine } from './line.tsx';
import { AnimalPicture } from './animal.tsx';
import { Broken, type Doing, Give, Marked, type NowProps, Ridden, Undo } from './ridden.tsx';
import { rideTitle } from './say.ts';
import { after, startOf } from './session.ts';
import { placeOfStage } from './stage.tsx';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { InSession } from './services.ts';
import { riderName } from '../../words/common.ts';
import { nameOf } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

export function Round({ props, session }: InSession): JSX.Element {
  const { onSaveRound, onRide, onTakeBack, onGive } = props;
  const [dialog, setDialog] = useState<'add' | 'undo' | 'give' | null>(null);
  const keep = (to: SavedRound): void => {
    if (to !== session) void onSaveRound(to);
  };
  const act = (action: QueueAction): void => keep(after(session, action));
  const ride = (nickname: string): void => {
    const start = startOf(session, nickname, props);
    if (start !== null) onRide(start);
  };
  const last = session.round.rides.at(-1);
  const doing: Doing = { props, session, act, ride };
  return (
    <div class="hand-round">
      <section class="paper now" aria-live="polite" data-phase={session.round.phase.kind}>
        <Now {...doing} keep={keep} onAdd={() => setDialog('add')} onGive={() => setDialog('give')} />
      </section>
      <WaitingLine {...doing} onAdd={() => setDialog('add')} onUndo={() => setDialog('undo')} />
      {!props.kept && (
        <p class="paper notice not-kept" role="alert">
          {say('round-notKept')}
        </p>
      )}
      {dialog === 'add' && <AddRider {...doing} onClose={() => setDialog(null)} />}
      {dialog === 'give' && last !== undefined && (
        <Give
          {...doing}
          recordId={last.recordId}
          onClose={() => setDialog(null)}
          onGive={(nickname) => {
            setDialog(null);
            void onGive(last.recordId, nickname);
          }}
        />
      )}
      {dialog === 'undo' && last !== undefined && (
        <Undo
          name={nameOf(last.nickname)}
          onClose={() => setDialog(null)}
          onUndo={() => {
            setDialog(null);
            void onTakeBack(last.recordId);
          }}
        />
      )}
    </div>
  );
}

function Now(props: NowProps): JSX.Element {
  const { session, act } = props;
  const { onPlace } = props.props;
  const { round } = session;
  if (round.phase.kind === 'riding') {
    const { marking } = props.props;
    const { nickname } = round.phase;
    if (marking !== null && marking.planId === session.plan.id && !marking.failed)
      return <Marked nickname={nickname} />;
    return <Broken {...props} nickname={nickname} />;
  }
  if (round.phase.kind === 'ridden')
    return <Ridden {...props} nickname={round.phase.nickname} recordId={round.phase.recordId} />;
  const next = nextUp(round);
  if (next.kind === 'rider') return <Next key={next.nickname} {...props} nickname={next.nickname} />;
  if (next.kind === 'done')
    return (
      <Told title={say('round-done')} line={say('round-doneSays')}>
        <Button
          strong
          look="button huge"
          data-picture
          onClick={() => onPlace(placeOfStage(session, 'picture'))}
        >
          {say('round-toPicture')}
        </Button>
      </Told>
    );
  if (next.kind === 'nobody')
    return (
      <Told title={say('round-nobody')} line={say('round-nobodySays')}>
        <Button strong look="button huge" onClick={props.onAdd}>
          {say('round-add')}
        </Button>
      </Told>
    );
  return (
    <Told title={say('round-waiting')} line="">
      <div class="buttons">
        {next.nicknames.map((nickname) => (
          <Button
            look="button huge"
            key={nickname}
            data-back={nickname}
            onClick={() => act({ kind: 'back', nickname })}
          >
            <AnimalPicture nickname={nickname} />
            {say('round-backWho', { name: nameOf(nickname) })}
          </Button>
        ))}
      </div>
    </Told>
  );
}

function Told(props: {
  readonly title: string;
  readonly line: string;
  readonly children: JSX.Element;
}): JSX.Element {
  return (
    <div class="now-words alone">
      <h2 class="now-name">{props.title}</h2>
      {props.line !== '' && <p class="now-line">{props.line}</p>}
      {props.children}
    </div>
  );
}

function Next(props: NowProps & { readonly nickname: string }): JSX.Element {
  const { nickname, session, act, ride, keep } = props;
  const { levels } = props.props;
  const name = nameOf(nickname);
  const start = startOf(session, nickname, props.props);
  const planned = start === null ? undefined : session.plan.rides[start.rideIndex];
  const title =
    planned === undefined ? say('round-noLevel') : (rideTitle(planned, levels) ?? say('round-noLevel'));
  const { attempts } = session.plan;
  const turn =
    start === null || attempts === 1 ? '' : say('round-turn', { attempt: start.attempt, all: attempts });
  return (
    <>
      <AnimalPicture nickname={nickname} />
      <div class="now-words">
        <p class="now-line">{say('round-next')}</p>
        <h2 class="now-name" data-next={nickname}>
          {name}
        </h2>
        <p class="now-line">{[title, turn].filter((part) => part !== '').join(' · ')}</p>
        {session.plan.riderId === 'by-feel' && (
          <Choice
            legend={say('round-feel')}
            name="feel"
            value={session.feels[nickname] ?? ''}
            options={RIDERS.map(({ id }) => [id, riderName(id)])}
            onChoose={(riderId) => keep({ ...session, feels: { ...session.feels, [nickname]: riderId } })}
          />
        )}
      </div>
      <div class="row now-buttons">
        <Button
          look="big-button"
          data-start
          disabled={start === null}
          aria-label={say('round-startFor', { name })}
          onClick={() => ride(nickname)}
        >
          <Icon name="go" />
          <strong>{say('round-start')}</strong>
        </Button>
        <Button
          data-skip
          disabled={session.round.line.length < 2}
          onClick={() => act({ kind: 'skip', nickname })}
        >
          {say('round-skip')}
        </Button>
        <Button data-later onClick={() => act({ kind: 'later', nickname })}>
          {say('round-later')}
        </Button>
      </div>
    </>
  );
}
