/**
 * Pieces every page is built from: icons, the head with its hills, papers, sentences in a list, the words on the card of a
 * way, dialogs, and what folds out.
 */
import { type ComponentChildren, createContext, type JSX } from 'preact';
import { useContext, useEffect, useId, useRef, useState } from 'preact/hooks';
import { Button } from './controls.tsx';
import { hashOf, type View } from '../state/address.ts';
import { HillStrip } from './pictures/profile.tsx';
import { common } from '../words/common.ts';
import type { Send, State } from '../state/store.ts';

const ICONS = {
  gear: 'M12 8.2a3.8 3.8 0 1 0 0 7.6 3.8 3.8 0 0 0 0-7.6ZM10.2 2h3.6l.6 2.6 1.9.8L18.6 4l2.5 2.5-1.5 2.3.8 1.900L23 11.300v3.500l-2.6.6-.8 1.9 1.4 2.2-2.5 2.5-2.2-1.4-1.9.8-.6 2.600h-3.600l-.6-2.6-1.9-.8-2.2 1.4-2.5-2.5 1.4-2.2-.8-1.900L1 14.800v-3.500l2.6-.6.8-1.900L3 6.5 5.5 4l2.2 1.4 1.9-.8Z',
  back: 'M14.5 4.5 7 12l7.5 7.5 2.2-2.200L11.4 12l5.3-5.300Z',
  go: 'M6 3.5 21 12 6 20.500Z',
  close:
    'M5.6 3.5 12 9.900l6.4-6.4 2.1 2.100L14.1 12l6.4 6.4-2.1 2.100L12 14.100l-6.4 6.4-2.1-2.100L9.9 12 3.5 5.600Z',
  ear: 'M6 9a6 6 0 0 1 12 0c0 3-1.600 4.500-3 6-1 1.100-1.200 2-1.600 3.400A4 4 0 0 1 5.800 18h2.400a1.700 1.700 0 0 0 3.200-.4c.500-1.700.900-2.900 2.200-4.300 1.300-1.400 2.200-2.300 2.200-4.300a4 4 0 0 0-8 0ZM9.200 9.500a2.800 2.800 0 0 1 5.600 0h-2a.8.8 0 0 0-1.600 0c0 1 1.200 1.300 1.200 2.900 0 1.500-1.100 2.400-2.400 2.400v-2c.3 0 .400-.2.400-.5 0-.8-1.200-1.200-1.200-2.800Z',
  done: 'M3 12.5 5.5 10l4.2 4.200L18.5 5 21 7.5 9.7 19.200Z',
} as const;

/** A small drawing in the colour of the text. */
export function Icon({ name }: { readonly name: keyof typeof ICONS }): JSX.Element {
  return (
    <svg class="icon" viewBox="0 0 24 24" aria-hidden="true">
      <path d={ICONS[name]} fill="currentColor" fill-rule="evenodd" />
    </svg>
  );
}

