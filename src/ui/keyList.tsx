/** What the hands do, with the sign of each and its key; fingers have pads, and no keys are shown to them. */
import type { JSX } from 'preact';
import { KEY_ACTIONS, type Keys } from '../core/settings/settings.ts';
import { keyName, keyWords } from '../words/common.ts';
import { Sign } from './sign.tsx';

export function KeyList(props: {
  readonly keys: Keys;
  /** Of the bike; with one there is nothing to do at the front. */
  readonly twoShifters: boolean;
}): JSX.Element {
  const { keys, twoShifters } = props;
  const actions = KEY_ACTIONS.filter((action) => twoShifters || !action.startsWith('front-'));
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
