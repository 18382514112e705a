/**
 * Adds up what the checks said. It knows the JSON report of vitest and nothing else about the tools;
 * starting them is the work of `test/run.mjs`. A suite that ran no test has failed: silence is no proof.
 */
import { stripVTControlCharacters } from 'node:util';

/**
 * @typedef {{ passed: number, failed: number, skipped: number, problems: string[] }} Count
 */

/**
 * The sum of two counts.
 * @param {Count} a
 * @param {Count} b
 * @returns {Count}
 */
export function add(a, b) {
  return {
    passed: a.passed + b.passed,
    failed: a.failed + b.failed,
    skipped: a.skipped + b.skipped,
    problems: [...a.problems, ...b.problems],
  };
}

/**
 * A tool that either likes what it sees or does not.
 * @param {string} name
 * @param {number} exitCode
 * @returns {Count}
 */
export function countTool(name, exitCode) {
  return exitCode === 0
    ? { passed: 1, failed: 0, skipped: 0, problems: [] }
    : { passed: 0, failed: 1, skipped: 0, problems: [`${name}: exit code ${exitCode}`] };
}

/**
 * The files of a vitest report; an unreadable report has none.
 * @param {string | null} reportText
 * @returns {{ name: string, status: string, message?: string, assertionResults: { status: string, fullName: string, failureMessages?: string[] }[] }[]}
 */
function filesOf(reportText) {
  if (reportText === null) return [];
  try {
    return JSON.parse(reportText).testResults ?? [];
  } catch {
    return [];
  }
}

/** Of why a test failed, so much is told at the end of a run (letters). */
const LONGEST_REASON = 300;

/**
 * The first line of why something failed, after a colon, without colours; nothing where it is not said.
 * @param {string | undefined} message
 * @returns {string}
 */
function because(message) {
  const [first = ''] = stripVTControlCharacters(message ?? '')
    .trim()
    .split('\n');
  return first === '' ? '' : `: ${first.slice(0, LONGEST_REASON)}`;
}

/**
 * One vitest project, from its exit code and its JSON report.
 * @param {string} name
 * @param {number} exitCode
 * @param {string | null} reportText null if no report was written
 * @param {string} [reason] why there is none, if that is known
 * @returns {Count}
 */
export function countSuite(name, exitCode, reportText, reason) {
  const count = { passed: 0, failed: 0, skipped: 0, problems: /** @type {string[]} */ ([]) };
  for (const file of filesOf(reportText)) {
    const failed = file.assertionResults.filter((test) => test.status === 'failed');
    count.passed += file.assertionResults.filter((test) => test.status === 'passed').length;
    count.failed += failed.length;
    count.problems.push(
      ...failed.map((test) => `${name}: ${test.fullName}${because(test.failureMessages?.[0])}`),
    );
    // A file that could not be loaded, or whose hook broke, has failed without a failed test.
    if (file.status === 'failed' && failed.length === 0) {
      count.failed += 1;
      count.problems.push(`${name}: ${file.name}${because(file.message)}`);
    }
    count.skipped += file.assertionResults.filter(
      (test) => !['passed', 'failed'].includes(test.status),
    ).length;
  }
  if (count.failed === 0 && count.passed === 0) {
    count.failed += 1;
    count.problems.push(`${name}: ${reason ?? 'no test ran'}`);
  } else if (count.failed === 0 && exitCode !== 0) {
    count.failed += 1;
    count.problems.push(`${name}: exit code ${exitCode} although every test passed`);
  }
  return count;
}

/**
 * The files of a report in which something failed.
 * @param {string | null} reportText
 * @returns {string[]}
 */
export function failedFiles(reportText) {
  return filesOf(reportText)
    .filter(({ status }) => status === 'failed')
    .map(({ name }) => name);
}

/**
 * A report in which some files were run once more: of those the second report is believed, also where it lacks one.
 * @param {string} firstText
 * @param {string | null} secondText
 * @param {readonly string[]} files those that were run once more
 * @returns {string}
 */
export function withSecondTry(firstText, secondText, files) {
  const second = new Map(filesOf(secondText).map((file) => [file.name, file]));
  const broken = { status: 'failed', message: 'the second try left no report', assertionResults: [] };
  const testResults = filesOf(firstText).map((file) =>
    files.includes(file.name) ? (second.get(file.name) ?? { ...broken, name: file.name }) : file,
  );
  return JSON.stringify({ testResults });
}

/**
 * The line that ends a run.
 * @param {Count} total
 * @returns {string}
 */
export function lastLine(total) {
  const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
  return `${total.passed} passed, ${total.failed} failed${skipped}`;
}
