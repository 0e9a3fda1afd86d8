import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { browserCounts, stepCounts, unitCounts } from '../../scripts/tools/counts.mjs';
import { installFailure, missingReason } from '../../scripts/tools/packages.mjs';

const folder = mkdtempSync(join(tmpdir(), 'homeleg-commands-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function report(text: unknown): string {
  const file = join(folder, 'report.json');
  writeFileSync(file, typeof text === 'string' ? text : JSON.stringify(text));
  return file;
}

describe('missingReason', () => {
  const lock = {
    '': {},
    'node_modules/a': { version: '1.0.0' },
    'node_modules/b': { version: '2.0.0', optional: true },
  };

  it('installs on a fresh copy, after a change of the list, and after an install that broke off', () => {
    expect(missingReason(lock, undefined, false)).toMatch(/not installed yet/);
    expect(missingReason(lock, { 'node_modules/a': { version: '0.9.0' } }, true)).toMatch(/has changed/);
    expect(missingReason(lock, {}, true)).toMatch(/has changed/);
    expect(missingReason(lock, { 'node_modules/a': { version: '1.0.0' } }, false)).toMatch(/did not finish/);
  });

  it('leaves alone what is complete, with or without the packages meant for other machines', () => {
    const present = { 'node_modules/a': { version: '1.0.0' } };
    expect(missingReason(lock, present, true)).toBeUndefined();
    expect(missingReason(lock, { ...present, 'node_modules/b': { version: '2.0.0' } }, true)).toBeUndefined();
    expect(missingReason(lock, { ...present, 'node_modules/b': { version: '1.0.0' } }, true)).toMatch(/has changed/);
  });
});

describe('installFailure', () => {
  it('tells a missing network from a missing npm and from any other trouble', () => {
    expect(installFailure({ output: 'npm error code EAI_AGAIN', missing: false })).toMatch(/no network/);
    expect(installFailure({ output: '', missing: true })).toMatch(/npm was not found/);
    expect(installFailure({ output: 'npm error code EINTEGRITY', missing: false })).toMatch(/EINTEGRITY/);
  });
});

describe('the closing line', () => {
  it('counts a test file that breaks before its first test', () => {
    const suites = [
      { status: 'failed', assertionResults: [] },
      { status: 'failed', assertionResults: [{}] },
    ];
    const counts = { numPassedTests: 5, numFailedTests: 1, numPendingTests: 2, numTodoTests: 0, testResults: suites };
    expect(unitCounts(report(counts))).toEqual({ passed: 5, failed: 2, skipped: 2 });
  });

  it('counts a browser test that passed only when repeated as failed', () => {
    const stats = { expected: 7, unexpected: 1, flaky: 1, skipped: 0 };
    expect(browserCounts(report({ stats }))).toEqual({ passed: 7, failed: 2, skipped: 0 });
  });

  it('has no count from a report that is absent or cut short', () => {
    expect(unitCounts(join(folder, 'absent.json'))).toBeUndefined();
    expect(browserCounts(report('{"stats":'))).toBeUndefined();
  });

  it('counts a step that fails without a test of its own as one failure', () => {
    expect(stepCounts({ code: 1 }).failed).toBe(1);
    expect(stepCounts({ code: 1, counts: { passed: 3, failed: 2, skipped: 0 } }).failed).toBe(2);
    expect(stepCounts({ code: 0 }).failed).toBe(0);
  });
});

describe('the lock file', () => {
  it('names no registry, so that everybody installs from their own', () => {
    expect(readFileSync('package-lock.json', 'utf8')).not.toMatch(
      /"resolved"|https?:\/\/(?!opencollective|github|tidelift|patreon)[^"]*\.tgz/,
    );
  });
});
