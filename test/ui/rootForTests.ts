/** A place in the document for the tests of a file. */
import { render } from 'preact';
import { afterEach, beforeEach } from 'vitest';

/** An element that stands in the document during each test and is empty before the next. Call it at the top of a file. */
export function rootForTests(): HTMLElement {
  const root = document.createElement('div');
  beforeEach(() => document.body.append(root));
  afterEach(() => {
    render(null, root);
    root.remove();
  });
  return root;
}
