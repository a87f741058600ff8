import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { sum, tallyVitest, tallyWhole } from './tally.ts';

// The counts are read from reports that vitest itself writes, over small test files of every fate.
const root = fileURLToPath(new URL('..', import.meta.url));
const folder = mkdtempSync(join(root, 'node_modules', '.fates-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function runVitest(name: string, tests: readonly string[]) {
  const home = join(folder, name);
  mkdirSync(home);
  writeFileSync(join(home, 'vitest.config.mjs'), 'export default { test: { include: ["*.fate.mjs"] } };');
  tests.forEach((body, i) => {
    writeFileSync(join(home, `${i}.fate.mjs`), `import { expect, it } from 'vitest';\n${body}`);
  });
  const report = join(home, 'report.json');
  const args = ['run', '--root', home, '--reporter=json', `--outputFile=${report}`];
  const { status } = spawnSync(process.execPath, [join(root, 'node_modules/vitest/vitest.mjs'), ...args], {
    encoding: 'utf8',
  });
  return { report: tests.length > 0 ? readFileSync(report, 'utf8') : undefined, status };
}

const good = "it('holds', () => expect(1).toBe(1));";

describe('counting a run of vitest', () => {
  it('counts what held, and nothing failed', () => {
    const { report, status } = runVitest('good', [`${good}\n${good}`, good]);
    expect(tallyVitest(report, status)).toEqual({ passed: 3, failed: 0 });
  });

  it('counts failed, skipped and unwritten tests, and a file that breaks before its first test, as failed', () => {
    const { report, status } = runVitest('mixed', [
      `${good}\nit('fails', () => expect(1).toBe(2));`,
      `${good}\nit.skip('is skipped', () => {});\nit.todo('is not written');`,
      "throw new Error('broken before its first test');",
    ]);
    expect(tallyVitest(report, status)).toEqual({ passed: 2, failed: 4 });
  });

  it('counts a skipped test as failed although vitest ends well', () => {
    const { report, status } = runVitest('skipped', [`${good}\nit.skip('is skipped', () => {});`]);
    expect(status).toBe(0);
    expect(tallyVitest(report, status)).toEqual({ passed: 1, failed: 1 });
  });

  it('counts an error outside every test as failed', () => {
    const { report, status } = runVitest('stray', [
      `${good}\nit('lets go', () => { void Promise.reject(new Error('stray')); });`,
    ]);
    expect(tallyVitest(report, status)).toEqual({ passed: 2, failed: 1 });
  });

  it('counts a run without tests, without a report or with half a report as failed', () => {
    const { status } = runVitest('empty', []);
    expect(tallyVitest(undefined, status)).toEqual({ passed: 0, failed: 1 });
    expect(tallyVitest(undefined, 0)).toEqual({ passed: 0, failed: 1 });
    expect(tallyVitest('{"testResults":[', null)).toEqual({ passed: 0, failed: 1 });
  });
});

describe('adding up', () => {
  it('counts types and lint as one test each and adds all runners', () => {
    expect(sum([tallyWhole(0), tallyWhole(2), tallyWhole(null), { passed: 40, failed: 3 }])).toEqual({
      passed: 41,
      failed: 5,
    });
  });
});
