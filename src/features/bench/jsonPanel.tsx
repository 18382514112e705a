/**
 * The level as text beside the form, both ways. Text that is no level stays in its box with its problems, each with
 * its line; the level on the bench is only changed by good text.
 */
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Button } from '../../ui/controls.tsx';
import { Fold } from '../../ui/parts.tsx';
import type { Level } from '../../core/level/schema.ts';
import { levelFromJson, levelToJson, type PlacedProblem } from './jsonText.ts';
import { createFormat } from '../../words/format.ts';
import { words } from '../../words/words.ts';
import { sentenceIn } from '../../words/problems.ts';

const say = words('bench');

/** Typing rests for so long before the text is read (ms). */
const REST_MS = 250;

let typings = 0;

export function JsonPanel(props: BoxProps): JSX.Element {
  return (
    <Fold look="paper fold" data-json title={<h2>{say('json-title')}</h2>}>
      {() => <JsonBox {...props} />}
    </Fold>
  );
}

interface BoxProps {
  readonly level: Level;
  readonly onLevel: (level: Level, gesture: string) => void;
}

function JsonBox(props: BoxProps): JSX.Element {
  const { text, problems, unread, begin, type } = useLevelText(props);
  // The text itself is in metres.
  const sentenceOf = sentenceIn(createFormat('metric'));
  const box = useRef<HTMLTextAreaElement | null>(null);
  return (
    <>
      <p>{say('json-intro')}</p>
      <textarea
        ref={box}
        class="json-box"
        aria-label={say('json-field')}
        aria-invalid={problems.length > 0}
        data-unread={unread ? '' : undefined}
        spellcheck={false}
        wrap="off"
        rows={18}
        value={text}
        onFocus={begin}
        onInput={({ currentTarget }) => type(currentTarget.value)}
      />
      <div aria-live="polite">
        <p>{problems.length === 0 ? say('json-good') : say('json-bad')}</p>
        <ul class="findings">
          {problems.map((problem, index) => (
            <li key={index} data-json-problem={problem.line}>
              <span>
                {problem.path !== '' && <code>{problem.path}</code>} {sentenceOf(problem)}
              </span>
              <Button
                look="small-button"
                onClick={() => box.current !== null && goToLine(box.current, problem.line)}
              >
                {say('json-line', { line: String(problem.line) })}
              </Button>
            </li>
          ))}
        </ul>
      </div>
    </>
  );
}

/** The text of a level that follows the level, and is followed by it as soon as it is good. */
function useLevelText({ level, onLevel }: BoxProps) {
  const [text, setText] = useState(() => levelToJson(level));
  const [problems, setProblems] = useState<readonly PlacedProblem[]>([]);
  const [waiting, setWaiting] = useState(false);
  const gesture = useRef('');
  /** The level that was made of the text; any other comes from elsewhere and is written anew. */
  const mine = useRef(level);
  const timer = useRef(0);
  useEffect(() => {
    if (level === mine.current) return;
    mine.current = level;
    clearTimeout(timer.current);
    setText(levelToJson(level));
    setProblems([]);
    setWaiting(false);
  }, [level]);
  useEffect(() => () => clearTimeout(timer.current), []);
  const read = (typed: string): void => {
    const result = levelFromJson(typed);
    setWaiting(false);
    setProblems(result.ok ? [] : result.problems);
    if (!result.ok) return;
    mine.current = result.level;
    onLevel(result.level, gesture.current);
  };
  const begin = (): void => {
    typings += 1;
    gesture.current = `text ${typings}`;
  };
  const type = (value: string): void => {
    setText(value);
    setWaiting(true);
    clearTimeout(timer.current);
    timer.current = window.setTimeout(() => read(value), REST_MS);
  };
  return { text, problems, unread: waiting || problems.length > 0, begin, type } as const;
}

/** Selects a line and scrolls it into the middle of the box. */
function goToLine(box: HTMLTextAreaElement, line: number): void {
  const lines = box.value.split('\n');
  const start = lines.slice(0, line - 1).reduce((sum, one) => sum + one.length + 1, 0);
  box.focus();
  box.setSelectionRange(start, start + (lines[line - 1]?.length ?? 0));
  const lineHeight = box.scrollHeight / lines.length;
  box.scrollTop = Math.max(0, (line - 1) * lineHeight - box.clientHeight / 2);
}
