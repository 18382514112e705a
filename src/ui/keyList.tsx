/** What the hands do, with the sign of each and its key; fingers have pads, and no keys are shown to them. */
import type { JSX } from 'preact';
import { KEY_ACTIONS, type KeyAction, type Keys } from '../core/settings/settings.ts';
import { keyName, keyWords } from '../words/common.ts';
import { signPath } from './signs.ts';

const FEW: readonly KeyAction[] = ['rear-easier', 'rear-harder', 'pause'];

/** Where there is one lever, nothing has to be told from another. */
function nameOf(action: KeyAction, isOnly: boolean): string {
  const name = `only-${action}`;
  return keyWords(isOnly && keyWords.has(name) ? name : action);
}

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
          <dd>{nameOf(action, few)}</dd>
        </div>
      ))}
    </dl>
  );
}

/** The sign of what a hand does, for pages; `signs.ts` draws it. */
export function Sign({ action }: { readonly action: KeyAction }): JSX.Element {
  return (
    <svg class="sign" viewBox="0 0 48 48" aria-hidden="true" data-sign={action}>
      <path d={signPath(action)} fill="currentColor" fill-rule="evenodd" />
    </svg>
  );
}
