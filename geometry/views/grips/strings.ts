import type { Design, SolvedString } from '../../design.ts';
import { acrossAt } from '../../saddle/heights.ts';
import type { Settled } from '../../settle.ts';
import type { Point } from '../../shape/types.ts';
import { acrossPage, downPage, even, type Grip } from './grip.ts';
import { sought } from './sought.ts';

/** How far before the bridge's front edge a string is taken hold of to be moved aside, mm. */
const beforeFront = 6;

/** Where a string is taken hold of before the bridge. */
const before = ({ strings, bridgeFront }: Design, k: number): Point => {
  const y = bridgeFront - beforeFront;
  return { x: acrossAt(strings.at(k) as SolvedString, y), y };
};

/** The strings where they come over the bridge's front: each by itself where their places are typed, else all of them by the treble one. */
const placeGrips = (job: Settled, design: Design): readonly Grip[] =>
  job.strings.spacing === 'typed'
    ? job.strings.list.map(({ id, saddlePlace }, k) =>
        sought(job, design, {
          id: `saddlePlace.${id}`,
          jobPath: `strings.list.${id}.saddlePlace`,
          place: (made) => before(made, k),
          axis: acrossPage,
          now: saddlePlace,
          slope: 1,
        }),
      )
    : [
        sought(job, design, {
          id: 'strings.spread',
          jobPath: 'strings.spread',
          place: (made) => before(made, -1),
          axis: acrossPage,
          now: job.strings.spread,
          slope: 0.5,
        }),
      ];

/** Whether this string's setback moves the slot's line: on a line through the outer strings only theirs do. */
const counts = (job: Settled, k: number): boolean =>
  job.slot.line === 'least' || k === 0 || k === job.strings.list.length - 1;

/** The break points that the strings ask for, where their setbacks are typed and the slot's line goes by them. */
const setbackGrips = (job: Settled, design: Design): readonly Grip[] =>
  job.strings.setbacks !== 'typed' || job.slot.line === 'typed'
    ? []
    : design.strings
        .filter((_, k) => counts(job, k))
        .map((s) =>
          even({
            id: `setback.${s.id}`,
            jobPath: `strings.list.${s.id}.setback`,
            at: { x: s.acrossAtSaddle, y: job.guitar.scale + s.neededSetback },
            axis: downPage,
            now: s.neededSetback,
          }),
        );

/** The strings from above: where each runs across, and where it breaks. */
export const stringGrips = (job: Settled, design: Design): readonly Grip[] => [
  ...placeGrips(job, design),
  ...setbackGrips(job, design),
];
