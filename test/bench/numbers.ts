import { build } from '../../geometry/build.ts';
import type { Job } from '../../geometry/job.ts';
import { solve } from '../../geometry/solve.ts';
import demo from '../../src/jobs/heron.json' with { type: 'json' };

const job = demo as unknown as Job;

/** Microseconds that one call takes once it is warm: the middle of several rounds. */
const micros = (does: () => unknown): number => {
  const calls = 400;
  const rounds = Array.from({ length: 25 }, () => {
    const begin = performance.now();
    for (let k = 0; k < calls; k += 1) does();
    return ((performance.now() - begin) / calls) * 1000;
  });
  return rounds.sort((a, b) => a - b)[12] as number;
};

const measure = () => ({
  clone: micros(() => structuredClone(job)),
  solve: micros(() => solve(job)),
  build: micros(() => build(job)),
});

// The first round warms all three up.
measure();
process.stdout.write(JSON.stringify(measure()));
