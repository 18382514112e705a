/** What a promise answers, for pages that draw before it does. An answer that is not wanted any more is not heard. */
import { useEffect, useState } from 'preact/hooks';

/** Asks again whenever one of `inputs` is another. */
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
