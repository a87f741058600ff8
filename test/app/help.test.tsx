// @vitest-environment jsdom
import { cleanup, render, waitFor } from '@testing-library/react';
import { afterEach, expect, it } from 'vitest';
import { newJob } from '../../geometry/job-file.ts';
import { Help } from '../../src/app/numbers/Help.tsx';
import { BenchContext } from '../../src/app/use-bench.ts';
import { demoBench } from './bench.ts';

afterEach(cleanup);

const open = () => {
  const bench = demoBench();
  render(
    <BenchContext value={bench}>
      <Help />
    </BenchContext>,
  );
  return { bench, says: () => document.querySelector('.help')?.textContent };
};

it('says that the demo is an example, and how to begin with a guitar of one’s own, till it is worked at', async () => {
  const { bench, says } = open();
  expect(says()).toMatch(/^The guitar shown is an example; “New job…” begins with yours\. Type what you measure/);
  // Three sentences, for whoever sees it for the first time.
  expect(says()?.match(/\.(?= |$)/g)).toHaveLength(3);
  bench.put('bridge.thickness', 9);
  await waitFor(() => expect(says()).toMatch(/^Type what you measure/));
  bench.undo();
  await waitFor(() => expect(says()).toContain('an example'));
});

it('says it of no other job', async () => {
  const { bench, says } = open();
  bench.startNew(newJob('2026-01-01'));
  await waitFor(() => expect(says()).toMatch(/^Type what you measure/));
});
