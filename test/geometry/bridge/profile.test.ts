import { describe, expect, it } from 'vitest';
import { endProfile, hollowRadius, profileHeights } from '../../../geometry/bridge/profile.ts';
import { setAt } from '../../../geometry/fields.ts';
import { tangentOn } from '../../../geometry/shape/index.ts';
import { built, workedExample } from '../../solved.ts';

describe('the end profile', () => {
  const job = workedExample();

  it('keeps the deck, the dome and the hollow wings as exact arcs of their radii', () => {
    const { shoulderBass, tipTop } = profileHeights(job);
    const wing = hollowRadius((job.bridge.length - job.bridge.deckWidth) / 2, shoulderBass - tipTop);
    const radii = endProfile(job).segments.flatMap((s) => (s.kind === 'arc' ? [s.radius] : []));
    expect(radii).toHaveLength(4);
    expect(radii[0]).toBeCloseTo(wing, 9);
    expect(radii[1]).toBeCloseTo(508, 9);
    expect(radii[2]).toBeCloseTo(wing, 9);
    expect(radii[3]).toBeCloseTo(7600, 6);
  });

  it('lets a hollow wing run out level at the tip', () => {
    const [, wing] = endProfile(job).segments;
    if (wing?.kind !== 'arc') throw new Error('no wing');
    expect(tangentOn(wing, 0).y).toBeCloseTo(0, 9);
  });

  it('is straight where it is asked to be straight', () => {
    const straight = setAt(
      setAt(setAt(job, 'bridge.wing', 'straight'), 'bridge.topRadius', 'flat'),
      'guitar.topRadius',
      'flat',
    );
    expect(endProfile(built(straight).job).segments.every((s) => s.kind === 'line')).toBe(true);
  });

  it('is as thick at its tips as it was told', () => {
    const { tipTop, tipUnderside } = profileHeights(job);
    expect(tipTop - tipUnderside).toBeCloseTo(job.bridge.tipThickness, 12);
  });
});
