/**
 * Runs every check of the house and keeps going after a failure, so that one run shows all problems. The
 * last line counts them. What each check looks at is written in its own configuration; this file only starts
 * them and adds up. Rides in a real browser wait more than they work: what only works runs behind them.
 *
 * `npm test` runs all; `npm test -- lint unit` runs those two.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { add, countSuite, countTool, failedFiles, lastLine, withSecondTry } from './house/count.mjs';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const outputFolder = join(root, 'test-output');
const siteFolder = join(root, 'dist');
/** A check that hangs is a failed check; the slowest one takes minutes, and behind the rides on a busy machine half an hour. */
const PATIENCE_MS = 60 * 60_000;
/** What failed at first and was tried once more. */
const secondTries = [];

/** Everything else comes first at the processor. Linux may weigh whole sessions and not processes, so it is told of both. */
function giveWay(pid) {
  setPriority(pid, constants.priority.PRIORITY_LOW);
  try {
    writeFileSync(`/proc/${pid}/autogroup`, String(constants.priority.PRIORITY_LOW));
  } catch {
    // Only Linux has sessions that are weighed, and not everywhere.
  }
}

/**
 * Runs a command at the top of the repository with nothing to read; answers with its exit code. Behind others it gives
 * way to them at the processor, and what it says is said in one piece at its end.
 */
function run(command, args, isBehind = false) {
  return new Promise((resolve) => {
    const said = [];
    const output = isBehind ? 'pipe' : 'inherit';
    const child = spawn(command, args, {
      cwd: root,
      stdio: ['ignore', output, output],
      detached: process.platform !== 'win32',
      shell: process.platform === 'win32',
    });
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (piece) => said.push(piece));
    if (isBehind && child.pid !== undefined) giveWay(child.pid);
    const giveUp = setTimeout(() => {
      console.error(`Gave up on ${args.join(' ')} after ${PATIENCE_MS / 60_000} minutes.`);
      // The whole group, or a browser would outlive the check that started it.
      if (child.pid !== undefined && process.platform !== 'win32') process.kill(-child.pid, 'SIGKILL');
      else child.kill('SIGKILL');
    }, PATIENCE_MS);
    const finish = (code) => {
      clearTimeout(giveUp);
      process.stdout.write(Buffer.concat(said));
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
async function vitest(projects, files, reportName, isBehind = false) {
  const reportFile = join(outputFolder, `${reportName}.json`);
  const program = join('node_modules', 'vitest', 'vitest.mjs');
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${reportFile}`];
  const chosen = projects.split('+').flatMap((project) => ['--project', project]);
  const exitCode = await run('node', [program, 'run', ...chosen, ...reporters, ...files], isBehind);
  return { exitCode, report: existsSync(reportFile) ? readFileSync(reportFile, 'utf8') : null };
}

/** A vitest project counts every test in it; its report is what is believed, not its absence. */
async function suite(project, isBehind) {
  const { exitCode, report } = await vitest(project, [], project, isBehind);
  return countSuite(project, exitCode, report);
}

/** More files than these have not failed because the machine was busy. */
const MOST_SECOND_TRIES = 3;

/**
 * Tests in a real browser ride in real time beside each other, and a machine that stands still for a second rides
 * late. A few files that failed are run once more with the machine to themselves, and that is said; twice is failed.
 */
async function suiteInRealTime(project, meanwhile) {
  const [first] = await Promise.all([vitest(project, [], project), meanwhile()]);
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
 * The real browser and the other engines need the built site. Engines that are not on this computer are left out and
 * counted as skipped. What is done meanwhile gives way to the rides.
 */
async function onTheSite(projects, meanwhile = async () => {}) {
  if (existsSync(join(siteFolder, 'index.html'))) return suiteInRealTime(projects, meanwhile);
  await meanwhile();
  return countSuite(projects, 1, null, 'there is no built site to open');
}

const steps = {
  types,
  lint: () => tool('lint'),
  format: () => tool('format:check'),
  build,
  unit: (isBehind) => suite('unit', isBehind),
  dom: (isBehind) => suite('dom', isBehind),
  browser: () => onTheSite('browser'),
  engines: () => onTheSite('engines'),
  reader: () => onTheSite('reader'),
};
/** Rides in real time with a voice, for minutes and with the machine to itself: where the engines are asked for. */
const ONLY_WHEN_ASKED = new Set(['reader']);
/** Where all of these are wanted they run at once: the first two wait for rides, the others work. */
const TOGETHER = { rides: ['browser', 'engines'], work: ['unit', 'dom'] };

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

/** Runs one check with its name above it and adds what it counts. */
async function check(name, start) {
  console.log(`\n== ${name}`);
  const count = await start();
  total = add(total, count);
}

/** Rides and work at once; engines fit beside the browser. */
async function checkTogether({ rides, work }) {
  const meanwhile = async () => {
    for (const name of work) await check(`${name}, behind the rides`, () => steps[name](true));
  };
  await check(rides.join(' and '), () => onTheSite(rides.join('+'), meanwhile));
}

const wanted = Object.keys(steps).filter((name) =>
  asked.length === 0 ? !ONLY_WHEN_ASKED.has(name) : asked.includes(name),
);
const together = [...TOGETHER.rides, ...TOGETHER.work];
const atOnce = together.every((name) => wanted.includes(name));
for (const name of wanted) if (!atOnce || !together.includes(name)) await check(name, steps[name]);
if (atOnce) await checkTogether(TOGETHER);
console.log('');
for (const problem of secondTries) console.log(`TRIED TWICE ${problem}`);
for (const problem of total.problems) console.log(`FAILED ${problem}`);
console.log(lastLine(total));
process.exit(total.failed > 0 ? 1 : 0);
