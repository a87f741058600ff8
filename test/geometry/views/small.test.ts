import { expect, test } from 'vitest';
import { smallViews } from '../../../geometry/views/small.ts';
import { built, jobFile, workedExampleFile } from '../../solved.ts';

test('the small view across shows the bridge’s edge dashed over the saddle, where one top radius differs from another', () => {
  const { job, design } = built(jobFile(workedExampleFile));
  const { marks } = smallViews(job, design, 3).across;
  const ids = marks.map(({ id }) => id);
  const [edge, deck] = ['bridge.profile', 'deck'].map((id) => marks.find((mark) => mark.id === id));
  expect(ids.indexOf('deck')).toBeGreaterThan(ids.indexOf('saddle'));
  expect(deck).toMatchObject({ line: 'hidden' });
  expect(deck?.kind === 'path' && deck.path).toEqual(edge?.kind === 'path' && edge.path);
  expect(deck).not.toHaveProperty('matter');
});
