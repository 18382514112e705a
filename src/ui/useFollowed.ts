/** Follows somebody outside of pages who says when there is something new, and nothing else about it. */
import { useEffect, useState } from 'preact/hooks';

/** Draws anew whenever the owner has something new; there may be no owner yet. */
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
