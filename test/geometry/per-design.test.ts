import { expect, it } from 'vitest';
import { bridgeVolume } from '../../geometry/bridge/volume.ts';
import { setAt } from '../../geometry/fields.ts';
import { perDesign } from '../../geometry/per-design.ts';
import { built, workedExample } from '../solved.ts';

const { job, design } = built(workedExample());
const edged = setAt(setAt(job, 'bridge.edge', 'chamfer'), 'bridge.edgeSize', 2) as typeof job;

it('works out once what is asked of the same job and design', () => {
  let asked = 0;
  const count = perDesign(() => {
    asked += 1;
    return {};
  });
  expect(count(job, design)).toBe(count(job, design));
  expect(asked).toBe(1);
});

it('works it out anew for another job with the same design', () => {
  const whole = bridgeVolume(job, design).wood;
  expect(bridgeVolume(edged, design).wood).toBeLessThan(whole);
  expect(bridgeVolume(job, design).wood).toBe(whole);
});
