/** The camera on a page: turned on by hand, so that the browser's question is expected; off when the page is left. */
import type { JSX, RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { words } from '../../words/words.ts';
import { type CameraProblem, openCamera, type CodeCamera } from './camera.ts';
import { Button } from '../../ui/controls.tsx';

const say = words('handover');

type Phase = 'off' | 'loading' | 'on' | 'no-reader' | CameraProblem;

interface UsedCamera {
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly phase: Phase;
  readonly start: () => void;
  readonly stop: () => void;
}

function useCamera(onRead: (text: string) => void): UsedCamera {
  const video = useRef<HTMLVideoElement>(null);
  const camera = useRef<CodeCamera | null>(null);
  const gone = useRef(false);
  const onText = useRef(onRead);
  onText.current = onRead;
  const [phase, setPhase] = useState<Phase>(() => (window.isSecureContext ? 'off' : 'not-secure'));
  const letGo = (): void => {
    camera.current?.stop();
    camera.current = null;
  };
  useEffect(() => {
    gone.current = false;
    return () => {
      gone.current = true;
      letGo();
    };
  }, []);
  const start = async (): Promise<void> => {
    setPhase('loading');
    try {
      const { decodeOneWay } = await import('./decode.ts');
      if (video.current === null) return;
      const opened = await openCamera(video.current, decodeOneWay, (text) => onText.current(text));
      if (typeof opened === 'string') return setPhase(opened);
      camera.current = opened;
      // The page was left while the browser asked.
      if (gone.current) return letGo();
      setPhase('on');
    } catch {
      setPhase('no-reader');
    }
  };
  return {
    video,
    phase,
    start: () => void start(),
    stop: () => {
      letGo();
      setPhase('off');
    },
  };
}

/** The camera. */
export function CameraBox(props: { readonly onText: (text: string) => void }): JSX.Element {
  const { video, phase, start, stop } = useCamera(props.onText);
  const problem = phase === 'off' || phase === 'loading' || phase === 'on' ? null : phase;
  return (
    <div class="reader-way" data-camera={phase}>
      <video
        ref={video}
        class="reader-video"
        muted
        playsInline
        hidden={phase !== 'on'}
        aria-label={say('reader-video')}
      />
      {phase === 'on' && <p>{say('reader-looking')}</p>}
      {phase === 'loading' && <output>{say('reader-loading')}</output>}
      {problem !== null && (
        <p class="reader-problem">
          {problem === 'no-reader' ? say('reader-noReader') : say(`camera-${problem}`)}
        </p>
      )}
      {phase === 'on' ? (
        <Button onClick={stop}>{say('reader-stop')}</Button>
      ) : (
        problem !== 'not-secure' && (
          <Button strong data-camera-on disabled={phase === 'loading'} onClick={start}>
            {say('reader-start')}
          </Button>
        )
      )}
    </div>
  );
}
