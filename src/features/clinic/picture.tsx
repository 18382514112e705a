/**
 * The group picture, for a projector and for talking: one question at a time, the answer in big letters with a
 * drawing below. Nobody is named. For children the question comes first and the answer when it is asked for.
 */
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { GroupPicture } from '../../core/group/picture/group.ts';
import { RULES_VERSION } from '../../core/coach/rules.ts';
import { Button, Select, Tick } from '../../ui/controls.tsx';
import { ScrollBox } from '../../ui/tables.tsx';
import { Caught, Change, RideTable, TimingBoard } from './boards.tsx';
import {
  answerAfterTalk,
  BOARDS,
  type Board,
  detailOf,
  hasOwnRoads,
  headlineOf,
  type PictureView,
  viewOf,
} from './findings.ts';
import { GroupStrip } from './groupStrip.tsx';
import { courseOfRoad, ridesOf, ridesOn, titleOfRoad } from './session.ts';
import type { SavedRound } from '../../core/group/savedRound.ts';
import type { ClinicProps, InSession } from './services.ts';
import { words } from '../../words/words.ts';

const say = words('clinic');

export function GroupPicturePage({ props, session }: InSession): JSX.Element {
  const { picture } = props;
  const [open, setOpen] = useState(session.plan.shows !== 'own-marks');
  if (!open)
    return (
      <Note line={say('picture-closed')}>
        <Button data-open onClick={() => setOpen(true)}>
          {say('picture-open')}
        </Button>
      </Note>
    );
  if (picture === null)
    return <Note line={props.notCounted ? say('picture-failed') : say('picture-working')} />;
  if (picture.rides === 0)
    return (
      <Note
        line={
          props.apart.length > 0 ? say('picture-apart', { rides: props.apart.length }) : say('picture-none')
        }
      />
    );
  return <Boards {...{ props, session, picture }} />;
}

function Note(props: { readonly line: string; readonly children?: JSX.Element }): JSX.Element {
  return (
    <section class="paper board-note">
      <output>{props.line}</output>
      {props.children}
    </section>
  );
}

function Boards({ props, session, picture }: InSession & { readonly picture: GroupPicture }): JSX.Element {
  const [board, setBoard] = useState<Board>('where');
  const [roadIndex, setRoadIndex] = useState(0);
  const [talk, setTalk] = useState(false);
  const [shown, setShown] = useState(false);
  const boards = BOARDS.filter((one) => one !== 'table' || session.plan.shows === 'table');
  const view = viewOf(picture, roadIndex);
  const choose = (one: Board): void => {
    setBoard(one);
    setShown(false);
  };
  const closed = talk && !shown;
  const others = ridesOf(session, props.saved.records, props.apart).filter(
    ({ version }) => version !== RULES_VERSION,
  ).length;
  return (
    <section class="board-page" data-board={board} data-talk={talk}>
      <div class="row board-bar">
        <BoardTabs {...{ boards, board }} onChoose={choose} />
        {picture.roads.length > 1 && !hasOwnRoads(picture) && (
          <Select
            quiet
            look="road-select"
            label={say('picture-road')}
            value={String(roadIndex)}
            options={picture.roads.map((road, i) => [
              String(i),
              say('picture-roadName', { road: titleOfRoad(road, session, props), rides: road.rides }),
            ])}
            onChoose={(index) => setRoadIndex(Number(index))}
          />
        )}
        <Tick
          label={say('picture-talk')}
          checked={talk}
          onChange={(on) => {
            setTalk(on);
            setShown(false);
          }}
        />
      </div>
      <div class="paper board">
        <Head {...{ props, board, view, talk, closed }} onToggle={() => setShown(!shown)} />
        <ScrollBox class="board-body" label={say(`picture-boards-${board}`)}>
          <Body {...{ props, session, board, view, talk, closed }} />
        </ScrollBox>
        {others > 0 && !talk && (
          <p class="board-hint" data-other-version>
            {say('picture-otherVersion', { rides: others })}
          </p>
        )}
        {props.apart.length > 0 && !talk && (
          <p class="board-hint board-apart">{say('picture-apart', { rides: props.apart.length })}</p>
        )}
      </div>
    </section>
  );
}

interface BoardProps {
  readonly props: ClinicProps;
  readonly board: Board;
  readonly view: PictureView;
  readonly talk: boolean;
  readonly closed: boolean;
}

function Head(props: BoardProps & { readonly onToggle: () => void }): JSX.Element {
  const { board, view, talk, closed } = props;
  const { format } = props.props;
  const question = say(`picture-question-${board}`);
  const headline = talk ? answerAfterTalk(board, view) : headlineOf(board, view, format);
  const detail = talk || board !== 'where' ? null : detailOf(view, format);
  return (
    <div class="row board-head" aria-live="polite">
      {talk && !closed && <p class="board-question">{question}</p>}
      <h2>{closed ? question : headline}</h2>
      {detail !== null && <p class="board-detail">{detail}</p>}
      {!talk && (
        <p class="board-who">
          {say(board === 'table' ? 'report-rides' : 'picture-rides', {
            rides: view.rides,
            riders: view.riders,
          })}
        </p>
      )}
      {talk && closed && <p class="board-who">{say('picture-guess')}</p>}
      {talk && (
        <Button strong={closed} data-show onClick={props.onToggle}>
          {closed ? say('picture-show') : say('picture-hide')}
        </Button>
      )}
    </div>
  );
}

function Body(props: BoardProps & { readonly session: SavedRound }): JSX.Element | null {
  const { session, board, view, talk, closed } = props;
  const { format, saved, apart } = props.props;
  const { road } = view;
  if (board === 'table')
    return closed ? null : (
      <RideTable {...{ format, records: ridesOn(view, ridesOf(session, saved.records, apart)) }} />
    );
  if (board === 'timing') return <TimingBoard {...{ view, format, closed }} />;
  if (board === 'change') return closed ? null : <Change attempts={view.attempts} {...{ format, talk }} />;
  if (road === null) return null;
  if (board === 'caught' && !closed) return <Caught {...{ road, talk }} />;
  if (road.strip === null) return <p class="board-missing">{say('picture-noLines')}</p>;
  const course = courseOfRoad(road, session, props.props);
  if (course === null) return null;
  return <GroupStrip {...{ course, road, format }} tracks={closed ? 'road' : 'taken'} hills={talk} />;
}

function BoardTabs(props: {
  readonly boards: readonly Board[];
  readonly board: Board;
  readonly onChoose: (board: Board) => void;
}): JSX.Element {
  const { boards, board, onChoose } = props;
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    const to = boards[boards.indexOf(board) + step];
    if (step === 0 || to === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    onChoose(to);
    const button = event.currentTarget instanceof HTMLElement ? event.currentTarget : null;
    button?.parentElement?.querySelector<HTMLElement>(`[data-choose='${to}']`)?.focus();
  };
  return (
    <div class="wrap board-tabs" role="tablist" aria-label={say('picture-label')}>
      {boards.map((one) => (
        <button
          key={one}
          type="button"
          role="tab"
          aria-selected={one === board}
          tabIndex={one === board ? 0 : -1}
          data-choose={one}
          onKeyDown={onKeyDown}
          onClick={() => onChoose(one)}
        >
          {say(`picture-boards-${one}`)}
        </button>
      ))}
    </div>
  );
}
