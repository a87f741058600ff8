import type { Settled } from '../settle.ts';
import type { Figure, How } from './figure.ts';
import { type Given, inputs } from './inputs.ts';
import { sources } from './sources.ts';

type Sources = Parameters<typeof inputs>[3];

/** The points of a free outline all the way round, each as two inputs and whether it is a corner; of a mirrored half, its image's after its own. */
export const outlinePoints = ({ bridge }: Settled): Sources => {
  const own = bridge.points.map(({ id, across, along, turn }, k) => ({
    across: { name: `Across, point ${k + 1}`, value: across, path: `bridge.points.${id}.across` },
    along: { name: `Behind the front, point ${k + 1}`, value: along, path: `bridge.points.${id}.along` },
    corner: { name: `Point ${k + 1}: 1 for a corner, 0 where the outline is smooth`, value: turn === 'corner' ? 1 : 0 },
  }));
  const image =
    bridge.mirrored === 'yes'
      ? own
          .filter(({ across }) => across.value !== 0)
          .toReversed()
          .map(({ across, along, corner }) => ({
            across: { name: `${across.name}, mirrored`, value: -across.value },
            along: { name: `${along.name}, mirrored`, value: along.value },
            corner: { name: `${corner.name}, mirrored`, value: corner.value },
          }))
      : [];
  return Object.fromEntries(
    [...own, ...image].flatMap(({ across, along, corner }, k): (readonly [string, Given])[] => [
      [`a_${k + 1}`, { ...across, kind: 'length' }],
      [`s_${k + 1}`, { ...along, kind: 'length' }],
      [`c_${k + 1}`, { ...corner, kind: 'count' }],
    ]),
  );
};

/** How a free outline runs, as it stands behind what is taken round it. */
export const outlineRuns =
  'It runs through the points (a_k, s_k), of which those on one spot count once: from corner to corner (c_k = 1) on a centripetal Catmull–Rom curve, straight if no point is between; a curve’s first and last points are doubled, and without a corner it runs on round';

const size = (id: string, title: string, about: string, formula: string, of: 'length' | 'depth'): Figure => ({
  id,
  title,
  about,
  kind: 'length',
  per: 'job',
  value: ({ bridge }) => (bridge.footprint === 'free' ? bridge[of] : undefined),
  how: (job, design, k): How => ({
    formula: `${formula} round the outline, x across and y behind the front. ${outlineRuns}`,
    inputs: inputs(job, design, k, outlinePoints(job)),
    source: sources.freeCurve,
  }),
});

export const outlineLength = size(
  'outlineLength',
  'Length of the free outline',
  'How long the blank has to be, its middle on the centre line: twice what the outline reaches on the side on which it reaches farther.',
  'l = 2·max |x|',
  'length',
);

export const outlineDepth = size(
  'outlineDepth',
  'Depth of the free outline',
  'From the outline’s foremost place to its rearmost, along the guitar.',
  'd = max y − min y',
  'depth',
);

/** The bridge's length and depth: fields, or of a free outline what its points make of them. */
export const lengthOf = ({ bridge }: Settled): string | Figure =>
  bridge.footprint === 'free' ? outlineLength : 'bridge.length';
export const depthOf = ({ bridge }: Settled): string | Figure =>
  bridge.footprint === 'free' ? outlineDepth : 'bridge.depth';
