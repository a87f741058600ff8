import { coverBetween, type Edge, scarOutline } from '../bridge/cover.ts';
import { footprintOutline } from '../bridge/outline.ts';
import { type Overlap, position, reachOf, saddleAt } from '../bridge/position.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { datum } from './bridge.ts';
import type { Figure } from './figure.ts';
import { type Given, inputs } from './inputs.ts';
import { fret12 } from './scale.ts';
import { saddleLineFromNut, saddleSlant } from './slot.ts';
import { sources } from './sources.ts';
import { acrossAtSaddle } from './strings.ts';

const job = { kind: 'length', per: 'job' } as const;

export const nutToSaddle: Figure = {
  id: 'nutToSaddle',
  title: 'Nut to saddle line, at the string',
  about:
    'From the nut’s front edge to the slot’s centre line at this string, along the guitar and so square to the nut.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => design.strings[k] && saddleAt(design, design.strings[k]).fromNut,
  how: (settled, design, k) => ({
    formula: 'x = x_0 + m·y',
    inputs: inputs(settled, design, k, { x_0: saddleLineFromNut, m: saddleSlant, y: acrossAtSaddle }),
    source: sources.geometry,
  }),
};

export const fret12ToSaddle: Figure = {
  id: 'fret12ToSaddle',
  title: 'Fret 12 to saddle line, at the string',
  about:
    'From the crown of fret 12 to the slot’s centre line at this string, along the guitar: the bridge is placed by it.',
  kind: 'length',
  per: 'string',
  value: (_, design, k) => design.strings[k] && saddleAt(design, design.strings[k]).fromFret12,
  how: (settled, design, k) => ({
    formula: 'D = x − x_12',
    inputs: inputs(settled, design, k, { x: nutToSaddle, x_12: fret12 }),
    source: sources.geometry,
  }),
};

const overlap =
  (side: keyof Overlap) =>
  (settled: Settled, design: Design): number | undefined =>
    position(settled, design).overlap?.[side];

/** How deep the footprint is on the centre line: its depth, a waisted one's at its waist, or as it is drawn. */
const depthOnCentre = (settled: Settled, design: Design): string | Given => {
  const { footprint } = settled.bridge;
  if (footprint === 'waisted') return 'bridge.waistDepth';
  if (footprint !== 'free') return 'bridge.depth';
  const { front, rear } = reachOf(settled, design);
  return { name: 'the outline’s depth on the centre line', value: rear - front, kind: 'length' };
};

export const overFront: Figure = {
  ...job,
  id: 'overFront',
  title: 'Beyond the scar, in front',
  about: 'How far the bridge’s front edge lies before the old scar’s, on the centre line; behind it if negative.',
  value: overlap('front'),
  how: (settled, design, k) => ({
    formula: 'o = x_s − x_0 + f',
    inputs: inputs(settled, design, k, { x_s: 'scar.fromNut', x_0: datum(settled).x_0, f: 'bridge.frontToSaddle' }),
    source: sources.geometry,
  }),
};

export const overRear: Figure = {
  ...job,
  id: 'overRear',
  title: 'Beyond the scar, behind',
  about: 'How far the bridge’s rear edge lies behind the old scar’s, on the centre line; before it if negative.',
  value: overlap('rear'),
  how: (settled, design, k) => ({
    formula: 'o = x_0 − f + d − x_s − d_s',
    inputs: inputs(settled, design, k, {
      x_0: datum(settled).x_0,
      f: 'bridge.frontToSaddle',
      d: depthOnCentre(settled, design),
      x_s: 'scar.fromNut',
      d_s: 'scar.depth',
    }),
    source: sources.geometry,
  }),
};

const tip = (id: string, side: 'bassTip' | 'trebleTip', word: string): Figure => ({
  ...job,
  id,
  title: `Beyond the scar, ${word} tip`,
  about: `How far the bridge’s ${word} tip reaches beyond the old scar’s, across the guitar; short of it if negative.`,
  value: overlap(side),
  how: (settled, design, k) =>
    settled.bridge.footprint === 'free'
      ? {
          formula: 'o = r − l_s/2',
          inputs: inputs(settled, design, k, {
            r: {
              name: `from the centre line to the outline’s ${word} tip`,
              value: reachOf(settled, design)[side],
              kind: 'length',
            },
            l_s: 'scar.length',
          }),
          source: sources.geometry,
        }
      : {
          formula: 'o = (l − l_s)/2',
          inputs: inputs(settled, design, k, { l: 'bridge.length', l_s: 'scar.length' }),
          source: sources.geometry,
        },
});

export const overBass = tip('overBass', 'bassTip', 'bass');
export const overTreble = tip('overTreble', 'trebleTip', 'treble');

const edges: Readonly<Record<Edge, string>> = {
  front: 'front edge',
  rear: 'rear edge',
  bassTip: 'bass tip',
  trebleTip: 'treble tip',
};

export const bareScar: Figure = {
  ...job,
  id: 'bareScar',
  title: 'Bare scar, at most',
  about:
    'How far bare scar shows beside the footprint where it shows most, square to its edge; 0 where all is covered.',
  value: overlap('bare'),
  how: (settled, design, k) => {
    const old = scarOutline(settled);
    const covers = old ? coverBetween(footprintOutline(settled, design), old, design.datum.x) : [];
    return {
      formula: 'b = the greatest of 0 and −c_k; c_k is how far each edge of the footprint covers the scar, least',
      inputs: inputs(
        settled,
        design,
        k,
        Object.fromEntries(
          covers.map(({ edge, least }, i) => [
            `c_${i + 1}`,
            { name: `scar covered at the ${edges[edge]}, least`, value: least, kind: 'length' } satisfies Given,
          ]),
        ),
      ),
      source: 'Plane geometry: signed distances of the scar’s outline from the footprint’s.',
    };
  },
};
