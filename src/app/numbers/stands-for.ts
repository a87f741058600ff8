import { footprints } from '../../../geometry/bridge/footprints/index.ts';
import { levelRadius } from '../../../geometry/bridge/wings/hollow.ts';
import type { Job } from '../../../geometry/job.ts';
import { sagitta } from '../../../geometry/shape/sagitta.ts';
import { settledNumber } from './settled.ts';

/** The radius of the hollow wings that run out level at the tips, rounded up to a millimetre so that neither goes deeper than its tip. */
const levelScoop = ({ bridge, guitar }: Job): number => {
  const { deckWidth, topRadius, thickness, tilt, tipThickness, tipTreble } = bridge;
  const { length } = footprints[bridge.footprint].size?.(bridge) ?? bridge;
  const tip = Math.max(tipThickness, tipTreble === 'same' ? tipThickness : tipTreble);
  const shoulder = thickness - sagitta(topRadius, deckWidth) - Math.abs(tilt) * (deckWidth / 2);
  const fall = shoulder + sagitta(guitar.topRadius, length) - tip;
  return Math.ceil(levelRadius({ width: (length - deckWidth) / 2, fall: Math.max(fall, 0.1) }));
};

/** The number that a word means in this job, where it is a plain other number of it, mm. */
const means: Readonly<Record<string, (job: Job) => number>> = {
  'bridge.tipTreble': ({ bridge }) => bridge.tipThickness,
  'bridge.scoop': levelScoop,
  'show.sectionAlong': ({ bridge }) => bridge.frontToSaddle,
  'pins.leaves': ({ pins }) => pins.fromSaddle - pins.hole / 2,
};

/** What a word in a field stands for: the number that the readings give, or another one of the job; undefined where it is neither. */
export const standsFor = (job: Job, path: string): number | undefined => settledNumber(job, path) ?? means[path]?.(job);
