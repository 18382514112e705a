/** What pages wait for and look at while they are drawn: owners outside of them, answers, the room there is. */
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';

/** Draws anew whenever the owner says that there is something new; there may be no owner yet. */
export function useFollowed(
  owner: { readonly subscribe: (listener: () => void) => () => void } | null,
): void {
  const [, setCount] = useState(0);
  useEffect(() => {
    const drawAnew = (): void => setCount((count) => count + 1);
    const stop = owner?.subscribe(drawAnew);
    // A page is drawn before it listens: what came in between would be seen only with the next change.
    drawAnew();
    return stop;
  }, [owner]);
}

/** What a promise answers; asks again whenever one of `inputs` is another. An answer that is not wanted any more is not heard. */
export function useAnswer<T>(ask: () => Promise<T>, inputs: readonly unknown[]): T | 'waiting' | 'failed' {
  const [answer, setAnswer] = useState<T | 'waiting' | 'failed'>('waiting');
  useEffect(() => {
    let wanted = true;
    setAnswer('waiting');
    ask().then(
      (one) => wanted && setAnswer(() => one),
      () => wanted && setAnswer('failed'),
    );
    return () => {
      wanted = false;
    };
  }, inputs);
  return answer;
}

interface Size {
  readonly width: number;
  readonly height: number;
}

const FIRST_PX: Size = { width: 960, height: 400 };

type Measured = { current: HTMLDivElement | null };

/**
 * Width in px (a guess until it is laid out), and the element to be measured: a drawing that has it keeps the size of its
 * text on a phone and on a projector.
 */
export function useWidth(): readonly [number, Measured] {
  const [{ width }, element] = useSize();
  return [width, element];
}

/** Width and height in px (a guess until they are laid out), and the element to be measured. */
export function useSize(): readonly [Size, Measured] {
  const element: Measured = useRef<HTMLDivElement | null>(null);
  const [size, setSize] = useState(FIRST_PX);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return undefined;
    const read = (): void => {
      const { clientWidth: width, clientHeight: height } = current;
      if (width > 0)
        setSize((known) => (known.width === width && known.height === height ? known : { width, height }));
    };
    read();
    try {
      const observer = new ResizeObserver(read);
      observer.observe(current);
      return () => observer.disconnect();
    } catch {
      // A browser that cannot tell: the drawing keeps the size it began with.
      return undefined;
    }
  }, []);
  return [size, element];
}
