import { nearestGauge } from '../../../geometry/saddle/gauges.ts';
import type { CrownFit } from '../../../geometry/saddle/radius.ts';
import type { Built } from '../state.ts';
import { words } from '../words.ts';
import { isOwn, missText } from './gauge-text.ts';
import { neckOf } from './neck-of.ts';

const says = words.outcome;

/** The gauge in the reader's unit that is nearest to the crown. */
export const ownGauge = ({ job, design }: Built): CrownFit | undefined =>
  nearestGauge(design.gauges.filter(({ radius }) => isOwn(radius, job.show)));

/** What is said under a figure of the whole job, by its id, where something is. */
export const factSays: Readonly<Record<string, (built: Built) => string>> = {
  straightedgeClearance: ({ job, design }) =>
    says.clearance(design.straightedgeClearance < 0 ? 'meets' : 'clears', neckOf(job)?.says),
  bestRadius: ({ job, design }) => says.crownMiss(missText(design.crown.worst, job.show)),
  nearestGauge: ({ job, design }) => says.gaugeMiss(missText(design.nearestGauge.worst, job.show)),
  ownGauge: (built) => says.gaugeMiss(missText(ownGauge(built)?.worst ?? 0, built.job.show)),
  saddleLineFromNut: () => says.fromNutSays,
  saddleSlant: () => says.slantSays,
};
