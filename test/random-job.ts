import fc from 'fast-check';
import { setAt } from '../geometry/fields.ts';
import type { Job } from '../geometry/job.ts';
import { workedExample } from './solved.ts';

/** Numbers and choices of a bridge that a bench could meet: mostly constructible, some not. */
const ranges: Readonly<Record<string, fc.Arbitrary<number | string>>> = {
  hand: fc.constantFrom('right', 'left'),
  'guitar.scale': fc.double({ min: 560, max: 700, noNaN: true }),
  'guitar.neckPlaneHeight': fc.double({ min: 8, max: 13, noNaN: true }),
  'guitar.rise': fc.double({ min: 0, max: 2, noNaN: true }),
  'guitar.relief': fc.double({ min: 0, max: 0.4, noNaN: true }),
  'guitar.topRadius': fc.oneof(fc.constant('flat'), fc.double({ min: 3000, max: 20000, noNaN: true })),
  'action.bass': fc.double({ min: 1.8, max: 4, noNaN: true }),
  'action.treble': fc.double({ min: 1.4, max: 3.2, noNaN: true }),
  'strings.spacing': fc.constantFrom('centres', 'gaps'),
  'strings.spread': fc.double({ min: 48, max: 62, noNaN: true }),
  'bridge.footprint': fc.constantFrom('belly', 'rectangle'),
  'bridge.length': fc.double({ min: 120, max: 190, noNaN: true }),
  'bridge.depth': fc.double({ min: 28, max: 45, noNaN: true }),
  'bridge.thickness': fc.double({ min: 6, max: 11, noNaN: true }),
  'bridge.topRadius': fc.oneof(fc.constant('flat'), fc.double({ min: 250, max: 1000, noNaN: true })),
  'bridge.tilt': fc.double({ min: -0.01, max: 0.01, noNaN: true }),
  'bridge.deckWidth': fc.double({ min: 78, max: 115, noNaN: true }),
  'bridge.tipThickness': fc.double({ min: 2, max: 5, noNaN: true }),
  'bridge.wing': fc.constantFrom('hollow', 'straight'),
  'slot.width': fc.double({ min: 2.2, max: 6.5, noNaN: true }),
  'slot.length': fc.double({ min: 70, max: 90, noNaN: true }),
  'slot.depth': fc.double({ min: 3, max: 6, noNaN: true }),
  'slot.line': fc.constantFrom('least', 'outer'),
  'saddle.crown': fc.constantFrom('best', 'gauge', 'heights'),
  'saddle.play': fc.double({ min: 0, max: 0.2, noNaN: true }),
  'saddle.under': fc.constantFrom(0, 1.2),
  'strings.setbacks': fc.constantFrom('typed', 'computed'),
  'pins.row': fc.constantFrom('square', 'slanted'),
  'pins.fromSaddle': fc.double({ min: 8, max: 15, noNaN: true }),
  'strings.list.E2.setback': fc.double({ min: 0, max: 6, noNaN: true }),
  'strings.list.E4.setback': fc.double({ min: 0, max: 4, noNaN: true }),
};

const paths = Object.keys(ranges);

/** The worked example with some of its numbers drawn anew. */
export const randomJob = (): fc.Arbitrary<Job> =>
  fc
    .record(ranges)
    .map((values) =>
      paths.reduce(
        (job, path) => setAt(job, path, values[path] as number | string),
        setAt(workedExample(), 'pins.leaves', 'pins'),
      ),
    );
