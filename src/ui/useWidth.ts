/** The room a drawing has on the page, so that its text keeps its size on a phone and on a projector. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

interface Size {
  readonly width: number;
  readonly height: number;
}

const FIRST_PX: Size = { width: 960, height: 400 };

type Measured = { current: HTMLDivElement | null };

/** Width in px (a guess until it is laid out), and the element to be measured. */
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
