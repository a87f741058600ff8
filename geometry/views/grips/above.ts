import type { Design, SolvedString } from '../../design.ts';
import type { Settled } from '../../settle.ts';
import { outlineGrips } from './footprint.ts';
import { acrossPage, downPage, even, type Grip, gripsForHand } from './grip.ts';
import { pointGrips } from './points.ts';

/** How far out on a slot, as a share of its length, its slant is taken hold of. */
const slantAt = -0.42;

/** The slot: its end, and where it is measured its place and its slant. */
const slotGrips = (job: Settled, { saddleLine, datum }: Design): readonly Grip[] => {
  const { slot } = job;
  const cos = 1 / Math.hypot(1, saddleLine.slant);
  const axis = { x: cos, y: saddleLine.slant * cos };
  const isMeasured = job.work === 'saddle' || slot.line === 'typed';
  const out = slantAt * slot.length;
  return [
    ...(slot.ends === 'through'
      ? []
      : [
          even({
            id: 'slot.length',
            jobPath: 'slot.length',
            at: { x: (axis.x * slot.length) / 2, y: saddleLine.x + (axis.y * slot.length) / 2 },
            axis,
            now: slot.length,
            rate: 2,
          }),
        ]),
    ...(isMeasured
      ? [
          even({
            id: 'slot.fromNut',
            jobPath: 'slot.fromNut',
            at: { x: 0, y: datum.x },
            axis: downPage,
            now: slot.fromNut,
          }),
          even({
            id: 'slot.slant',
            jobPath: 'slot.slant',
            at: { x: out, y: datum.x + datum.slant * out },
            axis: downPage,
            now: slot.slant,
            rate: 1 / out,
          }),
        ]
      : []),
  ];
};

/** The pin row, or the holes in its place: its distance, its spread, and the bow or the second row that it may have. */
const pinGrips = (job: Settled, { datum, strings }: Design): readonly Grip[] => {
  const { pins } = job;
  const [bass, treble] = [strings[0] as SolvedString, strings.at(-1) as SolvedString];
  const second = strings[1];
  return [
    even({
      id: 'pins.fromSaddle',
      jobPath: 'pins.fromSaddle',
      // A row that is bowed is bowed by its outer pins.
      at: pins.row === 'arc' ? { x: 0, y: datum.x + pins.fromSaddle } : bass.pin,
      axis: downPage,
      now: pins.fromSaddle,
    }),
    even({ id: 'pins.spread', jobPath: 'pins.spread', at: treble.pin, axis: acrossPage, now: pins.spread, rate: 2 }),
    ...(pins.row === 'arc'
      ? [
          even({
            id: 'pins.arcRise',
            jobPath: 'pins.arcRise',
            at: bass.pin,
            axis: downPage,
            now: pins.arcRise,
            rate: -1,
          }),
        ]
      : []),
    ...(pins.hold === 'pins' && job.strings.courses === 'pairs' && second
      ? [
          even({
            id: 'pins.secondRow',
            jobPath: 'pins.secondRow',
            at: second.pin,
            axis: downPage,
            now: pins.secondRow,
          }),
        ]
      : []),
  ];
};

/** The break points that the two outer strings ask for, where their setbacks are typed and the slot's line goes by them. */
const setbackGrips = ({ strings, slot, guitar }: Settled, design: Design): readonly Grip[] =>
  strings.setbacks !== 'typed' || slot.line === 'typed'
    ? []
    : [design.strings[0] as SolvedString, design.strings.at(-1) as SolvedString].map((s) =>
        even({
          id: `setback.${s.id}`,
          jobPath: `strings.list.${s.id}.setback`,
          at: { x: s.acrossAtSaddle, y: guitar.scale + s.neededSetback },
          axis: downPage,
          now: s.neededSetback,
        }),
      );

/** Where across the front edge is taken hold of: on the centre line where it is measured there and runs elsewhere beside it, else clear of what stands in the middle. */
const frontAt = ({ bridge }: Settled): number =>
  bridge.footprint === 'belly' || bridge.footprint === 'rectangle' || bridge.footprint === 'pyramid'
    ? -bridge.length / 4
    : 0;

/** Where the bridge is taken hold of from above; places as in that view. */
export const aboveGrips = (job: Settled, design: Design): readonly Grip[] => {
  const { bridge } = job;
  return gripsForHand(
    [
      ...(bridge.footprint === 'free' ? pointGrips(job, design) : outlineGrips[bridge.footprint](job, design)),
      even({
        id: 'frontToSaddle',
        jobPath: 'bridge.frontToSaddle',
        at: { x: frontAt(job), y: design.datum.x - bridge.frontToSaddle },
        axis: downPage,
        now: bridge.frontToSaddle,
        rate: -1,
      }),
      ...slotGrips(job, design),
      ...pinGrips(job, design),
      ...setbackGrips(job, design),
    ],
    job,
  );
};
