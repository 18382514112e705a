/**
 * The count at the end of a run decides whether a change is taken, so it is tested like everything else:
 * above all that silence and crashes are counted as failures.
 */
import { describe, expect, it } from 'vitest';
import { add, countSuite, countTool, failedFiles, lastLine, withSecondTry } from './count.mjs';

function report(...files: readonly { status: string; tests: readonly string[] }[]): string {
  return JSON.stringify({
    testResults: files.map(({ status, tests }, index) => ({
      name: `file-${index}`,
      status,
      assertionResults: tests.map((test, place) => ({ status: test, fullName: `fact ${place}` })),
    })),
  });
}

describe('a suite', () => {
  it('counts every test of every file', () => {
    const text = report(
      { status: 'passed', tests: ['passed', 'passed', 'skipped'] },
      { status: 'failed', tests: ['passed', 'failed', 'todo'] },
    );
    expect(countSuite('unit', 1, text)).toEqual({
      passed: 3,
      failed: 1,
      skipped: 2,
      problems: ['unit: fact 1'],
    });
  });

  it('says in a line why a test or a file failed', () => {
    const failureMessages = ['\u001b[31mAssertionError: expected 1 to be 2\u001b[39m\n    at somewhere'];
    const test = { status: 'failed', fullName: 'a fact', failureMessages };
    const testResults = [
      { name: 'one', status: 'failed', assertionResults: [test] },
      { name: 'two', status: 'failed', message: 'a hook broke', assertionResults: [] },
    ];
    expect(countSuite('unit', 1, JSON.stringify({ testResults })).problems).toEqual([
      'unit: a fact: AssertionError: expected 1 to be 2',
      'unit: two: a hook broke',
    ]);
  });

  it('has failed if no test ran', () => {
    expect(countSuite('unit', 0, report()).failed).toBe(1);
    expect(countSuite('unit', 0, report({ status: 'passed', tests: ['skipped'] })).failed).toBe(1);
  });

  it('has failed if it left no report or a broken one', () => {
    expect(countSuite('unit', 0, null).failed).toBe(1);
    expect(countSuite('unit', 0, '{"testRes').failed).toBe(1);
  });

  it('has failed if a file could not be loaded', () => {
    const text = report({ status: 'failed', tests: [] }, { status: 'passed', tests: ['passed'] });
    expect(countSuite('unit', 1, text)).toMatchObject({ passed: 1, failed: 1, problems: ['unit: file-0'] });
  });

  it('has failed if it ended badly although every test passed', () => {
    expect(countSuite('unit', 1, report({ status: 'passed', tests: ['passed'] })).failed).toBe(1);
  });
});

describe('a second try', () => {
  const first = report(
    { status: 'failed', tests: ['passed', 'failed'] },
    { status: 'passed', tests: ['passed'] },
  );
  const again = (status: 'passed' | 'failed'): string => report({ status, tests: ['passed', status] });

  it('is given to the files in which something failed', () => {
    expect(failedFiles(first)).toEqual(['file-0']);
    expect(failedFiles(null)).toEqual([]);
  });

  it('takes the place of the first, whether it passed or not', () => {
    expect(countSuite('browser', 0, withSecondTry(first, again('passed'), ['file-0']))).toMatchObject({
      passed: 3,
      failed: 0,
    });
    expect(countSuite('browser', 1, withSecondTry(first, again('failed'), ['file-0']))).toMatchObject({
      passed: 2,
      failed: 1,
    });
  });

  it('that leaves no report has failed', () => {
    expect(countSuite('browser', 1, withSecondTry(first, null, ['file-0']))).toMatchObject({
      passed: 1,
      failed: 1,
    });
  });
});

describe('a run', () => {
  it('adds tools and suites', () => {
    const total = add(countTool('lint', 0), add(countTool('build', 2), countSuite('dom', 0, null)));
    expect(lastLine(total)).toBe('1 passed, 2 failed');
    expect(total.problems).toHaveLength(2);
  });

  it('mentions skipped tests only if there are some', () => {
    expect(lastLine({ passed: 5, failed: 0, skipped: 0, problems: [] })).toBe('5 passed, 0 failed');
    expect(lastLine({ passed: 5, failed: 0, skipped: 2, problems: [] })).toBe(
      '5 passed, 0 failed, 2 skipped',
    );
  });
});
