/** The keys and what they do, as a list to look at. */
import type { JSX } from 'preact';
import { KEY_ACTIONS, type Keys } from '../core/settings/settings.ts';
import { commonWords, keyName } from '../words/common.ts';

export function KeyList({ keys }: { readonly keys: Keys }): JSX.Element {
  return (
    <dl class="key-list">
      {KEY_ACTIONS.map((action) => (
        <div key={action}>
          <dt>
            {keys[action].map((code) => (
              <kbd key={code}>{keyName(code)}</kbd>
            ))}
          </dt>
          <dd>{commonWords.keys[action]}</dd>
        </div>
      ))}
    </dl>
  );
}
