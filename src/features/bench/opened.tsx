/** A level that came by link or file, shown before it is kept: what it is, and what can be done with it. */
import type { JSX } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import { courseOfLevel, levelHash } from '../../core/level/build.ts';
import { ascentM } from '../../core/gpx/smooth.ts';
import type { ParseResult } from '../../core/level/parse.ts';
import type { Level } from '../../core/level/schema.ts';
import { Profile } from '../../ui/pictures/profile.tsx';
import type { Send } from '../../state/store.ts';
import { benchWords } from './words.ts';
import { levelEditor } from './levelEditor.ts';
import { copyOf } from './fresh.ts';
import { metric } from './say.ts';
import { levelOfText } from './shareLink.ts';
import type { BenchServices } from './services.ts';
import { sentenceOf } from '../../words/problems.ts';
import { common } from '../../words/common.ts';

interface OpenedProps {
  readonly ownLevels: readonly Level[];
  readonly services: BenchServices;
  readonly send: Send;
  readonly onLeave: () => void;
}

/** Unpacks the text of a link, then shows the level or says why there is none. */
export function OpenedLink(props: OpenedProps & { readonly text: string }): JSX.Element {
  const { text } = props;
  const [result, setResult] = useState<ParseResult | null | 'unpacking'>('unpacking');
  useEffect(() => {
    let wanted = true;
    setResult('unpacking');
    void levelOfText(text).then((opened) => wanted && setResult(opened));
    return () => {
      wanted = false;
    };
  }, [text]);
  if (result === 'unpacking') return <p class="on-ground">{benchWords.opened.reading}</p>;
  if (result === null)
    return <Refused lines={[{ path: '', sentence: benchWords.opened.no }]} onLeave={props.onLeave} />;
  return <Opened {...props} result={result} />;
}

/** A level to be kept or left, or the reasons why it cannot be opened. */
export function Opened(props: OpenedProps & { readonly result: ParseResult }): JSX.Element {
  const { result, onLeave } = props;
  if (result.ok) return <Shown {...props} level={result.level} />;
  const lines = result.problems.map((problem) => ({ path: problem.path, sentence: sentenceOf(problem) }));
  return <Refused lines={lines} onLeave={onLeave} />;
}

function Refused(props: {
  readonly lines: readonly { readonly path: string; readonly sentence: string }[];
  readonly onLeave: () => void;
}): JSX.Element {
  const say = benchWords.opened;
  return (
    <section class="paper" data-opened="refused">
      <h2>{say.badTitle}</h2>
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
        <button type="button" class="button" onClick={props.onLeave}>
          {say.leave}
        </button>
      </div>
    </section>
  );
}

function Shown(props: OpenedProps & { readonly level: Level }): JSX.Element {
  const { level, ownLevels, services, send, onLeave } = props;
  const say = benchWords.opened;
  const hash = useMemo(() => levelHash(level), [level]);
  const same = ownLevels.find((own) => own.seed === level.seed && levelHash(own) === hash);
  const [told, setTold] = useState('');
  const keep = async (): Promise<void> => {
    const mine = copyOf(level, level.title);
    const answer = await services.keep(mine);
    if (!answer.saved) return setTold(benchWords.keep.codes[answer.code] ?? benchWords.keep.failed);
    levelEditor.open(mine, true);
    send({ kind: 'address', address: { view: 'bench', rest: 'edit' } });
  };
  return (
    <section class="paper opened" data-opened="level">
      <h2>{level.title}</h2>
      <p>{level.sentence}</p>
      <p class="quiet">{say.intro}</p>
      <LevelFacts level={level} hash={hash} />
      {same !== undefined && <p data-already>{say.already(same.title)}</p>}
      <div class="buttons">
        <button type="button" class="button strong" data-keep onClick={() => void keep()}>
          {same === undefined ? say.keep : say.keepCopy}
        </button>
        <button
          type="button"
          class="button"
          data-ride-opened
          onClick={() => send({ kind: 'try-level', level })}
        >
          {say.ride}
        </button>
        <button type="button" class="button" onClick={onLeave}>
          {say.leave}
        </button>
      </div>
      <output class="told">{told}</output>
    </section>
  );
}

/** Profile and numbers of a level. */
function LevelFacts({ level, hash }: { readonly level: Level; readonly hash: string }): JSX.Element {
  const course = useMemo(() => courseOfLevel(level), [level]);
  const steepest = course.slopeRatio.reduce((a, b) => Math.max(a, b), 0);
  const say = benchWords.opened;
  const facts: readonly (readonly [string, string])[] = [
    [benchWords.edit.lesson, common(`lesson-${level.teaches}`)],
    [say.length, metric.road(course.lengthM)],
    [say.climbed, metric.distance(ascentM(course.heightM))],
    [say.steepest, metric.percent(steepest)],
    [say.pitches, metric.number(course.pitches.length)],
    [say.fingerprint, hash],
  ];
  return (
    <>
      <Profile course={course} label={common('profile', { steepest: metric.percent(steepest) })} />
      <dl class="facts">
        {facts.map(([name, value]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </>
  );
}
