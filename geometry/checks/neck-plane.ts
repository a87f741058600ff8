import { formatQuantity } from '../units.ts';
import type { Check } from './check.ts';

/** How far the neck plane's two readings on the strung guitar lie apart: by the old bridge, saddle and action, and by the straightedge. */
export const neckPlane: Check = {
  id: 'neckPlane',
  path: 'strung.light',
  facts: (_, { readings: { atPitch } }) =>
    atPitch.strung === undefined || atPitch.straightedge === undefined
      ? []
      : [{ value: Math.abs(atPitch.strung - atPitch.straightedge) }],
  says: ({ worst, say, level, job, design: { readings } }) => {
    const apart = `Straightedge and strung guitar lie ${say(worst.value)} apart`;
    if (level === 'right') return apart;
    const mm = (value = 0) => formatQuantity(value, 'length', job.show, { unit: true });
    const { straightedge, strung } = readings.atPitch;
    return `${apart}: the old bridge with its light makes ${mm(straightedge)}, with saddle and action ${mm(strung)}`;
  },
  means: { high: 'One of the readings is off: take them again before anything comes apart.' },
  aim: { to: 0.06 },
  fixes: [['strung.light'], ['strung.exposure'], ['strung.actionBass'], ['strung.actionTreble']],
};
