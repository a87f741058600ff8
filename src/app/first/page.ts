import { firstWords as words } from '../first-words.ts';
import { mostHeights, usualHeights, viewNames } from '../sheet/laying.ts';
import type { Built } from '../state.ts';
import { element, tag, text } from './markup.ts';

const says = words.sheet;

const button = (label: string, isPressed?: boolean): string =>
  element('button', { type: 'button', 'aria-pressed': isPressed }, text(label));

const heights = (): string =>
  element(
    'div',
    { class: 'heights' },
    element('label', { for: 'heights' }, says.heights[0], element('span', { class: 'unseen' }, says.heights[1])),
    tag('input', {
      id: 'heights',
      type: 'range',
      min: 1,
      max: mostHeights,
      step: 1,
      'aria-valuetext': says.times(usualHeights),
      value: usualHeights,
    }),
    element('output', { for: 'heights' }, says.times(usualHeights)),
  );

/** What looks closer and measures, over all three views. */
const toolbar = (): string => {
  const names = ['three', ...viewNames] as const;
  return element(
    'section',
    { class: 'toolbar', 'aria-label': says.toolsLabel },
    element(
      'select',
      { 'aria-label': says.shown },
      ...names.map((name) => element('option', { value: name }, text(says[name]))),
    ),
    heights(),
    element(
      'span',
      { class: 'together' },
      button(says.farther),
      button(says.fit, true),
      button(says.closer),
      button(says.trueSize, false),
    ),
    element('span', { class: 'together' }, button(says.ruler, false), button(says.gauge, false)),
  );
};

/** The names over one view at a time, and the views side by side, the first in sight. */
export const strip = (views: readonly string[]): string =>
  element(
    'div',
    { class: 'strip-head' },
    element(
      'nav',
      { class: 'view-names', 'aria-label': says.views },
      ...viewNames.map((name, index) => button(says[name], index === 0)),
    ),
    element('button', { type: 'button', 'aria-expanded': false }, text(says.tools)),
  ) +
  element(
    'section',
    { class: 'view-strip', 'aria-label': says.views },
    ...views.map((view) => element('div', { class: 'view' }, view)),
  );

/** The page as `Room` puts it up before its other parts are there, with nothing on the sheet's paper yet. */
export const page = ({ job }: Built, has: { readonly three: boolean; readonly drawer: boolean }): string => {
  const empty = (name: string) => element('div', { class: name });
  return element(
    'div',
    { class: 'bench', 'data-drawer': false },
    element('div', { class: 'head' }, element('header', { class: 'bar' })),
    element(
      'main',
      {},
      element('h1', { class: 'unseen' }, words.name),
      element(
        'div',
        { class: 'stage' },
        element(
          'section',
          { class: 'sheet', 'aria-labelledby': 'sheet-title', 'data-stale': false },
          element('h2', { class: 'unseen', id: 'sheet-title' }, says.label),
          element('div', { class: 'line' }, element('p', {}, says.lengths(job.show.length))),
          has.three ? toolbar() : '',
          empty('paper'),
        ),
        has.drawer ? empty('opener') : '',
        empty('help'),
      ),
      has.drawer ? '' : empty('numbers'),
      element('div', { class: 'below' }, element('div', { class: 'works' }, empty('to-come')), empty('results')),
    ),
  );
};
