/** What has to be put right before a level can be ridden, and what may surprise its rider: each with a way there. */
import type { JSX } from 'preact';
import { DoingButton } from './inputs.tsx';
import type { LevelWarning } from '../../core/level/lint.ts';
import type { Problem } from '../../core/level/problems.ts';
import { useFormat } from './say.ts';
import { Paper } from '../../ui/parts.tsx';
import { words } from '../../words/words.ts';
import { sentenceIn } from '../../words/problems.ts';

const say = words('bench');

export function Checks(props: {
  readonly problems: readonly Problem[];
  /** Null while they are being looked for. */
  readonly warnings: readonly LevelWarning[] | null;
  readonly onGo: (finding: Problem) => void;
  /** How to cut a stretch that cannot be ridden off the road; null where that cannot be done. */
  readonly trimOf: (finding: LevelWarning) => (() => void) | null;
}): JSX.Element {
  const { problems, warnings, onGo, trimOf } = props;
  return (
    <Paper title={say('check-title')} data-checks>
      <div aria-live="polite">
        {problems.length > 0 && <Findings title={say('check-cannotRide')} list={problems} onGo={onGo} />}
        {problems.length === 0 && warnings === null && <p>{say('check-working')}</p>}
        {problems.length === 0 && warnings?.length === 0 && <p>{say('check-good')}</p>}
        {problems.length === 0 && warnings !== null && warnings.length > 0 && (
          <Findings title={say('check-surprising')} list={warnings} onGo={onGo} trimOf={trimOf} />
        )}
      </div>
    </Paper>
  );
}

function Findings<Finding extends Problem>(props: {
  readonly title: string;
  readonly list: readonly Finding[];
  readonly onGo: (finding: Problem) => void;
  readonly trimOf?: (finding: Finding) => (() => void) | null;
}): JSX.Element {
  const trimFor = (finding: Finding): (() => void) | null =>
    finding.code === 'cannot-climb' ? (props.trimOf?.(finding) ?? null) : null;
  const sentenceOf = sentenceIn(useFormat());
  return (
    <>
      <p>{props.title}</p>
      <ul class="findings">
        {props.list.map((finding, index) => {
          const onTrim = trimFor(finding);
          return (
            <li key={`${index} ${finding.path}`} data-finding={finding.code}>
              <span>{sentenceOf(finding)}</span>
              <DoingButton
                doing={say('check-goThere')}
                what={sentenceOf(finding)}
                onClick={() => props.onGo(finding)}
              />
              {onTrim !== null && (
                <DoingButton
                  data-trim
                  doing={say('check-trim')}
                  what={sentenceOf(finding)}
                  onClick={onTrim}
                />
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
