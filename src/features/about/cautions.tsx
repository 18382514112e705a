/** What is said once before the very first ride; the tap that confirms it also begins the ride. */
import type { JSX } from 'preact';
import { Button } from '../../ui/controls.tsx';
import { Dialog, Icon, Lines } from '../../ui/parts.tsx';
import type { Bike } from '../../core/model/types.ts';
import type { Send } from '../../state/store.ts';
import { outsideLines } from '../../words/cautions.ts';
import { words } from '../../words/words.ts';

const say = words('cautions');

export function Cautions({ bike, send }: { readonly bike: Bike; readonly send: Send }): JSX.Element {
  return (
    <Dialog title={say('title')} class="cautions" onClose={() => send({ kind: 'close-dialog' })}>
      <div class="buttons">
        <Button
          strong
          data-accept
          autofocus
          // The focus passes over the title; with the button its sentence is heard.
          aria-describedby="dialog-title"
          onClick={() => send({ kind: 'accept-cautions' })}
        >
          <Icon name="go" />
          {say('accept')}
        </Button>
      </div>
      <details>
        <summary>{say('more')}</summary>
        <Lines lines={outsideLines(bike)} />
        <a href="#about" onClick={() => send({ kind: 'close-dialog' })}>
          {say('all')}
        </a>
      </details>
    </Dialog>
  );
}
