import { formatQuantity } from '../../../geometry/units.ts';
import { middleString } from '../../../geometry/views/middle.ts';
import { firstWords as words } from '../first-words.ts';
import type { Built } from '../store.ts';

/** What each view shows, in a sentence with its numbers in the reader's unit. */
export const sayViews = ({ job, design }: Built) => {
  const length = (value: number) => formatQuantity(value, 'length', job.show, { unit: true });
  const string = middleString(design);
  return {
    above: words.sheet.aboveSays(length(job.bridge.length), length(job.bridge.depth), length(design.saddleLine.x)),
    tail: words.sheet.gaps(design.strings.map((s) => [s.name, length(s.exposure)])),
    middle: words.sheet.middleSays(
      length(job.bridge.thickness),
      length(design.straightedgeClearance),
      string.name,
      formatQuantity(string.breakAngle, 'angle', job.show, { unit: true }),
    ),
  };
};
