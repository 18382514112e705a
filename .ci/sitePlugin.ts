/**
 * What the build adds to the site so that it can be installed and works without a network: the policy of the page,
 * what it says before the game is there, the manifest with its icons, and the worker that keeps the files, with
 * their list and fingerprints. What the worker does with them is written in `src/offline`.
 */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Plugin, Rolldown } from 'vite';
import { pagePolicy } from './policy.mjs';
import '../assets/words/english.ts';
import { common } from '../src/words/common.ts';
import { words } from '../src/words/words.ts';

const say = words('arrival');

const top = fileURLToPath(new URL('..', import.meta.url));
const workerSource = fileURLToPath(new URL('../src/offline/worker.ts', import.meta.url));
/** The worker lies beside the page, or it could not answer for it; its name never changes. */
const WORKER_FILE = 'offline.js';
const MANIFEST_FILE = 'manifest.webmanifest';
/** Addresses that tablets can open; only a server knows them, so that no copy of it is kept. */
const TABLETS_FILE = 'tablets.json';
/** Stands in the worker until the list is known. */
const LIST_MARK = '__SITE_FILES__';
/** The paper of the first page, `--paper` in `theme.css`. */
const PAPER = '#fff8ec';

const icons = [
  { file: 'icon-192.png', sizes: '192x192', purpose: 'any' },
  { file: 'icon-512.png', sizes: '512x512', purpose: 'any' },
  { file: 'icon-maskable-512.png', sizes: '512x512', purpose: 'maskable' },
] as const;
/** Asked for by the page only. */
const pageIcons = ['icon.svg', 'icon-180.png'];

function manifest(): string {
  return `${JSON.stringify(
    {
      id: './',
      start_url: './',
      scope: './',
      name: common('name'),
      short_name: common('name'),
      description: common('promise'),
      lang: 'en',
      display: 'standalone',
      background_color: PAPER,
      theme_color: PAPER,
      icons: icons.map(({ file, sizes, purpose }) => ({
        src: `icons/${file}`,
        sizes,
        type: 'image/png',
        purpose,
      })),
    },
    null,
    2,
  )}\n`;
}

/** As `src/offline/worker.ts` takes it: the first 128 bits. */
const fingerprint = (content: string | Uint8Array): string =>
  createHash('sha256').update(content).digest().subarray(0, 16).toString('base64url');

/** Name and fingerprint of every file the game needs, in order; the icons have been taken when it is installed. */
function listOf(bundle: Rolldown.OutputBundle): readonly (readonly [string, string])[] {
  return Object.values(bundle)
    .filter(
      ({ fileName }) =>
        fileName !== WORKER_FILE && fileName !== TABLETS_FILE && !/\.map$|^icons\/.*\.png$/.test(fileName),
    )
    .map((file) => [file.fileName, fingerprint(file.type === 'chunk' ? file.code : file.source)] as const)
    .sort(([a], [b]) => (a < b ? -1 : 1));
}

/** Adds them to a build of this site, and to no other build that borrows the settings. */
export function sitePlugin(): Plugin {
  let ours = false;
  return {
    name: 'before-the-hill-site',
    apply: 'build',
    enforce: 'post',
    configResolved: (config) => {
      ours = fileURLToPath(new URL(`file://${config.root}/`)) === top;
    },
    buildStart() {
      if (!ours) return;
      this.emitFile({ type: 'chunk', id: workerSource, fileName: WORKER_FILE });
      this.emitFile({ type: 'asset', fileName: MANIFEST_FILE, source: manifest() });
      this.emitFile({ type: 'asset', fileName: TABLETS_FILE, source: '[]\n' });
      for (const file of [...icons.map((icon) => icon.file), ...pageIcons]) {
        const source = readFileSync(new URL(`../assets/icons/${file}`, import.meta.url));
        this.emitFile({ type: 'asset', fileName: `icons/${file}`, source });
      }
    },
    transformIndexHtml: {
      order: 'post',
      handler: () => (ours ? pageTags() : []),
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        if (!ours) return;
        const worker = bundle[WORKER_FILE];
        if (worker?.type !== 'chunk' || worker.imports.length > 0 || !worker.code.includes(LIST_MARK))
          this.error('The offline worker must be one file that takes the list of files.');
        const list = JSON.stringify(listOf(bundle));
        // The mark is the text of a string; the list is written into the same quotes.
        worker.code = worker.code.replace(LIST_MARK, () => list.replaceAll('"', String.raw`\"`));
      },
    },
  };
}

/** What the page says by itself until the game stands in it, or where it never does. */
function arrival() {
  const line = (text: string, attributes: Record<string, string> = {}) => ({
    tag: 'p',
    attrs: attributes,
    children: text,
  });
  return {
    tag: 'main',
    attrs: { id: 'arrival', class: 'arrival' },
    injectTo: 'body-prepend' as const,
    children: [
      { tag: 'h1', children: common('name') },
      { tag: 'noscript', children: [line(say('noScript'))] },
      line(say('onItsWay'), { class: 'with-script' }),
      line(say('stuck'), { class: 'with-script' }),
      line(say('safe')),
      { tag: 'a', attrs: { href: './', class: 'button strong' }, children: say('again') },
    ],
  };
}

/** What the page says inside a page of others, in place of the game. */
function framed() {
  const link = { href: './', class: 'button strong', target: '_blank', rel: 'noopener' };
  return {
    tag: 'template',
    attrs: { id: 'framed' },
    injectTo: 'body' as const,
    children: [
      {
        tag: 'main',
        attrs: { class: 'arrival' },
        children: [
          { tag: 'h1', children: common('name') },
          { tag: 'p', children: say('framed') },
          { tag: 'a', attrs: link, children: say('alone') },
        ],
      },
    ],
  };
}

/** The policy comes first in the page, or what stands before it would not be bound by it. */
function pageTags() {
  const meta = (attributes: Record<string, string>) => ({
    tag: 'meta',
    attrs: attributes,
    injectTo: 'head' as const,
  });
  const link = (attributes: Record<string, string>) => ({
    tag: 'link',
    attrs: attributes,
    injectTo: 'head' as const,
  });
  return [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
      injectTo: 'head-prepend' as const,
    },
    arrival(),
    framed(),
    link({ rel: 'manifest', href: `./${MANIFEST_FILE}` }),
    link({ rel: 'icon', type: 'image/svg+xml', href: './icons/icon.svg' }),
    link({ rel: 'apple-touch-icon', href: './icons/icon-180.png' }),
    meta({ name: 'theme-color', content: PAPER }),
    meta({ name: 'mobile-web-app-capable', content: 'yes' }),
    meta({ name: 'apple-mobile-web-app-capable', content: 'yes' }),
    meta({ name: 'apple-mobile-web-app-title', content: common('name') }),
    meta({ name: 'apple-mobile-web-app-status-bar-style', content: 'default' }),
  ];
}
