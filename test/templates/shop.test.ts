import { describe, expect, it } from 'vitest';
import { pieces, templatesOf } from '../../templates/pieces/index.ts';
import { newShop, readShop, type Shop, writeShop } from '../../templates/shop/index.ts';
import { built } from '../solved.ts';
import { fullJob } from './full-job.ts';

const read = (value: unknown) => readShop(JSON.stringify(value));
const says = (value: unknown) => {
  const answer = read(value);
  return answer.ok ? [] : answer.problems.map((problem) => problem.says);
};

describe('a shop’s settings file', () => {
  it('comes back as it was written', () => {
    const shop: Shop = { ...newShop(), copies: { footprint: 3, saddle: 0 } };
    expect(readShop(writeShop(shop))).toEqual({ ok: true, shop, unknown: [] });
  });

  it('takes what a file lacks at its preset', () => {
    expect(read({ format: 'sagitta-shop', paper: { size: 'a3' } })).toEqual({
      ok: true,
      shop: { ...newShop(), paper: { ...newShop().paper, size: 'a3' } },
      unknown: [],
    });
  });

  it('keeps and tells what it does not know', () => {
    const answer = read({ format: 'sagitta-shop', paper: { colour: 'cream' }, lathe: 1 });
    expect(answer).toMatchObject({ ok: true, unknown: ['paper.colour', 'lathe'], shop: { lathe: 1 } });
  });

  it('is refused by the place, the value and what is allowed', () => {
    expect(says({ format: 'sagitta-shop', paper: { margin: 90 } })).toEqual([
      'Margin (paper.margin) is 90 mm; it may be from 3 to 30 mm.',
    ]);
    expect(says({ format: 'sagitta-shop', paper: 3 })[0]).toMatch(/^paper is/);
    expect(says({ format: 'sagitta-shop', copies: { footprint: 1000 } })[0]).toContain('copies.footprint');
    expect(says({ format: 'sagitta-job' })[0]).toContain('sagitta-job');
    expect(says([])[0]).toContain('no settings');
    expect(says({ format: 'sagitta-shop', version: 2 })[0]).toContain('newer Sagitta, in version 2');
    expect(says({ format: 'sagitta-shop', version: 'x' })[0]).toContain('not given as a number');
    expect(says({ format: 'sagitta-shop', copies: { 'a.b': 1 } })[0]).toContain('“a.b”');
    expect(readShop('{"format": "sagitta-shop", "__proto__": {"x": 1}}').ok).toBe(false);
    expect(readShop('nonsense').ok).toBe(false);
  });
});

it('decides how many of each piece are printed', () => {
  const { job, design } = built(fullJob());
  const ids = (shop: Shop) => templatesOf(job, design, shop).map(({ id }) => id);
  const usual = ids(newShop());
  expect(usual).toEqual(expect.arrayContaining(pieces.filter((p) => p.usually !== 0 && !p.whyNot).map((p) => p.id)));
  const asked = ids({ ...newShop(), copies: { footprint: 2, saddle: 0 } });
  expect(asked.filter((id) => id === 'footprint')).toHaveLength(2);
  expect(asked.filter((id) => id === 'saddle')).toHaveLength(0);
});
