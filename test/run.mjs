/**
 * Runs every check of the house in order and keeps going after a failure, so that one run shows all
 * problems. The last line counts them. What each check looks at is written in its own configuration;
 * this file only starts them and adds up.
 *
 * `npm test` runs all; `npm test -- lint unit` runs those two.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { add, countSuite, countTool, failedFiles, lastLine, withSecondTry } from './house/count.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const outputFolder = join(root, 'test-output');
const siteFolder = join(root, 'dist');
/** A check that hangs is a failed check; the slowest one takes minutes, not an hour. */
const PATIENCE_MS = 30 * 60_000;
/** What failed at first and was tried once more. */
const secondTries = [];

/** Runs a command at the top of the repository with nothing to read; answers with its exit code. */
function run(command, args) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: root,
      stdio: ['ignore', 'inherit', 'inherit'],
      detached: process.platform !== 'win32',
      shell: process.platform === 'win32',
    });
    const giveUp = setTimeout(() => {
      console.error(`Gave up on ${args.join(' ')} after ${PATIENCE_MS / 60_000} minutes.`);
      // The whole group, or a browser would outlive the check that started it.
      if (child.pid !== undefined && process.platform !== 'win32') process.kill(-child.pid, 'SIGKILL');
      else child.kill('SIGKILL');
    }, PATIENCE_MS);
    const finish = (code) => {
      clearTimeout(giveUp);
      resolve(code ?? 1);
    };
    child.on('error', () => finish(1));
    child.on('close', finish);
  });
}

/** A tool counts as one check: passed on exit code 0. */
async function tool(script) {
  return countTool(script, await run('npm', ['run', '--silent', script]));
}

/** Types are one check, but every project is looked at even if the first one is wrong. */
async function types() {
  const codes = [];
  for (const project of ['src/core', 'src', 'src/cli', 'test']) {
    codes.push(await run('node', [join('node_modules', 'typescript', 'bin', 'tsc'), '-p', project]));
  }
  return countTool('types', Math.max(...codes));
}

/** Runs vitest projects, given as `browser+engines`, or some files of them; answers with exit code and report. */
async function vitest(projects, files, reportName) {
  const reportFile = join(outputFolder, `${reportName}.json`);
  const program = join('node_modules', 'vitest', 'vitest.mjs');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
  const chosen = projects.split('+').flatMap((project) => ['--project', project]);
  const exitCode = await run('node', [program, 'run', ...chosen, ...reporters, ...files]);
  return { exitCode, report: existsSync(reportFile) ? readFileSync(reportFile, 'utf8') : null };
}

/** A vitest project counts every test in it; its report is what is believed, not its absence. */
async function suite(project) {
  const { exitCode, report } = await vitest(project, [], project);
  return countSuite(project, exitCode, report);
}

/** More files than these have not failed because the machine was busy. */
const MOST_SECOND_TRIES = 3;

/**
 * Tests in a real browser ride in real time beside each other, and a machine that stands still for a second rides
 * late. A few files that failed are run once more with the machine to themselves, and that is said; twice is failed.
 */
async function suiteInRealTime(project) {
  const first = await vitest(project, [], project);
  const files = failedFiles(first.report);
  if (files.length === 0 || files.length > MOST_SECOND_TRIES)
    return countSuite(project, first.exitCode, first.report);
  const before = countSuite(project, first.exitCode, first.report).problems;
  console.log(`\n== ${project}, once more and alone: ${files.length} of its files`);
  const second = await vitest(project, [...files, '--no-file-parallelism'], `${project}-once-more`);
  secondTries.push(...before);
  return countSuite(project, second.exitCode, withSecondTry(first.report, second.report, files));
}

/** Builds from nothing, so that a failed build cannot leave yesterday's site to be tested. */
async function build() {
  rmSync(siteFolder, { recursive: true, force: true });
  return tool('build');
}

/**
 * The real browser and the other engines need the built site. One run has both: rides wait more than they work, and
 * an engine fits beside them. Engines that are not on this computer are left out and counted as skipped.
 */
async function onTheSite(projects) {
  if (existsSync(join(siteFolder, 'index.html'))) return suiteInRealTime(projects);
  return countSuite(projects, 1, null, 'there is no built site to open');
}

const steps = {
  types,
  lint: () => tool('lint'),
  format: () => tool('format:check'),
  unit: () => suite('unit'),
  dom: () => suite('dom'),
  build,
  browser: () => onTheSite('browser'),
  engines: () => onTheSite('engines'),
  reader: () => onTheSite('reader'),
};
/** Rides in real time with a voice, for minutes and with the machine to itself: where the engines are asked for. */
const ONLY_WHEN_ASKED = new Set(['reader']);
/** Where both are wanted they run as one. */
const BOTH = { steps: ['browser', 'engines'], run: () => onTheSite('browser+engines') };

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in steps));
if (unknown.length > 0) {
  console.error(
    `There is no check called ${unknown.join(', ')}; there are ${Object.keys(steps).join(', ')}.`,
  );
  process.exit(2);
}

rmSync(outputFolder, { recursive: true, force: true });
mkdirSync(outputFolder, { recursive: true });
/** @type {import('./house/count.mjs').Count} */
let total = { passed: 0, failed: 0, skipped: 0, problems: [] };
const wanted = Object.keys(steps).filter((name) =>
  asked.length === 0 ? !ONLY_WHEN_ASKED.has(name) : asked.includes(name),
);
const wantsBoth = BOTH.steps.every((name) => wanted.includes(name));
for (const name of wanted) {
  const [first, second] = BOTH.steps;
  if (wantsBoth && name === second) continue;
  const isBoth = wantsBoth && name === first;
  console.log(`\n== ${isBoth ? BOTH.steps.join(' and ') : name}`);
  total = add(total, await (isBoth ? BOTH.run() : steps[name]()));
}
console.log('');
for (const problem of secondTries) console.log(`TRIED TWICE ${problem}`);
for (const problem of total.problems) console.log(`FAILED ${problem}`);
console.log(lastLine(total));
process.exit(total.failed > 0 ? 1 : 0);
