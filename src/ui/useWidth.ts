/** The width a drawing has on the page, so that its text keeps its size on a phone and on a projector. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

const FIRST_WIDTH_PX = 960;

/** Width in px (a guess until it is laid out), and the element to be measured. */
export function useWidth(): readonly [number, { current: HTMLDivElement | null }] {
  const element = useRef<HTMLDivElement | null>(null);
  const [width, setWidth] = useState(FIRST_WIDTH_PX);
  useLayoutEffect(() => {
    const { current } = element;
    if (current === null) return undefined;
    const read = (): void => {
      if (current.clientWidth > 0) setWidth(current.clientWidth);
    };
    read();
    try {
      const observer = new ResizeObserver(read);
      observer.observe(current);
      return () => observer.disconnect();
    } catch {
      // A browser that cannot tell: the drawing keeps the width it began with.
      return undefined;
    }
  }, []);
  return [width, element];
}
