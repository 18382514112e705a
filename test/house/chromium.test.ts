/**
 * The search for a browser, on computers that are described and not owned: what is taken first, when a
 * package is installed, and what a person is told where nothing helps.
 */
import { delimiter, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { Computer } from '../browser/chromium.ts';
import { findChromium } from '../browser/chromium.ts';

const path = ['/opt/one', '/opt/two'].join(delimiter);

function computer(programs: readonly string[], more: Partial<Computer> = {}): Computer {
  return {
    env: { PATH: path },
    isProgram: (file) => programs.includes(file),
    osRelease: 'NAME="Elsewhere"\nID=elsewhere\n',
    isRoot: false,
    run: () => {
      throw new Error('nothing may be run here');
    },
    ...more,
  };
}

describe('the browser for the tests', () => {
  it('is the one CHROMIUM_PATH names', () => {
    const env = { PATH: path, CHROMIUM_PATH: '/opt/own' };
    expect(findChromium(computer(['/opt/own', join('/opt/one', 'chromium')], { env }))).toBe('/opt/own');
  });

  it('is not quietly another one if CHROMIUM_PATH is wrong', () => {
    const env = { PATH: path, CHROMIUM_PATH: '/opt/gone' };
    expect(() => findChromium(computer([join('/opt/one', 'chromium')], { env }))).toThrow('/opt/gone');
  });

  it('is found on the path, the one without windows before others', () => {
    const chrome = join('/opt/two', 'google-chrome');
    const shell = join('/opt/two', 'chromium-headless-shell');
    expect(findChromium(computer([chrome]))).toBe(chrome);
    expect(findChromium(computer([join('/opt/one', 'chromium'), shell]))).toBe(shell);
  });

  it('is installed on Debian as root, after an update', () => {
    const programs: string[] = [];
    const commands: string[] = [];
    const debian = computer(programs, {
      osRelease: 'NAME="Debian GNU/Linux"\nID=debian\n',
      isRoot: true,
      run: (command, args) => {
        commands.push([command, ...args].join(' '));
        if (args[0] === 'install') programs.push(join('/opt/one', 'chromium-headless-shell'));
      },
    });
    expect(findChromium(debian)).toBe(join('/opt/one', 'chromium-headless-shell'));
    expect(commands[0]).toBe('apt-get update');
    expect(commands[1]).toMatch(/^apt-get install -y .*\bchromium-headless-shell\b/);
  });

  it('is asked for in one sentence where it cannot be installed', () => {
    const asPerson = { osRelease: 'ID=debian\n', isRoot: false };
    expect(() => findChromium(computer([], asPerson))).toThrow(/^Install Chromium or Chrome, .*\.$/);
    expect(() =>
      findChromium(computer([], { osRelease: 'ID=ubuntu\nID_LIKE=debian\n', isRoot: true })),
    ).toThrow('Install Chromium');
  });
});
