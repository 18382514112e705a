/** The moments between two turns: a ride that is being marked, one that came to no end, one that is done. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { nextUp, type QueueAction, refusalOf } from '../../core/group/turnQueue.ts';
import { Dialog, Icon } from '../../ui/parts.tsx';
import { AnimalPicture } from './animal.tsx';
import { nameOf, rideRemark } from './say.ts';
import { startOf } from './session.ts';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicProps } from './services.ts';

/** What the parts of the page can ask for. */
export interface Doing {
  readonly props: ClinicProps;
  readonly session: SavedRound;
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
export function Marked({ nickname, props }: NowProps & { readonly nickname: string }): JSX.Element {
  const { words } = props;
  return (
    <>
      <AnimalPicture nickname={nickname} />
      <div class="now-words">
        <p class="now-line">{words.round.ridden(nameOf(nickname, words))}</p>
        <h2 class="now-remark" data-marking>
          {words.round.marking}
        </h2>
      </div>
    </>
  );
}

/** A ride was going on when the page was closed or left. */
export function Broken(props: NowProps & { readonly nickname: string }): JSX.Element {
  const { nickname, session, act } = props;
  const { words, onRide, marking } = props.props;
  const failed = marking?.failed === true && marking.planId === session.plan.id;
  const start = startOf(session, nickname, props.props);
  return (
    <>
      <AnimalPicture nickname={nickname} />
      <div class="now-words">
        <h2 class="now-name small">{words.round.riding(nameOf(nickname, words))}</h2>
        <p class="now-line">{failed ? words.round.notMarked : words.round.ridingSays}</p>
      </div>
      <div class="now-buttons">
        <Button
          look="big-button"
          data-again
          disabled={start === null}
          onClick={() => start !== null && onRide(start)}
        >
          <Icon name="go" />
          <strong>{words.round.rideAgain}</strong>
        </Button>
        <Button data-stop onClick={() => act({ kind: 'stop' })}>
          {words.round.notNow}
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
  const { words, format, saved, debriefOf, onDebrief } = props.props;
  const record = saved.records.find(({ id }) => id === recordId);
  const next = nextUp(session.round);
  return (
    <>
      <AnimalPicture nickname={nickname} />
      <div class="now-words">
        <p class="now-line">{words.round.ridden(nameOf(nickname, words))}</p>
        {record !== undefined && (
          <>
            <h2 class="now-remark" data-remark>
              {rideRemark(record, words, format)}
            </h2>
            <p class="now-total">
              {words.round.total} <b>{format.number(record.total)}</b>
            </p>
          </>
        )}
      </div>
      <div class="now-buttons">
        <Button look="big-button" data-next-rider onClick={() => act({ kind: 'next' })}>
          {next.kind === 'rider' ? <AnimalPicture nickname={next.nickname} /> : <Icon name="go" />}
          <span>
            <strong>{next.kind === 'rider' ? words.round.nextRider : words.round.goOn}</strong>
            {next.kind === 'rider' && <span class="big-button-level">{nameOf(next.nickname, words)}</span>}
          </span>
        </Button>
        {debriefOf === recordId && (
          <Button data-debrief onClick={onDebrief}>
            {words.round.debrief}
          </Button>
        )}
        {record !== undefined && takers(session, recordId).length > 0 && (
          <Button data-give onClick={onGive}>
            {words.round.give}
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
  const { words } = props.props;
  return (
    <Dialog title={words.round.giveTitle} onClose={onClose}>
      <p>{words.round.giveSays}</p>
      <div class="buttons give-list">
        {takers(session, recordId).map((nickname) => (
          <Button key={nickname} data-give-to={nickname} onClick={() => onGive(nickname)}>
            <AnimalPicture nickname={nickname} />
            {nameOf(nickname, words)}
          </Button>
        ))}
      </div>
      <div class="buttons">
        <Button strong autofocus onClick={onClose}>
          {words.round.giveKeep}
        </Button>
      </div>
    </Dialog>
  );
}

/** Asks before a ride is taken back. */
export function Undo(props: {
  readonly name: string;
  readonly words: ClinicProps['words'];
  readonly onClose: () => void;
  readonly onUndo: () => void;
}): JSX.Element {
  const { words } = props;
  return (
    <Dialog title={words.round.undo} onClose={props.onClose}>
      <p>{words.round.undoWho(props.name)}</p>
      <div class="buttons">
        <Button strong data-undo-sure onClick={props.onUndo}>
          {words.round.undo}
        </Button>
        <Button autofocus onClick={props.onClose}>
          {words.round.keep}
        </Button>
      </div>
    </Dialog>
  );
}
