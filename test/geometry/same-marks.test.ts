import { expect, it } from 'vitest';
import type { Mark } from '../../geometry/drawing.ts';
import { withSameMarks } from '../../geometry/same-marks.ts';
import { viewAlone, views } from '../../geometry/views/index.ts';
import { starters } from '../../src/jobs/index.ts';
import { built, jobOf } from '../solved.ts';

const mayLack = /^(jobPath|alternative|matter|hatch|angle|shift|leads|or|stagger|roams|bold|scale|turn|fixed)$/;

/** Every mark that differs from this one in a single place: a number a hair larger, a word with a letter more, a switch the other way, a part that may be left out gone. */
function* others(value: unknown): Generator<unknown> {
  if (typeof value === 'number') yield value + 1e-9 * Math.max(1, Math.abs(value));
  else if (typeof value === 'string') yield `${value}x`;
  else if (typeof value === 'boolean') yield !value;
  else if (Array.isArray(value))
    for (const [k, part] of value.entries()) for (const other of others(part)) yield value.with(k, other);
  else if (typeof value === 'object' && value !== null)
    for (const [key, part] of Object.entries(value)) {
      for (const other of others(part)) yield { ...value, [key]: other };
      if (mayLack.test(key)) yield { ...value, [key]: undefined };
    }
}

/** The marks of a starter, view by view. */
const marksOf = (id: string): readonly (readonly Mark[])[] => {
  const { job, design } = built(jobOf(starters.find((one) => one.id === id)?.text ?? ''));
  return Object.values(views).map((view) => view(job, design).marks);
};

it('takes over a mark that says the same, as the same object', () => {
  for (const before of marksOf('lapwing')) expect(withSameMarks(structuredClone(before), before)).toBe(before);
});

it('takes over no mark that differs in anything at all', () => {
  const all = [...marksOf('heron'), ...marksOf('lapwing')].flat();
  let count = 0;
  for (const mark of all)
    for (const other of others(mark)) {
      const [now] = withSameMarks([other as Mark], [mark]);
      if (now !== other) throw new Error(`${mark.id} is taken for ${JSON.stringify(other)}`);
      count += 1;
    }
  expect(count).toBeGreaterThan(2000);
});

it('shows each job’s own drawing, whichever was drawn before', () => {
  for (const { text } of [...starters, ...starters.toReversed()]) {
    const { job, design } = built(jobOf(text));
    for (const name of ['above', 'tail', 'middle'] as const)
      expect(viewAlone(name, job, design).marks).toEqual(views[name](job, design).marks);
  }
});
