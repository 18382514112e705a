/** How wide a drawing may be on this screen, told again when that changes. */
import { useEffect, useRef, useState } from 'preact/hooks';

const NARROWEST_PX = 260;

/** A ref for the element and its inner width (px). */
export function useWidth<Kind extends Element>(usualPx: number) {
  const ref = useRef<Kind | null>(null);
  const [width, setWidth] = useState(usualPx);
  useEffect(() => {
    const element = ref.current;
    if (element === null || typeof ResizeObserver === 'undefined') return undefined;
    const measure = (): void => {
      const { width: now } = element.getBoundingClientRect();
      if (now > 0) setWidth(Math.max(NARROWEST_PX, Math.round(now)));
    };
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    measure();
    return () => observer.disconnect();
  }, []);
  return { ref, width } as const;
}
