/** One site and one browser for all tests of a file. */
import { afterAll, beforeAll } from 'vitest';
import { openSite, type Site } from './site.ts';

/**
 * The site, open before the first test of the file and closed after the last. Call it at the top of a file and use what
 * comes back in tests and hooks only.
 * @param build makes a folder to serve in place of the built site; it is removed at the end
 */
export function siteForTests(
  build?: () => Promise<{ readonly folder: string; readonly remove: () => void }>,
): Site {
  let site: Site;
  let removeFolder: (() => void) | undefined;
  beforeAll(async () => {
    const built = await build?.();
    removeFolder = built?.remove;
    site = await openSite(built?.folder);
  });
  afterAll(async () => {
    await site?.close();
    removeFolder?.();
  });
  return {
    get url() {
      return site.url;
    },
    get browser() {
      return site.browser;
    },
    get requests() {
      return site.requests;
    },
    // Half the pixels: no test looks at them, and mixing them without a graphics processor is work.
    openPage: (screen) =>
      site.openPage({ ...screen, context: { deviceScaleFactor: 0.5, ...screen.context } }),
    stopServer: () => site.stopServer(),
    close: () => site.close(),
  };
}
