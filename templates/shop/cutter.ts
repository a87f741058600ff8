import * as z from 'zod/mini';
import { choice, number, numberOr, words } from '../../geometry/schema/field.ts';

const black = '#000000';

const colour = (what: string) =>
  z
    .string()
    .check(z.regex(/^#[0-9a-f]{6}$/i))
    .register(words, {
      label: `Colour, ${what}`,
      help: 'By which the cutter’s program tells these lines from the others.',
      kind: 'text',
      longest: 7,
      allows: 'a colour as # and six hexadecimal digits, such as #000000 for black',
      preset: black,
    });

/** How the lines of one purpose are drawn, and whether they go in at all. */
const lines = (what: string, width: number) =>
  z.looseObject({
    use: choice(`Lines, ${what}`, 'Whether these lines go into the file.', { in: 'go in', out: 'left out' }, 'in'),
    colour: colour(what),
    width: number({
      label: `Line width, ${what}`,
      help: 'Some cutters’ programs cut what is thin and engrave what is wide.',
      kind: 'length',
      min: 0.001,
      max: 2,
      preset: width,
    }),
  });

/** What a router, a laser or a knife follows: which side of the line, what holds the parts, and how its file is drawn. */
export const cutter = z.looseObject({
  tool: number({
    label: 'Tool or kerf',
    help: 'How wide the tool cuts: a router bit’s diameter, a laser’s or a saw’s kerf. 0 for a knife.',
    kind: 'length',
    min: 0,
    max: 12.7,
    usual: [0.1, 3.2],
    preset: 0,
  }),
  side: choice(
    'Where the tool runs',
    'In the waste it runs half its width outside an outline and inside a window or a hole, so that the part comes out true to size.',
    { waste: 'in the waste', line: 'on the line' },
    'waste',
  ),
  tabs: number({
    label: 'Holding tabs',
    help: 'Short stretches of a contour left uncut, so that the part stays in its sheet until you break it out; so many round each. 0 for none.',
    kind: 'count',
    min: 0,
    max: 40,
    usual: [3, 8],
    preset: 0,
  }),
  tabSpacing: numberOr('any', {
    label: 'Holding tabs apart',
    help: 'More tabs than their number where they would stand farther apart along the contour than this; “any” for no more.',
    kind: 'length',
    min: 10,
    max: 1000,
    usual: [40, 120],
    preset: 'any',
  }),
  tabWidth: number({
    label: 'Width of a tab',
    help: 'How much of the sheet is left between the ends of the cut.',
    kind: 'length',
    min: 0.1,
    max: 20,
    usual: [0.3, 4],
    preset: 1,
  }),
  tabsIn: choice(
    'Tabs stand in',
    'Windows and slots may let their waste fall, or hold it as well. Where the tool leaves nothing inside, there is nothing to hold.',
    { all: 'every contour', parts: 'outlines of parts only' },
    'all',
  ),
  holes: choice(
    'Drill holes',
    'As the hole itself, to be cut out; as a cross through its centre; or as a dot a fifth of a mm across that starts the drill.',
    { circles: 'circles', crosses: 'crosses', points: 'dots' },
    'circles',
  ),
  letters: choice(
    'Letters',
    'As outlines they look the same in every program; as text they can be changed there, but need its fonts.',
    { outlines: 'as outlines', text: 'as text' },
    'outlines',
  ),
  files: choice(
    'Files',
    'All lines in one file, or a file for each purpose; the files of one template lie over each other.',
    { one: 'one for all', each: 'one a purpose' },
    'one',
  ),
  square: choice(
    'Check square',
    'Stands beside the template: measure it in your program, since many reckon with dots per inch of their own.',
    { '20': '20 mm', '10': '10 mm' },
    '20',
  ),
  cut: lines('cut', 0.35),
  drill: lines('drill', 0.35),
  fold: lines('fold', 0.18),
  show: lines('only shown', 0.18),
});