/** A link to a page. */
export function PageLink(props: {
  readonly to: View;
  readonly class?: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  return (
    <a class={props.class} href={hashOf({ view: props.to, rest: '' })}>
      {props.children}
    </a>
  );
}

/** Opens the settings; the app gives it. */
export const OpenSettings = createContext((): void => undefined);

/** The button that opens the settings, wherever one is. */
export function SettingsButton(): JSX.Element {
  const open = useContext(OpenSettings);
  const settings = common('nav-settings');
  return (
    <Button look="round" aria-label={settings} title={settings} onClick={open}>
      <Icon name="gear" />
    </Button>
  );
}

/** Where the head of a page leads back to, on pages that lie deeper; to the start page without it. */
export const BackWay = createContext<{ readonly href: string; readonly word: string } | null>(null);

/** What a person should know about what is kept, on every page below the start page; null where all is well. */
export const KeptNotice = createContext<string | null>(null);

/** A page below the start page: way back, title, a line, and its content on the ground. */
export function Sheet(props: {
  readonly title: ComponentChildren;
  readonly intro?: ComponentChildren;
  readonly children: ComponentChildren;
}): JSX.Element {
  const back = useContext(BackWay) ?? { href: hashOf({ view: 'start', rest: '' }), word: common('nav-home') };
  const notice = useContext(KeptNotice);
  return (
    <>
      <header class="sheet-head">
        <div class="sheet-bar">
          <a href={back.href} class="round with-word">
            <Icon name="back" />
            {back.word}
          </a>
          <SettingsButton />
        </div>
        <div class="sheet-title">
          <h1 tabIndex={-1}>{props.title}</h1>
          {props.intro !== undefined && <p>{props.intro}</p>}
        </div>
        <HillStrip />
      </header>
      <main class="sheet">
        {notice !== null && (
          <p class="paper kept-notice" role="note">
            {notice}
          </p>
        )}
        {props.children}
      </main>
    </>
  );
}

/** A modal dialog that is open as long as it is drawn; Esc and the cross close it. */
export function Dialog(props: {
  readonly title: string;
  readonly class?: string;
  readonly onClose?: () => void;
  readonly onKey?: (event: KeyboardEvent) => void;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { title, onClose, onKey, children } = props;
  // What had the focus gets it back: a dialog that is taken away, and not closed, leaves it on nothing.
  const before = useRef<Element | null>(null);
  const open = (element: HTMLDialogElement | null): void => {
    if (element === null || element.open) return;
    before.current = document.activeElement;
    try {
      element.showModal();
    } catch {
      // Open above the page, which can still be used: better than no dialog.
      element.setAttribute('open', '');
    }
  };
  useEffect(
    () => () => {
      const { current } = before;
      const isThere = current instanceof HTMLElement && current.isConnected && current !== document.body;
      (isThere ? current : document.querySelector<HTMLElement>('[data-takes-focus]'))?.focus();
    },
    [],
  );
  return (
    <dialog
      ref={open}
      class={`cut paper-dialog ${props.class ?? ''}`}
      aria-labelledby="dialog-title"
      onCancel={(event) => {
        // The state says whether a dialog is open, not the browser.
        event.preventDefault();
        onClose?.();
      }}
      onKeyDown={(event) => onKey?.(event)}
    >
      <div class="dialog-head">
        <h2 id="dialog-title">{title}</h2>
        {onClose !== undefined && (
          <Button look="round" aria-label={common('nav-close')} onClick={onClose}>
            <Icon name="close" />
          </Button>
        )}
      </div>
      {children}
    </dialog>
  );
}

/** What a page is given, for one that is drawn as an element and may keep a state of its own. */
export interface PageProps<Services> {
  readonly state: State;
  readonly send: Send;
  readonly services: Services;
}

/** A page: a function of the state that answers with what to draw, given what it may ask of the app. */
export type Page<Services = unknown> = (state: State, send: Send, services: Services) => JSX.Element;

/** The paper; `look` is another class of it, and every attribute of the element can be given (`data-…`). */
export function Paper(props: {
  readonly title: string;
  readonly look?: string;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { title, look, children, ...rest } = props;
  const id = useId();
  return (
    <section class={look === undefined ? 'paper' : `paper ${look}`} aria-labelledby={id} {...rest}>
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
}

/** Sentences below one another, each with its mark. */
export function Lines({ lines }: { readonly lines: readonly string[] }): JSX.Element {
  return (
    <ul>
      {lines.map((line, index) => (
        <li key={index}>{line}</li>
      ))}
    </ul>
  );
}

/** Where a card leads, and what waits there. */
export function WayWords({ title, hint }: { readonly title: string; readonly hint: string }): JSX.Element {
  return (
    <span class="way-words">
      <strong>{title}</strong> <span>{hint}</span>
    </span>
  );
}

/** Asks before something goes: keeping it is the easy answer, the other ones stand behind it. */
export function Question(props: {
  readonly title: string;
  readonly text: string;
  readonly keep: string;
  readonly onKeep: () => void;
  /** Leaving without an answer; keeps where nothing else is said. */
  readonly onClose?: () => void;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { title, text, keep, onKeep, onClose = onKeep, children } = props;
  return (
    <Dialog title={title} onClose={onClose}>
      <p>{text}</p>
      <div class="buttons">
        <Button strong autofocus onClick={onKeep}>
          {keep}
        </Button>
        {children}
      </div>
    </Dialog>
  );
}

type FoldAttributes = Omit<
  JSX.IntrinsicElements['details'],
  'class' | 'title' | 'open' | 'onToggle' | 'children'
>;

/** What folds out below its title. It is filled while it is open: a page is painted before its small print. */
export function Fold(
  props: FoldAttributes & {
    readonly look: string;
    readonly title: ComponentChildren;
    readonly children: () => ComponentChildren;
  },
): JSX.Element {
  const { look, title, children, ...rest } = props;
  const [open, setOpen] = useState(false);
  return (
    <details class={look} {...rest} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>{title}</summary>
      {open && children()}
    </details>
  );
}
