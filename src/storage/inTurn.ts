/** Work that must not overlap: each begins when the one before has ended, well or badly. */

/** A line of its own; what it is handed answers as it would by itself. */
export function inTurn(): <T>(work: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (work) => {
    const mine = last.then(work);
    last = mine.catch(() => undefined);
    return mine;
  };
}
