import { expect, it } from 'vitest';
import { type Renewal, renew } from '../../../src/app/offline/renew.ts';
import { demoBench } from '../bench.ts';

/** A bench with what keeps its job, and what was done to them in turn. */
const bench = (isKept = true) => {
  const done: string[] = [];
  const keep = {
    flush: async () => void done.push('kept'),
    isKept: () => isKept,
  };
  return { bench: demoBench(), keep, done, start: async () => void done.push('started') };
};
const notices = ({ bench }: Pick<Renewal, 'bench'>) => bench.getState().notices;

it('keeps the job, then starts the page anew', async () => {
  const at = bench();
  await renew(at);
  expect(at.done).toEqual(['kept', 'started']);
});

it('starts nothing while a change is not safe', async () => {
  const at = bench(false);
  await renew(at);
  expect(at.done).toEqual(['kept']);
  expect(notices(at)).toMatchObject([{ id: 'renew', file: {}, act: { says: 'Try again' } }]);
});

it('names what is typed and cannot be used, and starts nothing', async () => {
  const at = bench();
  at.bench.type('bridge.thickness', 'nine');
  await renew(at);
  expect(at.done).toEqual([]);
  expect(notices(at)).toMatchObject([{ id: 'renew', details: [expect.stringContaining('Thickness, centre')] }]);
});

it('where nothing is kept asks for a file first, and starts when told again', async () => {
  const at = { ...bench(), keep: undefined };
  at.bench.put('bridge.thickness', 9.3);
  await renew(at);
  expect(at.done).toEqual([]);
  const [notice] = notices(at);
  expect(notice).toMatchObject({ file: {} });
  await notice?.act?.run();
  expect(at.done).toEqual(['started']);
});
