/**
 * Hands message files (`assets/words/de/ride.ftl`) to pages, as names and patterns: one file each, and one with all that
 * is said first. They lie in a folder that is named after what is in them, so that no old word stays in a cache. What a
 * language lacks is English in them.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { carriedWords, ENGLISH, languages, wordFiles } from '../assets/words/carry.ts';
import type { WordList } from '../src/words/words.ts';

/** What the start page says. */
const FIRST = ['common', 'start', 'ladder'];

/** Texts by the name under which a page asks for them. */
function filesOf(language: string): readonly (readonly [string, string])[] {
  const files = wordFiles().map((file) => [file, carriedWords(language, file)] as const);
  const text = (some: readonly (readonly [string, WordList])[]) => JSON.stringify(Object.fromEntries(some));
  const isFirst = ([file]: readonly [string, WordList]): boolean => FIRST.includes(file);
  return [
    [`${language}/first.json`, text(files.filter(isFirst))],
    ...files
      .filter((one) => !isFirst(one))
      .map((one) => [`${language}/${one[0]}.json`, text([one])] as const),
  ];
}

export function wordsPlugin(): Plugin {
  const files = new Map(languages().flatMap(filesOf));
  const mark = createHash('sha256')
    .update(JSON.stringify([...files]))
    .digest('base64url')
    .slice(0, 8);
  const folder = `assets/words-${mark}/`;
  return {
    name: 'before-the-hill-words',
    enforce: 'pre',
    config: () => ({
      define: { WORDS_OF_SITE: JSON.stringify({ folder, languages: languages(), first: FIRST }) },
    }),
    // What a bundled level says comes from the message files; its file has it in English for whoever opens it elsewhere.
    load(id) {
      if (!id.endsWith('.json?wordless')) return null;
      this.addWatchFile(id.replace('?wordless', ''));
      const text = readFileSync(id.replace('?wordless', ''), 'utf8');
      const level = JSON.parse(text) as { readonly cues?: readonly object[] };
      const cues = (level.cues ?? []).map((cue) => ('text' in cue ? { ...cue, text: '' } : cue));
      const without = { ...level, title: '', sentence: '', ...(cues.length === 0 ? {} : { cues }) };
      return `export default ${JSON.stringify(without)}`;
    },
    configureServer(server) {
      server.middlewares.use((request, response, next) => {
        const text = files.get((request.url ?? '').split(folder)[1] ?? '');
        if (text === undefined) return next();
        response.setHeader('content-type', 'application/json').end(text);
      });
    },
    generateBundle() {
      for (const [name, source] of files)
        this.emitFile({ type: 'asset', fileName: `${folder}${name}`, source });
    },
    // Most devices want it, and it need not wait for the script that asks for it.
    transformIndexHtml: () => [
      {
        tag: 'link',
        attrs: { rel: 'preload', as: 'fetch', crossorigin: '', href: `./${folder}${ENGLISH}/first.json` },
        injectTo: 'head',
      },
    ],
  };
}
