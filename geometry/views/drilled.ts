import { pinHoles, ramps, stringWays } from '../bridge/pins.ts';
import type { Design } from '../design.ts';
import type { Mark } from '../drawing.ts';
import { showLine, stroke } from '../marks.ts';
import type { Settled } from '../settle.ts';
import { circle } from '../shape/arc.ts';

/** What holds the strings, from above: pin holes with their ramps; or, in hidden line, the holes in which strings without pins run to the back. */
export const drilled = (job: Settled, design: Design): readonly Mark[] => [
  ...pinHoles(job, design).map(({ id, at, diameter }) =>
    stroke(`pin.${id}`, circle(at, diameter / 2), {
      line: 'outline',
      purpose: 'drill',
      matter: 'hole',
      jobPath: 'pins.hole',
    }),
  ),
  ...ramps(job, design).map((ramp, k) =>
    stroke(`ramp.${design.strings[k]?.id}`, ramp, {
      line: 'thin',
      purpose: 'cut',
      matter: 'hole',
      jobPath: 'pins.ramp',
    }),
  ),
  ...stringWays(job, design).flatMap(({ id, from, to }) =>
    ([-1, 1] as const).map((side) => {
      const aside = (side * job.pins.hole) / 2;
      const word = side < 0 ? 'bass' : 'treble';
      return {
        ...showLine(`way.${id}.${word}`, { ...from, x: from.x + aside }, { ...to, x: to.x + aside }, 'hidden'),
        jobPath: 'pins.hole',
      };
    }),
  ),
];
