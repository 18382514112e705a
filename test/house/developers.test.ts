/**
 * Keeps the contributor's page true where it can be checked: its import table, its list of packages, and the
 * commands, files and scripts it names. Files that comments in `src` name are looked for as well.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { listFiles, readTexts, repository } from './files.ts';
import { importTableText, shownTable } from './tableText.ts';

interface Manifest {
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}

const text = readFileSync(join(repository, 'DEVELOPERS.md'), 'utf8');
const manifest = JSON.parse(readFileSync(join(repository, 'package.json'), 'utf8')) as Manifest;

/** The cells of all table rows below a heading. */
function rowsBelow(heading: string): string[][] {
  const section = text.split(/^## /m).find((part) => part.startsWith(heading)) ?? '';
  const lines = section.split('\n').filter((line) => line.startsWith('| `'));
  return lines.map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
}

/** Names of files among codes that `files` do not have; a name may leave out the folders before it. */
function missingFiles(codes: readonly string[], files: readonly string[]): string[] {
  const named = codes.filter((code) => /^[\w./-]+\.(tsx?|mjs|md|json|css|ftl|html|txt)$/.test(code));
  return named.filter((name) => !files.some((path) => path === name || path.endsWith(`/${name}`)));
}

function codesIn(cell: string | undefined): string[] {
  return [...(cell ?? '').matchAll(/`([^`\n]+)`/g)].map((match) => match[1] as string);
}

describe('the contributor page', () => {
  it('shows the import table that is checked, as the script writes it', () => {
    expect(shownTable(text)).toBe(importTableText());
  });

  it('says of every package why it is here, and of no other', () => {
    const explained = rowsBelow('Why each package is here').map(([name]) => codesIn(name)[0] ?? '');
    const installed = [...Object.keys(manifest.dependencies), ...Object.keys(manifest.devDependencies)];
    expect(explained.toSorted()).toEqual(installed.toSorted());
  });

  it('explains packages that are really used, in the game or in its tests', () => {
    const texts = [...readTexts(listFiles())];
    const isUsed = (name: string, belongs: (path: string) => boolean): boolean =>
      texts.some(([path, source]) => belongs(path) && new RegExp(`['"]${name}(/[^'"]*)?['"]`).test(source));
    const inGame = (path: string): boolean => /^src\/.*\.tsx?$/.test(path);
    const inTests = (path: string): boolean => path === 'vite.config.ts' || /^test\/(?!house\/)/.test(path);
    const forTests = ['axe-core', 'fast-check', 'happy-dom', 'odex', 'playwright-core', 'vitest'];
    expect(Object.keys(manifest.dependencies).filter((name) => !isUsed(name, inGame))).toEqual([]);
    expect(forTests.filter((name) => !isUsed(name, inTests))).toEqual([]);
  });

  it('names every command of the project and none that is not there', () => {
    const named = [...text.matchAll(/npm (?:run (?:-s )?)?([a-z][a-z:]*)/g)].map(
      (match) => match[1] as string,
    );
    const ours = named.filter((name) => name !== 'ci');
    expect([...new Set(ours)].toSorted()).toEqual(Object.keys(manifest.scripts).toSorted());
  });

  it('names no file that is not there', () => {
    // One is made by a server, the other stands for any page.
    const made = ['tablets.json', 'src/features/NAME/page.tsx'];
    const missing = missingFiles(codesIn(text), listFiles());
    expect(missing.toSorted()).toEqual(made.toSorted());
  });

  it('is not alone in that: comments in the sources name no file that is not there', () => {
    const files = listFiles();
    const comments = [...readTexts(files.filter((path) => /^src\/.*\.tsx?$/.test(path)))].map(
      ([path, source]) => [path, (source.match(/\/\*[\s\S]*?\*\/|\/\/.*/g) ?? []).join('\n')] as const,
    );
    const missing = comments.flatMap(([path, comment]) =>
      missingFiles(codesIn(comment), files).map((name) => `${path}: ${name}`),
    );
    // What somebody could call a recording.
    expect(missing).toEqual(['src/cli/verbs/clinicRides.ts: fox-2.json']);
  });

  it('says of every script that is run by hand what it is for', () => {
    // What several of them share.
    const parts = ['cells', 'smallDisk'];
    const scripts = listFiles().flatMap((path) => /^test\/figures\/([\w-]+)\.ts$/.exec(path)?.[1] ?? []);
    const named = new Set(codesIn(text));
    expect(scripts.filter((name) => !named.has(name) && !parts.includes(name))).toEqual([]);
  });

  it('lets no package float: every version is exact', () => {
    const versions = Object.values({ ...manifest.dependencies, ...manifest.devDependencies });
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });
});
