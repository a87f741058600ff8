/** How many tests of a runner held, and how many did not. */
export interface Tally {
  readonly passed: number;
  readonly failed: number;
}

/** What we read of the report that vitest's JSON reporter writes (the shape it shares with Jest's). */
interface VitestReport {
  readonly testResults: readonly {
    readonly status: string;
    readonly assertionResults: readonly { readonly status: string }[];
  }[];
}

/**
 * Counts one vitest run from its JSON report (`undefined` when none was written) and its exit code. A skipped or unwritten test counts
 * as failed, and so does a file that broke before its first test, a run without any test, and a run that ended badly for any
 * other reason: no run that is not wholly good counts 0 failed.
 */
export function tallyVitest(report: string | undefined, exitCode: number | null): Tally {
  let passed = 0;
  let failed = 0;
  for (const file of readReport(report).testResults) {
    const held = file.assertionResults.filter((test) => test.status === 'passed').length;
    const broken = file.assertionResults.length - held;
    passed += held;
    failed += broken === 0 && file.status !== 'passed' ? 1 : broken;
  }
  const clean = exitCode === 0 && passed > 0;
  return { passed, failed: failed === 0 && !clean ? 1 : failed };
}

/** Counts a runner that is one test as a whole, from its exit code. */
export function tallyWhole(exitCode: number | null): Tally {
  return exitCode === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
}

/** The sum of all runners' counts. */
export function sum(tallies: readonly Tally[]): Tally {
  return {
    passed: tallies.reduce((n, tally) => n + tally.passed, 0),
    failed: tallies.reduce((n, tally) => n + tally.failed, 0),
  };
}

function readReport(report: string | undefined): VitestReport {
  try {
    const read = JSON.parse(report ?? '') as Partial<VitestReport> | null;
    return { testResults: read?.testResults ?? [] };
  } catch {
    return { testResults: [] };
  }
}
