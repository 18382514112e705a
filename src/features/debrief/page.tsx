/** The debrief as a page of the game: gives the ride of the state to `DebriefPage` and its wishes to the store. */
import { offerFile } from '../../ui/file.ts';
import { DebriefPage } from './debrief.tsx';
import { Party } from './party.tsx';
import type { JSX } from 'preact';
import type { AfterRide, Kept } from '../../state/afterRide.ts';
import { placeOfRest } from '../../state/groupTurn.ts';
import { levelForButton } from '../../state/nextRide.ts';
import type { Page } from '../../ui/parts.tsx';
import { Sheet } from '../../ui/parts.tsx';
import { TRIAL } from '../../state/rideLevel.ts';
import { Patch } from '../../ui/pictures/patch.tsx';
import '../../ui/pictures/patches.css';
import type { Send, State } from '../../state/store.ts';
import { changedGear, earnsPatch } from '../../core/coach/patches.ts';
import { isAgain } from '../../core/recorded/againId.ts';
import type { Bike } from '../../core/model/types.ts';
import { outsideLines } from '../../words/cautions.ts';
import { words } from '../../words/words.ts';
import { bikeName, common, levelWords, patchName, riderName } from '../../words/common.ts';

const say = words('debrief');
const cautions = words('cautions');

export const debriefPage: Page = (state, send) => {
  const { last } = state;
  if (last === null) return <Sheet title={common('nav-debrief')}>{null}</Sheet>;
  const { title, lang } = levelWords(last.level, state.levels);
  const named = <span lang={lang}>{title}</span>;
  if (last.level.carries !== undefined)
    return (
      <Sheet title={named}>
        <Party {...{ state, last, send }}>{() => <Details {...{ state, last, send }} />}</Party>
      </Sheet>
    );
  return (
    <Sheet title={common('nav-debrief')} intro={named}>
      {last.rest === TRIAL && (
        <a class="button way-back" href="#bench/edit">
          {say('doing-backToBench')}
        </a>
      )}
      {isAgain(last.level.id) && (
        <a class="button way-back" href="#road">
          {say('doing-besideRoad')}
        </a>
      )}
      <NewPatch state={state} last={last} />
      <Details {...{ state, last, send }} />
    </Sheet>
  );
};

function Details(props: {
  readonly state: State;
  readonly last: AfterRide;
  readonly send: Send;
}): JSX.Element {
  const { state, last, send } = props;
  const { settings } = state;
  const { bike, rider } = last.recording;
  const next = levelForButton(state);
  const inGroup = placeOfRest(last.rest) !== null;
  return (
    <DebriefPage
      // Another ride is another page: cursor and zoom begin anew.
      key={last.recording.checkpoints.at(-1)}
      level={last.level}
      levelTitle={levelWords(last.level, state.levels).title}
      seed={last.recording.seed}
      bike={bike}
      rider={rider}
      trace={last.trace}
      reference={last.reference}
      report={last.report}
      share={last.share}
      same={last.same}
      units={settings.units}
      bikeName={bikeName(bike.id)}
      riderName={riderName(rider.id)}
      cautions={outsideLines(bike)}
      saved={savedWords(last.kept)}
      guess={last.guess}
      unfolded={last.unfolded}
      outside={outsideAfterFirst(state, bike)}
      {...(inGroup
        ? { nextLevelTitle: null, againLabel: say('doing-backToGroup') }
        : { nextLevelTitle: next?.title ?? null })}
      {...wishes(last, next?.id ?? null, send)}
    />
  );
}

/** Before somebody tries on a real bike what the first ride taught. */
function outsideAfterFirst(
  { results, unmarked }: State,
  bike: Bike,
): { title: string; sentences: readonly string[] } | null {
  if (results.length + unmarked.length > 1) return null;
  return { title: cautions('outside'), sentences: outsideLines(bike) };
}

/** A lesson of a children's level that was ridden to its end, and with a change of gear, for the first time. */
function NewPatch({ state, last }: { readonly state: State; readonly last: AfterRide }): JSX.Element | null {
  const { teaches, audience, id } = last.level;
  const earned = state.results.filter((one) => one.levelId === id && earnsPatch(one)).length;
  if (audience !== 'children' || teaches === 'check' || earned > 1 || !changedGear(last.trace)) return null;
  const name = patchName(teaches);
  return (
    <section class="patch-new" aria-live="polite">
      <Patch lesson={teaches} name={name} index={0} />
      <p>{say('freshPatch', { lesson: name })}</p>
    </section>
  );
}

function wishes(last: AfterRide, nextId: string | null, send: Send) {
  const { recording } = last;
  return {
    onGuess: (guess: NonNullable<AfterRide['guess']>) =>
      send({ kind: 'after-ride', recording, change: { guess } }),
    onUnfold: (unfolded: boolean) => send({ kind: 'after-ride', recording, change: { unfolded } }),
    onWatch: (fromM: number) => send({ kind: 'watch', fromM }),
    onRideAgain: () => send({ kind: 'ask-ride', rest: last.rest }),
    onNextLevel: () => send({ kind: 'ask-ride', rest: nextId ?? last.rest }),
    onPrint: () => window.print(),
    onSaveRide: () =>
      offerFile(
        new Blob([JSON.stringify(recording)], { type: 'application/json' }),
        `${last.level.id}.ride.json`,
      ),
    onSavePicture: (picture: Blob) => offerFile(picture, `${last.level.id}.png`),
  };
}

function savedWords(kept: Kept): { state: Kept['state']; sentence?: string } {
  if (kept.state === 'saving') return { state: 'saving' };
  if (kept.state === 'saved') return { state: 'saved' };
  const code = `notSaved-${kept.code}`;
  const why = say(say.has(code) ? code : 'notSaved-hangs');
  return { state: 'not-saved', sentence: kept.localBackup ? `${why} ${say('notSaved-localBackup')}` : why };
}
