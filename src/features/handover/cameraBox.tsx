/** The camera on a page: turned on by hand, so that the browser's question is expected; off when the page is left. */
import type { JSX, RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { words } from '../../words/words.ts';
import { Button } from '../../ui/controls.tsx';
import type { CameraPicture } from './decode.ts';

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

/** Why there is no camera. */
type CameraProblem = 'not-secure' | 'refused' | 'none' | 'in-use';

/** A camera that is on. */
interface CodeCamera {
  readonly stop: () => void;
}

/** A picture is made this wide at most (pixels); finer ones only take longer. */
const WIDEST = 960;
/** Between two pictures (ms), so that the page stays quick. */
const PAUSE_MS = 60;

/** Looks at one picture in the way whose turn it is. */
type Look = (picture: CameraPicture, way: number) => string | null;

/**
 * Turns the camera on: one picture after another is looked at and thrown away, none is kept or sent. The video element
 * shows what it sees.
 */
async function openCamera(
  video: HTMLVideoElement,
  look: Look,
  onText: (text: string) => void,
): Promise<CodeCamera | CameraProblem> {
  if (!window.isSecureContext || navigator.mediaDevices === undefined) return 'not-secure';
  let stream: MediaStream;
  try {
    stream = await navigator.mediaDevices.getUserMedia({
      audio: false,
      video: { facingMode: 'environment', width: { ideal: 1280 }, height: { ideal: 960 } },
    });
  } catch (error) {
    return problemOf(error);
  }
  video.srcObject = stream;
  await video.play().catch(() => undefined);
  let timer = 0;
  let way = 0;
  const next = (): void => {
    const picture = pictureFrom(video, video.videoWidth, video.videoHeight, WIDEST);
    const text = picture === null ? null : look(picture, way);
    // What worked once will work for the next code too.
    if (text === null) way += 1;
    else onText(text);
    timer = window.setTimeout(next, PAUSE_MS);
  };
  next();
  return {
    stop: () => {
      window.clearTimeout(timer);
      for (const track of stream.getTracks()) track.stop();
      video.srcObject = null;
    },
  };
}

/** A picture file as pixels, or null where it is no picture. */
export async function pictureOfFile(file: Blob): Promise<CameraPicture | null> {
  try {
    const bitmap = await createImageBitmap(file);
    const picture = pictureFrom(bitmap, bitmap.width, bitmap.height, 2_400);
    bitmap.close();
    return picture;
  } catch {
    return null;
  }
}

let sheet: HTMLCanvasElement | null = null;

function pictureFrom(
  source: CanvasImageSource,
  width: number,
  height: number,
  most: number,
): CameraPicture | null {
  if (width === 0 || height === 0) return null;
  const factor = Math.min(1, most / Math.max(width, height));
  sheet ??= document.createElement('canvas');
  sheet.width = Math.round(width * factor);
  sheet.height = Math.round(height * factor);
  const pen = sheet.getContext('2d', { willReadFrequently: true });
  if (pen === null) return null;
  pen.drawImage(source, 0, 0, sheet.width, sheet.height);
  return pen.getImageData(0, 0, sheet.width, sheet.height);
}

function problemOf(error: unknown): CameraProblem {
  const name = error instanceof Error ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError') return 'refused';
  return name === 'NotReadableError' || name === 'AbortError' ? 'in-use' : 'none';
}
