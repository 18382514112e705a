/** A page that follows somebody shows what is true, whenever it became so. */
import { type JSX, render } from 'preact';
import { expect, it } from 'vitest';
import { Listeners } from '../../src/state/listeners.ts';
import { useFollowed } from '../../src/ui/hooks.ts';
import { rootForTests } from './rootForTests.ts';

const root = rootForTests();

class Counter {
  count = 0;
  readonly #listeners = new Listeners();
  readonly subscribe = this.#listeners.add;

  add(): void {
    this.count += 1;
    this.#listeners.tell();
  }
}

function Shown({ counter }: { readonly counter: Counter | null }): JSX.Element {
  useFollowed(counter);
  return <p>{counter === null ? 'nobody' : counter.count}</p>;
}

it('what changes before the page listens is drawn, and what changes later', async () => {
  const counter = new Counter();
  render(<Shown counter={counter} />, root);
  counter.add();
  expect(root.textContent).toBe('0');
  await expect.poll(() => root.textContent).toBe('1');
  counter.add();
  await expect.poll(() => root.textContent).toBe('2');
});

it('somebody else is followed from the moment there is somebody else, and the one before no more', async () => {
  const [first, second] = [new Counter(), new Counter()];
  render(<Shown counter={null} />, root);
  expect(root.textContent).toBe('nobody');
  for (const counter of [first, second]) {
    render(<Shown counter={counter} />, root);
    counter.add();
    await expect.poll(() => root.textContent).toBe('1');
  }
  first.add();
  second.add();
  await expect.poll(() => root.textContent).toBe('2');
});
