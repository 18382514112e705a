/** Who stands around the page, as windows tell it: those of other origins refuse to say where they are. */
import { describe, expect, it } from 'vitest';
import { framedByOthers } from '../../../src/app/device/framed.ts';

type Page = Parameters<typeof framedByOthers>[0];

const HERE = 'https://club.example';

/** Windows from the outermost to the innermost; null for one that does not tell. */
function nested(...origins: (string | null)[]): Page {
  let inner: Page | null = null;
  for (const origin of origins) {
    const page = {
      get location(): { origin: string } {
        if (origin === null) throw new DOMException('not yours', 'SecurityError');
        return { origin };
      },
    } as { parent: Page } & Page;
    page.parent = inner ?? page;
    inner = page;
  }
  if (inner === null) throw new Error('no window');
  return inner;
}

describe('a page', () => {
  it.each<[string, (string | null)[], boolean]>([
    ['on its own', [HERE], false],
    ['in a page of the same origin', [HERE, HERE], false],
    ['in a page of another origin', [null, HERE], true],
    ['in a page of another origin that stands in one of the same', [HERE, null, HERE], true],
    ['in a page that says it is from elsewhere', ['https://other.example', HERE], true],
    ['closed in, without an origin of its own', ['https://club.example', 'null'], true],
  ])('%s', (_name, origins, framed) => {
    expect(framedByOthers(nested(...origins))).toBe(framed);
  });
});
