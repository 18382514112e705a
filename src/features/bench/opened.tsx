/** A level that came by link or file, shown before it is kept: what it is, and what can be done with it. */
import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { courseOfLevel, levelHash } from '../../core/level/build.ts';
import { ascentM } from '../../core/gpx/smooth.ts';
import type { ParseResult } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { useAnswer } from '../../ui/hooks.ts';
import { Profile } from '../../ui/pictures/profile.tsx';
import type { Send } from '../../state/store.ts';
import { levelEditor } from './levelEditor.ts';
import { copyOf } from './fresh.ts';
import { notKept, useFormat, useTold } from './say.ts';
import { levelOfText } from './shareLink.ts';
import { FactList } from './roadFacts.tsx';
import type { BenchServices } from './services.ts';
import { sentenceIn } from '../../words/problems.ts';
import { words } from '../../words/words.ts';
import { common, lessonName } from '../../words/common.ts';
import { Button } from '../../ui/controls.tsx';

const say = words('bench');

interface OpenedProps {
  readonly ownLevels: readonly Level[];
  readonly services: BenchServices;
  readonly send: Send;
  readonly onLeave: () => void;
}

/** Unpacks the text of a link, then shows the level or says why there is none. */
export function OpenedLink(props: OpenedProps & { readonly text: string }): JSX.Element {
  const { text } = props;
  const result = useAnswer(() => levelOfText(text), [text]);
  if (result === 'waiting') return <p>{say('opened-reading')}</p>;
  if (result === null || result === 'failed')
    return <Refused lines={[{ path: '', sentence: say('opened-no') }]} onLeave={props.onLeave} />;
  return <Opened {...props} result={result} />;
}

/** A level to be kept or left, or the reasons why it cannot be opened. */
export function Opened(props: OpenedProps & { readonly result: ParseResult }): JSX.Element {
  const { result, onLeave } = props;
  const sentenceOf = sentenceIn(useFormat());
  if (result.ok) return <Shown {...props} level={result.level} />;
  const lines = result.problems.map((problem) => ({ path: problem.path, sentence: sentenceOf(problem) }));
  return <Refused lines={lines} onLeave={onLeave} />;
}

function Refused(props: {
  readonly lines: readonly { readonly path: string; readonly sentence: string }[];
  readonly onLeave: () => void;
}): JSX.Element {
  return (
    <section class="paper" data-opened="refused">
      <h2>{say('opened-badTitle')}</h2>
      <ul class="findings">
        {props.lines.map(({ path, sentence }, index) => (
          <li key={index}>
            <span>
              {path !== '' && <code>{path}</code>} {sentence}
            </span>
          </li>
        ))}
      </ul>
      <div class="buttons">
        <Button onClick={props.onLeave}>{say('opened-leave')}</Button>
      </div>
    </section>
  );
}

function Shown(props: OpenedProps & { readonly level: Level }): JSX.Element {
  const { level, ownLevels, services, send, onLeave } = props;
  const hash = useMemo(() => levelHash(level), [level]);
  const same = ownLevels.find((own) => own.seed === level.seed && levelHash(own) === hash);
  const [told, tell] = useTold();
  const keep = async (): Promise<void> => {
    const mine = copyOf(level, level.title);
    const answer = await services.keep(mine);
    if (!answer.saved) return tell(() => notKept(answer.code));
    levelEditor.open(mine, true);
    send({ kind: 'address', address: { view: 'bench', rest: 'edit' } });
  };
  return (
    <section class="paper opened" data-opened="level">
      <h2 lang={level.lang}>{level.title}</h2>
      <p lang={level.lang}>{level.sentence}</p>
      <p class="quiet">{say('opened-intro')}</p>
      <LevelFacts level={level} hash={hash} />
      {same !== undefined && <p data-already>{say('opened-already', { title: same.title })}</p>}
      <div class="buttons">
        <Button strong data-keep onClick={() => void keep()}>
          {same === undefined ? say('opened-keep') : say('opened-keepCopy')}
        </Button>
        <Button data-ride-opened onClick={() => send({ kind: 'try-level', level })}>
          {say('opened-ride')}
        </Button>
        <Button onClick={onLeave}>{say('opened-leave')}</Button>
      </div>
      <output class="told">{told}</output>
    </section>
  );
}

/** Profile and numbers of a level. */
function LevelFacts({ level, hash }: { readonly level: Level; readonly hash: string }): JSX.Element {
  const course = useMemo(() => courseOfLevel(level), [level]);
  const format = useFormat();
  const steepest = course.slopeRatio.reduce((a, b) => Math.max(a, b), 0);
  const facts: readonly (readonly [string, string])[] = [
    [say('edit-lesson'), lessonName(level.teaches)],
    [say('field-lengthM'), format.road(course.lengthM)],
    [say('opened-climbed'), format.distance(ascentM(course.heightM))],
    [say('field-steepest'), format.percent(steepest)],
    [say('field-pitchCount'), format.number(course.pitches.length)],
    [say('opened-fingerprint'), hash],
  ];
  return (
    <>
      <Profile course={course} label={common('profile', { steepest: format.percent(steepest) })} />
      <FactList facts={facts} />
    </>
  );
}
