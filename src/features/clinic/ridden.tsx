/** The moments between two turns: a ride that is being marked, one that came to no end, one that is done. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { nextUp, type QueueAction, refusalOf } from '../../core/group/turnQueue.ts';
import { Dialog, Icon } from '../../ui/parts.tsx';
import { AnimalPicture } from './animal.tsx';
import { rideRemark } from './say.ts';
import { startOf } from './session.ts';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { InSession } from './services.ts';
import { nameOf } from '../../words/group.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

/** What the parts of the page can ask for. */
export interface Doing extends InSession {
  readonly act: (action: QueueAction) => void;
  readonly ride: (nickname: string) => void;
}

/** The same, for what stands in the middle of the page. */
export type NowProps = Doing & {
  readonly keep: (to: SavedRound) => void;
  readonly onAdd: () => void;
  /** Asks who really rode. */
  readonly onGive: () => void;
};

/** What was ridden is being marked; usually only as long as a few breaths. */
export function Marked({ nickname }: { readonly nickname: string }): JSX.Element {
  return (
    <>
      <AnimalPicture nickname={nickname} />
      <div class="now-words">
        <p class="now-line">{say('round-ridden', { name: nameOf(nickname) })}</p>
        <h2 class="now-remark" data-marking>
          {say('round-marking')}
        </h2>
      </div>
    </>
  );
}

/** A ride was going on when the page was closed or left. */
export function Broken(props: NowProps & { readonly nickname: string }): JSX.Element {
  const { nickname, session, act, ride } = props;
  const { marking } = props.props;
  const failed = marking?.failed === true && marking.planId === session.plan.id;
  const start = startOf(session, nickname, props.props);
  return (
    <>
      <AnimalPicture nickname={nickname} />
      <div class="now-words">
        <h2 class="now-name small">{say('round-riding', { name: nameOf(nickname) })}</h2>
        <p class="now-line">{failed ? say('round-notMarked') : say('round-ridingSays')}</p>
      </div>
      <div class="row now-buttons">
        <Button look="big-button" data-again disabled={start === null} onClick={() => ride(nickname)}>
          <Icon name="go" />
          <strong>{say('round-rideAgain')}</strong>
        </Button>
        <Button data-stop onClick={() => act({ kind: 'stop' })}>
          {say('round-notNow')}
        </Button>
      </div>
    </>
  );
}

/** After a ride: one line, and who is next. */
export function Ridden(
  props: NowProps & { readonly nickname: string; readonly recordId: string },
): JSX.Element {
  const { nickname, recordId, session, act, onGive } = props;
  const { format, saved, debriefOf, onDebrief } = props.props;
  const record = saved.records.find(({ id }) => id === recordId);
  const next = nextUp(session.round);
  return (
    <>
      <AnimalPicture nickname={nickname} />
      <div class="now-words">
        <p class="now-line">{say('round-ridden', { name: nameOf(nickname) })}</p>
        {record !== undefined && (
          <>
            <h2 class="now-remark" data-remark>
              {rideRemark(record, format)}
            </h2>
            <p class="now-total">
              {say('round-total')} <b>{format.number(record.total)}</b>
            </p>
          </>
        )}
      </div>
      <div class="row now-buttons">
        <Button look="big-button" data-next-rider onClick={() => act({ kind: 'next' })}>
          {next.kind === 'rider' ? <AnimalPicture nickname={next.nickname} /> : <Icon name="go" />}
          <span>
            <strong>{next.kind === 'rider' ? say('round-nextRider') : say('round-goOn')}</strong>
            {next.kind === 'rider' && <span class="big-button-level">{nameOf(next.nickname)}</span>}
          </span>
        </Button>
        {debriefOf === recordId && (
          <Button data-debrief onClick={onDebrief}>
            {say('round-debrief')}
          </Button>
        )}
        {record !== undefined && takers(session, recordId).length > 0 && (
          <Button data-give onClick={onGive}>
            {say('round-give')}
          </Button>
        )}
      </div>
    </>
  );
}

/** Riders who may have ridden the ride that was just finished. */
function takers({ round }: SavedRound, recordId: string): readonly string[] {
  const fresh = `${recordId}-given`;
  return round.line.filter(
    (nickname) => refusalOf(round, { kind: 'give', nickname, recordId: fresh }) === null,
  );
}

/** Asks who rode: a wrong animal was tapped. */
export function Give(
  props: Doing & {
    readonly recordId: string;
    readonly onClose: () => void;
    readonly onGive: (nickname: string) => void;
  },
): JSX.Element {
  const { session, recordId, onClose, onGive } = props;
  return (
    <Dialog title={say('round-giveTitle')} onClose={onClose}>
      <p>{say('round-giveSays')}</p>
      <div class="buttons">
        <Button strong autofocus onClick={onClose}>
          {say('round-giveKeep')}
        </Button>
      </div>
      <div class="give-list">
        {takers(session, recordId).map((nickname) => (
          <Button key={nickname} data-give-to={nickname} onClick={() => onGive(nickname)}>
            <AnimalPicture nickname={nickname} />
            {nameOf(nickname)}
          </Button>
        ))}
      </div>
    </Dialog>
  );
}

/** Asks before a ride is taken back. */
export function Undo(props: {
  readonly name: string;
  readonly onClose: () => void;
  readonly onUndo: () => void;
}): JSX.Element {
  return (
    <Dialog title={say('round-undo')} onClose={props.onClose}>
      <p>{say('round-undoWho', { name: props.name })}</p>
      <div class="buttons">
        <Button strong data-undo-sure onClick={props.onUndo}>
          {say('round-undo')}
        </Button>
        <Button autofocus onClick={props.onClose}>
          {say('round-keep')}
        </Button>
      </div>
    </Dialog>
  );
}
