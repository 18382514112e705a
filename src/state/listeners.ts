/** Those who want to be told when something has changed. */
export class Listeners<Told extends readonly unknown[] = []> {
  readonly #all = new Set<(...told: Told) => void>();

  /** Calls back from now on; the answer stops it. */
  readonly add = (listener: (...told: Told) => void): (() => void) => {
    this.#all.add(listener);
    return () => this.#all.delete(listener);
  };

  /** Calls back all of them, in the order in which they came. */
  tell(...told: Told): void {
    for (const listener of this.#all) listener(...told);
  }
}
