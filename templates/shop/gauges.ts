import * as z from 'zod/mini';
import { choice, listKey, number } from '../../geometry/schema/field.ts';

/** A radius that the bench wants a gauge of, whatever the job. */
const gauge = z.looseObject({
  id: listKey('this gauge'),
  radius: number({
    label: 'Radius',
    help: 'The radius of a gauge that is drawn with every job’s own.',
    kind: 'radius',
    min: 50,
    max: 50000,
  }),
});

/** Which radius gauges are drawn. */
export const gauges = z.looseObject({
  besides: choice(
    'Gauges besides the job’s own',
    'Which radius gauges are drawn besides those of the job, which are its board’s at the end, its bridge’s top, its saddle’s crown and its dome.',
    { none: 'none', inch: '7¼ to 20 in', metric: '200 to 500 mm', both: 'both' },
    'none',
  ),
  list: z.array(gauge).check(z.maxLength(40)),
});
