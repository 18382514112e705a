/** What the hands do, with the sign of each and its key; fingers have pads, and no keys are shown to them. */
import type { JSX } from 'preact';
import { KEY_ACTIONS, type KeyAction, type Keys } from '../core/settings/settings.ts';
import { keyName, keyWords } from '../words/common.ts';
import { Sign } from './sign.tsx';

const FEW: readonly KeyAction[] = ['rear-easier', 'rear-harder', 'pause'];

export function KeyList(props: {
  readonly keys: Keys;
  /** Of the bike; with one there is nothing to do at the front. */
  readonly twoShifters: boolean;
  /** On a road for play: the gears and the pause are all there is. */
  readonly few?: boolean;
}): JSX.Element {
  const { keys, twoShifters, few = false } = props;
  const actions = few ? FEW : KEY_ACTIONS.filter((action) => twoShifters || !action.startsWith('front-'));
  return (
    <dl class="key-list with-signs">
      {actions.map((action) => (
        <div key={action}>
          <dt>
            <Sign action={action} />
            {keys[action].map((code) => (
              <kbd key={code}>{keyName(code)}</kbd>
            ))}
          </dt>
          <dd>{keyWords(action)}</dd>
        </div>
      ))}
    </dl>
  );
}
