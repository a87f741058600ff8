import type { Job } from '../job.ts';
import { found, type Problem } from '../problem.ts';
import type { SayLength } from './footprints/say-length.ts';

/** What keeps the pin row's numbers from making a row; empty where they make one. */
export const rowProblems = ({ pins, strings }: Job, mm: SayLength): readonly Problem[] =>
  found(
    pins.row === 'arc' &&
      2 * Math.abs(pins.arcRise) >= pins.spread && {
        path: 'pins.arcRise',
        value: pins.arcRise,
        says: `A row ${mm(pins.spread)} wide on an arc of ${mm(Math.abs(pins.arcRise))} would be more than half a circle. Make its sagitta less than ${mm(pins.spread / 2, 'down')}.`,
      },
    strings.courses === 'pairs' &&
      pins.hold === 'pins' &&
      pins.secondAside >= pins.spread && {
        path: 'pins.secondAside',
        value: pins.secondAside,
        says: `A second row ${mm(pins.secondAside)} aside leaves nothing of a pin spread of ${mm(pins.spread)}. Make it less than ${mm(pins.spread, 'down')}.`,
      },
  );
