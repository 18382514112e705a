/**
 * Makes the worker of the long work a file of the same build as the page, so that what both need is built, fetched and
 * kept once. Left to itself, vite builds a worker apart, with most of the core a second time.
 */
import type { Plugin } from 'vite';

/** How the page asks for the address of the worker, and what stands behind it. */
const ASKED = /^(?<file>.*[\\/]work\.worker\.ts)\?worker&url$/;
const FIRST_PAGE = /[\\/]src[\\/]main\.tsx$/;

interface Work {
  readonly plugin: Plugin;
  /** Whether the first page needs a module before it can stand there, by the id of the module. */
  readonly onFirstPage: (id: string) => boolean;
  /** Whether the worker needs it as well. */
  readonly inWorker: (id: string) => boolean;
}

/** The plugin, and what it found out about the modules once all of them were read. */
export function workPlugin(): Work {
  const firstPage = new Set<string>();
  const worker = new Set<string>();
  return {
    plugin: {
      name: 'before-the-hill-work',
      apply: 'build',
      enforce: 'pre',
      load(id) {
        const file = ASKED.exec(id)?.groups?.['file'];
        if (file === undefined) return null;
        // The page that has no worker takes what the file exports (`src/app/device/workplace.ts`).
        const chunk = this.emitFile({
          type: 'chunk',
          id: file,
          name: 'work.worker',
          preserveSignature: 'strict',
        });
        return `export default import.meta.ROLLDOWN_FILE_URL_${chunk};`;
      },
      buildEnd() {
        const collect = (id: string, found: Set<string>): void => {
          if (found.has(id)) return;
          found.add(id);
          for (const imported of this.getModuleInfo(id)?.importedIds ?? []) collect(imported, found);
        };
        for (const id of this.getModuleIds()) {
          if (FIRST_PAGE.test(id)) collect(id, firstPage);
          const file = ASKED.exec(id)?.groups?.['file'];
          if (file !== undefined) collect(file, worker);
        }
      },
    },
    onFirstPage: (id) => firstPage.has(id),
    inWorker: (id) => worker.has(id),
  };
}
