/**
 * Codes on the screen, one after another: which one it is, pause, back and forth, how fast, and big. Black on white
 * in every theme, because cameras want it so.
 */
import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { Button, Choice } from '../../ui/controls.tsx';
import { CodePicture } from '../../ui/pictures/codePicture.tsx';
import { common } from '../../words/common.ts';
import { words } from '../../words/words.ts';

const say = words('handover');

/** How long each code stands (ms). A camera needs about half a second in good light. */
const PERIODS_MS = { slow: 2_400, usual: 1_200, fast: 600 } as const;
type Speed = keyof typeof PERIODS_MS;
const SPEEDS = Object.keys(PERIODS_MS) as Speed[];
/** More codes than this get no button each. */
const MOST_BUTTONS = 40;

interface CodeShowProps {
  readonly frames: readonly string[];
  /** What the codes carry, for those who cannot see them. */
  readonly name: string;
}

export function CodeShow({ frames, name }: CodeShowProps): JSX.Element {
  const [place, setPlace] = useState({ frames, at: 0 });
  const [playing, setPlaying] = useState(() => !wantsStillness());
  const [speed, setSpeed] = useState<Speed>('usual');
  const [big, setBig] = useState(false);
  const all = frames.length;
  // Other codes begin at their first one.
  const index = place.frames === frames ? Math.min(place.at, all - 1) : 0;
  useEffect(() => {
    if (!playing || all < 2) return undefined;
    const timer = window.setInterval(() => {
      setPlace((now) => ({ frames, at: now.frames === frames ? (now.at + 1) % all : 0 }));
    }, PERIODS_MS[speed]);
    return () => window.clearInterval(timer);
  }, [playing, speed, all, frames]);
  const go = (to: number): void => {
    setPlaying(false);
    setPlace({ frames, at: (to + all) % all });
  };
  const picture = (
    <CodePicture
      look="code"
      text={frames[index] ?? ''}
      label={say('code-picture', { what: name, number: index + 1, all })}
    />
  );
  const buttons = (
    <Buttons
      {...{ all, index, playing, go }}
      onPlay={() => setPlaying(!playing)}
      onBig={big ? null : () => setBig(true)}
    />
  );
  return (
    <div class="code-show" data-code={index + 1} data-codes={all}>
      {picture}
      {buttons}
      {all > 1 && !big && (
        <>
          <Choice
            legend={say('code-speed')}
            name="code-speed"
            value={speed}
            options={SPEEDS.map((one) => [one, say(`code-speed-${one}`)] as const)}
            onChoose={setSpeed}
          />
          <Numbers {...{ all, index, go }} />
          <p class="hint">{say('code-hint')}</p>
        </>
      )}
      {big && (
        <Big label={name} onClose={() => setBig(false)}>
          {picture}
          {buttons}
        </Big>
      )}
    </div>
  );
}

function Buttons(props: {
  readonly all: number;
  readonly index: number;
  readonly playing: boolean;
  readonly go: (to: number) => void;
  readonly onPlay: () => void;
  readonly onBig: (() => void) | null;
}): JSX.Element {
  const { all, index, playing, go } = props;
  return (
    <div class="row code-buttons">
      {all > 1 && (
        <>
          <strong class="code-number">{say('code-number', { number: index + 1, all })}</strong>
          <Button aria-label={say('code-back')} onClick={() => go(index - 1)}>
            ←
          </Button>
          <Button data-play onClick={props.onPlay}>
            {playing ? say('code-pause') : say('code-play')}
          </Button>
          <Button aria-label={say('code-next')} onClick={() => go(index + 1)}>
            →
          </Button>
        </>
      )}
      {props.onBig !== null && (
        <Button data-big onClick={props.onBig}>
          {say('code-big')}
        </Button>
      )}
    </div>
  );
}

/** Straight to a number, for the one that is missing. */
function Numbers(props: {
  readonly all: number;
  readonly index: number;
  readonly go: (to: number) => void;
}): JSX.Element | null {
  const { all, index, go } = props;
  if (all > MOST_BUTTONS) return null;
  return (
    <div class="wrap code-numbers">
      {Array.from({ length: all }, (_, i) => (
        <Button
          key={i}
          look="pick"
          aria-label={say('code-jump', { number: i + 1 })}
          aria-current={i === index ? 'true' : undefined}
          onClick={() => go(i)}
        >
          {i + 1}
        </Button>
      ))}
    </div>
  );
}

/** The code on the whole screen. */
function Big(props: {
  readonly label: string;
  readonly onClose: () => void;
  readonly children: readonly JSX.Element[];
}): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (dialog.current?.open === false) dialog.current.showModal();
  }, []);
  return (
    <dialog
      ref={dialog}
      class="code-big"
      aria-label={props.label}
      onCancel={(event) => {
        event.preventDefault();
        props.onClose();
      }}
    >
      {props.children}
      <Button look="button code-close" onClick={props.onClose}>
        {common('nav-close')}
      </Button>
    </dialog>
  );
}

/** A sequence that begins by itself is movement; who wants less of it begins it by hand. */
function wantsStillness(): boolean {
  return document.documentElement.dataset['motion'] === 'reduced';
}
