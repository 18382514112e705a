/** The sign of what a hand does, for pages; `signs.ts` draws it. */
import type { JSX } from 'preact';
import type { KeyAction } from '../core/settings/settings.ts';
import { signPath } from './signs.ts';

export function Sign({ action }: { readonly action: KeyAction }): JSX.Element {
  return (
    <svg class="sign" viewBox="0 0 48 48" aria-hidden="true" data-sign={action}>
      <path d={signPath(action)} fill="currentColor" fill-rule="evenodd" />
    </svg>
  );
}
