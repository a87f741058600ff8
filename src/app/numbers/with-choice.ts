import { setAt } from '../../../geometry/fields.ts';
import { withTypedPlaces } from '../../../geometry/instrument/spacing.ts';
import type { Job } from '../../../geometry/job.ts';
import { bothHalves, halfOutline, trebleOnly } from './points.ts';

/**
 * The job with a value put in, and with it what the value needs so that nothing moves: places typed begin where the strings are, a free outline begins as the present one, and each side's points
 * as they were mirrored.
 */
export const withChoice = (job: Job, path: string, value: number | string): Job => {
  const chosen = setAt(job, path, value);
  const { points, mirrored } = job.bridge;
  switch (`${path} ${value}`) {
    case 'strings.spacing typed':
      return job.strings.spacing === 'typed' ? chosen : withTypedPlaces(job);
    case 'bridge.footprint free': {
      const half = points.length > 0 ? [] : halfOutline(job.bridge);
      return half.length === 0 ? chosen : setAt(setAt(chosen, 'bridge.points', half), 'bridge.mirrored', 'yes');
    }
    case 'bridge.mirrored no':
      return mirrored === 'no' ? chosen : setAt(chosen, 'bridge.points', bothHalves(points));
    case 'bridge.mirrored yes':
      return mirrored === 'yes' ? chosen : setAt(chosen, 'bridge.points', trebleOnly(points));
    default:
      return chosen;
  }
};
