import type { Job, JobString } from '../job.ts';
import { heardShift, stretchSetback } from './intonation.ts';

/**
 * The setback that each string asks for, mm: as typed; or from stretch and stiffness with the finger's allowance; or from where the break point is now and the cents heard
 * there (as typed where nothing was heard). `action` is the string's height over fret 12, mm.
 */
export const neededSetback = (
  strings: Pick<Job['strings'], 'setbacks' | 'finger'>,
  string: JobString,
  scale: number,
  action: number,
): number => {
  switch (strings.setbacks) {
    case 'typed':
      return string.setback;
    case 'computed':
      return stretchSetback(string, scale, action) + strings.finger;
    case 'heard':
      return string.setback + (typeof string.cents === 'number' ? heardShift(scale, string.setback, string.cents) : 0);
  }
};
