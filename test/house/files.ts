/**
 * Lists the files of the repository that belong to it and looks at them as text: what stands at the
 * top, and whether anything names one particular computer. What `.gitignore` leaves out is left out.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Sources } from './boundaries.ts';

/** The top of the repository. */
export const repository = fileURLToPath(new URL('../..', import.meta.url));

/** Everything that may stand at the top, and must. */
export const topLevel: readonly string[] = [
  '.ci',
  '.gitignore',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'assets',
  'index.html',
  'levels',
  'package-lock.json',
  'package.json',
  'src',
  'test',
  'vite.config.ts',
];

/** Turns lines such as `dist/`, `notes.txt` and `*.log` into a question about one name. */
export function readIgnoreList(text: string): (name: string) => boolean {
  const patterns = text.split('\n').map((line) => line.trim().replace(/\/$/, ''));
  const names = new Set(patterns.filter((pattern) => pattern !== '' && !pattern.startsWith('#')));
  const endings = [...names].filter((name) => name.startsWith('*')).map((name) => name.slice(1));
  return (name) => name === '.git' || names.has(name) || endings.some((ending) => name.endsWith(ending));
}

/** Paths of all files of the repository, with forward slashes. */
export function listFiles(top = repository): string[] {
  const isIgnored = readIgnoreList(readFileSync(join(top, '.gitignore'), 'utf8'));
  const list = (folder: string): string[] =>
    readdirSync(join(top, folder), { withFileTypes: true })
      .filter((entry) => !isIgnored(entry.name))
      .flatMap((entry) => {
        const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
        return entry.isDirectory() ? list(path) : [path];
      });
  return list('');
}

const textFile =
  /(^|\/)[^./]+$|\.(css|csv|gitignore|gpx|html|js|json|md|mjs|svg|ts|tsx|txt|webmanifest|xml)$/;

/** The texts among the files; sounds and pictures are left out. */
export function readTexts(paths: readonly string[], top = repository): Sources {
  return new Map(
    paths.filter((path) => textFile.test(path)).map((path) => [path, readFileSync(join(top, path), 'utf8')]),
  );
}

/** What is at the top and should not be, and what is missing there. */
export function checkTopLevel(paths: readonly string[]): string[] {
  const present = new Set(paths.map((path) => path.split('/')[0] as string));
  return [
    ...[...present]
      .filter((name) => !topLevel.includes(name))
      .map((name) => `${name} does not belong at the top`),
    ...topLevel.filter((name) => !present.has(name)).map((name) => `${name} is missing at the top`),
  ];
}

/** Paths that exist on one computer only, and hosts that packages were fetched from. */
const tiedToOnePlace: readonly RegExp[] = [
  /(?<![\w.~*-])\/(work|tmp|root|home|Users)\/[\w.-]/,
  /\b[A-Z]:\\Users\\/,
  /\bregistry\.[a-z0-9-]+\.[a-z]/i,
];

/** Lines that only make sense on the computer they were written on. */
export function findPrivatePlaces(sources: Sources): string[] {
  return [...sources].flatMap(([path, text]) =>
    text.split('\n').flatMap((line, index) => {
      const found = tiedToOnePlace
        .map((pattern) => pattern.exec(line)?.[0])
        .find((match) => match !== undefined);
      return found === undefined ? [] : [`${path}:${index + 1} names ${found}`];
    }),
  );
}
