import { describe, expect, it } from 'vitest';
import type { Finding, Level } from '../../geometry/checks/check.ts';
import type { CheckId } from '../../geometry/checks/ranges.ts';
import { findingsOf } from '../../src/app/findings/findings-of.ts';
import { heldFindings, inOrder } from '../../src/app/findings/held-findings.ts';
import { starters } from '../../src/jobs/index.ts';
import { built, jobOf } from '../solved.ts';

const demo = findingsOf(built(jobOf(starters[0]?.text ?? '')));

/** What the demo's checks find, but for the levels named. */
const found = (levels: Readonly<Partial<Record<CheckId, Level>>> = {}): readonly Finding[] =>
  demo.map((finding) => ({ ...finding, level: levels[finding.check] ?? finding.level }));

describe('what is found while a hand drags a number', () => {
  it('stays in the order, and among those that are not right, as where the hand began', () => {
    const held = heldFindings(undefined, found(), found({ exposure: 'right' }).toReversed());
    expect(held.open.has('exposure')).toBe(true);
    expect(inOrder(held.findings, held.order).map(({ check }) => check)).toEqual(demo.map(({ check }) => check));
  });

  it('has among them what was not right anywhere on the hand’s way, and is the same list while nothing comes to it', () => {
    const first = heldFindings(undefined, found(), found({ inSlot: 'wrong' }));
    const next = heldFindings(first, found(), found());
    expect(first.open.has('inSlot')).toBe(true);
    expect(next.open).toBe(first.open);
    expect(heldFindings(next, found(), found({ firstFret: 'doubtful' })).open.has('firstFret')).toBe(true);
  });

  it('has last what a check finds that found nothing before', () => {
    const [first] = demo;
    const without = demo.slice(1);
    expect(
      inOrder(
        demo,
        without.map(({ check }) => check),
      ).at(-1),
    ).toBe(first);
  });
});
