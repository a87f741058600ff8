import * as z from 'zod/mini';
import { choice, number } from '../../geometry/schema/field.ts';

const only = { path: 'paper.size', is: 'typed' } as const;

/** What the templates are printed on. */
export const paper = z.looseObject({
  size: choice(
    'Paper',
    'What the templates are printed on.',
    { a4: 'A4', letter: 'Letter', a3: 'A3', tabloid: 'Tabloid', typed: 'a typed size' },
    'a4',
  ),
  width: number({
    label: 'Paper width',
    help: 'Of the sheet standing upright.',
    kind: 'length',
    min: 100,
    max: 2000,
    preset: 210,
    only,
  }),
  height: number({
    label: 'Paper height',
    help: 'Of the sheet standing upright.',
    kind: 'length',
    min: 100,
    max: 2000,
    preset: 297,
    only,
  }),
  margin: number({
    label: 'Margin',
    help: 'Left free at every edge of the sheet, where the printer does not reach.',
    kind: 'length',
    min: 3,
    max: 30,
    usual: [5, 13],
    preset: 10,
  }),
  overlap: number({
    label: 'Overlap of pages',
    help: 'How far the pages of a template that is larger than the paper lie over each other.',
    kind: 'length',
    min: 5,
    max: 40,
    usual: [10, 20],
    preset: 15,
  }),
});
