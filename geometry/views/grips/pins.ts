import type { Design, SolvedString } from '../../design.ts';
import { courseCount } from '../../instrument/courses.ts';
import type { Settled } from '../../settle.ts';
import { acrossPage, downPage, even, type Grip } from './grip.ts';

/** The second row of pins that strings in pairs have: how far it stands behind the first, and aside of it. */
const secondRowGrips = ({ pins, strings }: Settled, design: Design): readonly Grip[] => {
  const [, first, , aside, , later] = design.strings;
  // Clear of the first row's own grip, where there are enough of them.
  const behind = later ?? first;
  if (pins.hold !== 'pins' || strings.courses !== 'pairs' || behind === undefined) return [];
  // What the row goes aside is taken from the spread, and so from each step between the courses.
  const steps = courseCount(strings) - 1;
  return [
    even({
      id: 'pins.secondRow',
      jobPath: 'pins.secondRow',
      at: behind.pin,
      axis: downPage,
      now: pins.secondRow,
    }),
    ...(aside && steps > 1
      ? [
          even({
            id: 'pins.secondAside',
            jobPath: 'pins.secondAside',
            at: aside.pin,
            axis: acrossPage,
            now: pins.secondAside,
            rate: steps / (steps - 1),
          }),
        ]
      : []),
  ];
};

/** The beginning of one string's ramp, along which it is as long as all. */
const rampGrips = ({ pins }: Settled, { strings }: Design): readonly Grip[] => {
  const string = strings[Math.floor(strings.length / 2)];
  if (pins.hold !== 'pins' || pins.ramp === 'none' || string === undefined) return [];
  const { pin, acrossAtSaddle, breakX } = string;
  const far = Math.hypot(acrossAtSaddle - pin.x, breakX - pin.y);
  const axis = { x: (acrossAtSaddle - pin.x) / far, y: (breakX - pin.y) / far };
  const out = pins.hole / 2 + pins.ramp;
  return [
    even({
      id: 'pins.ramp',
      jobPath: 'pins.ramp',
      at: { x: pin.x + out * axis.x, y: pin.y + out * axis.y },
      axis,
      now: pins.ramp,
    }),
  ];
};

/** The pin row, or the holes in its place: its distance, its spread, and the bow, the second row or the ramps that it may have. */
export const pinGrips = (job: Settled, design: Design): readonly Grip[] => {
  const { pins } = job;
  const { strings } = design;
  const [bass, inner, treble] = [strings[0], strings[2], strings.at(-1)] as [SolvedString, SolvedString, SolvedString];
  return [
    even({
      id: 'pins.fromSaddle',
      jobPath: 'pins.fromSaddle',
      // A row that is bowed is bowed by its outer pins.
      at: (pins.row === 'arc' ? inner : bass).pin,
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
    ...secondRowGrips(job, design),
    ...rampGrips(job, design),
  ];
};
