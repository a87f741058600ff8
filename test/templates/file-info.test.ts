import { expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { fileInfo } from '../../templates/file-info.ts';
import { newShop } from '../../templates/shop/index.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { workedExample } from '../solved.ts';

it('a file of templates says whose they are, what they are, on which paper, and the job’s day', () => {
  const job = setAt(setAt(workedExample(), 'name', 'Wren no. 3'), 'date', '2024-02-29');
  expect(fileInfo(sheetInfo(job, '1.2.3'), newShop())).toEqual({
    title: 'Wren no. 3',
    author: 'Sagitta 1.2.3',
    subject: 'Bridge and saddle templates, 1:1, on A4',
    date: new Date(Date.UTC(2024, 1, 29)),
  });
  expect(fileInfo(sheetInfo(setAt(job, 'name', ''), '1.2.3'), newShop()).title).toBe('Templates');
});
