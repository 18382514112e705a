/**
 * What is fetched when somebody installs: the lock file names exactly one version of everything with its
 * fingerprint and no host, and no package of the game itself runs anything while it is being installed.
 */
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { repository } from './files.ts';

interface LockedPackage {
  readonly version?: string;
  readonly integrity?: string;
  readonly resolved?: string;
  readonly dev?: boolean;
  readonly hasInstallScript?: boolean;
}

interface Manifest {
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
  readonly scripts?: Readonly<Record<string, string>>;
}

type Locked = readonly (readonly [place: string, entry: LockedPackage])[];

const readJson = (file: string): unknown => JSON.parse(readFileSync(join(repository, file), 'utf8'));
const manifest = readJson('package.json') as Manifest;
const lock = readJson('package-lock.json') as { readonly packages: Readonly<Record<string, LockedPackage>> };
/** All but the game itself. */
const locked: Locked = Object.entries(lock.packages).filter(([place]) => place !== '');

/** Scripts that npm runs by itself while it installs a package. */
const RUN_AT_INSTALL = ['preinstall', 'install', 'postinstall'];

/** Where a lock file says less than "this very thing", or names a host. */
function looseIn(packages: Locked): string[] {
  return packages
    .filter(
      ([, { version, integrity, resolved }]) =>
        !/^\d+\.\d+\.\d+(-[\w.]+)?$/.test(version ?? '') ||
        !/^sha512-[\w+/]{86}==$/.test(integrity ?? '') ||
        resolved !== undefined,
    )
    .map(([place]) => place);
}

/** Packages of the game itself that run something while they are installed, by the lock file or by their own word. */
function runningIn(packages: Locked, scriptsOf: (place: string) => readonly string[]): string[] {
  return packages
    .filter(([, { dev }]) => dev !== true)
    .filter(
      ([place, { hasInstallScript }]) =>
        hasInstallScript === true || scriptsOf(place).some((name) => RUN_AT_INSTALL.includes(name)),
    )
    .map(([place]) => place);
}

/** Names of the scripts of an installed package; npm also builds what brings a `binding.gyp`. */
function installedScripts(place: string): string[] {
  const { scripts = {} } = readJson(join(place, 'package.json')) as Manifest;
  const builds = existsSync(join(repository, place, 'binding.gyp'));
  return [...Object.keys(scripts), ...(builds ? ['install'] : [])];
}

describe('the lock file', () => {
  it('names exactly one version of every package, with its fingerprint and without a host', () => {
    expect(locked.length).toBeGreaterThan(100);
    expect(looseIn(locked)).toEqual([]);
  });

  it('says the same as the list of packages', () => {
    const { dependencies, devDependencies } = lock.packages[''] as unknown as Manifest;
    expect({ dependencies, devDependencies }).toEqual({
      dependencies: manifest.dependencies,
      devDependencies: manifest.devDependencies,
    });
    for (const [name, version] of Object.entries({ ...dependencies, ...devDependencies }))
      expect([name, lock.packages[`node_modules/${name}`]?.version]).toEqual([name, version]);
  });
});

describe('a package of the game', () => {
  it('runs nothing while it is installed', () => {
    const ours = locked.filter(([, { dev }]) => dev !== true).map(([place]) => place);
    expect(ours).toEqual(
      expect.arrayContaining(Object.keys(manifest.dependencies).map((name) => `node_modules/${name}`)),
    );
    expect(runningIn(locked, installedScripts)).toEqual([]);
  });
});

it('what is wrong is found', () => {
  const integrity = `sha512-${'a'.repeat(86)}==`;
  const good = { version: '1.2.3', integrity };
  const wrong: Locked = [
    ['good', good],
    ['floating', { ...good, version: '^1.2.3' }],
    ['nameless', { integrity }],
    ['unproven', { version: '1.2.3' }],
    ['weak', { ...good, integrity: 'sha1-abc=' }],
    ['hosted', { ...good, resolved: 'https://packages.example/a.tgz' }],
  ];
  expect(looseIn(wrong)).toEqual(['floating', 'nameless', 'unproven', 'weak', 'hosted']);
  const running: Locked = [
    ['quiet', good],
    ['marked', { ...good, hasInstallScript: true }],
    ['for-work', { ...good, dev: true, hasInstallScript: true }],
    ['by-its-word', good],
  ];
  const scripts = (place: string): string[] => (place === 'by-its-word' ? ['test', 'postinstall'] : ['test']);
  expect(runningIn(running, scripts)).toEqual(['marked', 'by-its-word']);
});
