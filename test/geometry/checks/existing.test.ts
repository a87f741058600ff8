// What the checks say of what is there already, and what is advised.
import { describe, expect, test } from 'vitest';
import { advise } from '../../../geometry/checks/advise.ts';
import type { Finding } from '../../../geometry/checks/check.ts';
import { findings } from '../../../geometry/checks/findings.ts';
import type { CheckId } from '../../../geometry/checks/ranges.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { built, workedExample } from '../../solved.ts';
import { oldTop } from '../../templates/full-job.ts';
import { type Put, put } from './jobs.ts';

const finding = (job: Job, id: CheckId): Finding | undefined => {
  const solved = built(job);
  return findings(solved.job, solved.design).find(({ check }) => check === id);
};
const says = (id: CheckId, ...puts: readonly Put[]) => finding(put(oldTop(), ...puts), id)?.says;

describe('sentences', () => {
  test('none where nothing is there', () => {
    for (const id of ['keptHoles', 'pinsMeetHoles', 'bracesClear', 'topRise', 'registerPins', 'capGrain'] as const)
      expect(finding(workedExample(), id)).toBeUndefined();
  });

  test('name hole, brace and string', () => {
    expect(says('keptHoles', ['top.holes.right.across', 90])).toMatch(
      /^Wood round kept holes: −15\.5 mm at a screw hole for a register pin.*; one lies outside the footprint$/,
    );
    // E2's pin at −27.75 and 642.9 + 12.5 + 1.1, its old hole at −27.6 and 656.4; 1.5 mm farther back it lies behind.
    expect(says('pinsMeetHoles')).toBe('New pins meet the kept holes within 0.15 mm each way');
    expect(says('pinsMeetHoles', ['pins.fromSaddle', 14])).toMatch(
      /^New pins lie beside the kept holes: 1\.6 mm behind E2’s, .*, and others too$/,
    );
    expect(says('pinsMeetHoles', ['pins.spread', 57])).toMatch(/: 0\.9 mm to the bass of E2’s/);
    expect(says('bracesClear', ['top.braces.bass.width', 40])).toMatch(/ at main brace$/);
  });

  test('tell a belly from a dip, by the worst under the footprint only', () => {
    expect(says('topRise')).toBe('Under the bridge the top stands 0.8 mm above its dome');
    expect(says('topRise', ['top.rises.dip.height', -1.2])).toBe('Under the bridge the top dips 1.2 mm below its dome');
    expect(says('topRise', ['top.rises.belly.fromNut', 700])).toBe(
      'Under the bridge the top dips 0.4 mm below its dome',
    );
  });

  test('want two register pins', () => {
    expect(says('registerPins')).toBe('Register pins stand 116.0 mm apart');
    expect(says('registerPins', ['top.holes.left.plan', 'plug'])).toBe('Only one register pin');
    expect(finding(put(oldTop(), ['top.holes.left.plan', 'plug']), 'registerPins')?.level).toBe('wrong');
  });

  test('say how far the cap’s holes would have to be staggered', () => {
    // In a row slanted by 2.2 in 55.5 neighbours stand 0.44 apart square to a grain that runs across; 5 and 1 are wanted.
    expect(says('capGrain')).toBe(
      'Pin holes overlap by 4.56 mm along the cap’s grain: staggered 5.56 mm farther apart, to 6.0 mm, each would have grain lines of its own',
    );
    expect(says('capGrain', ['plate.grain', 'along'])).toBe(
      'Along the cap’s grain pin holes clear each other by 6.1 mm',
    );
  });
});

describe('advice', () => {
  const follow = (job: Job, id: CheckId) => {
    expect(finding(job, id)?.level).not.toBe('right');
    const ways = advise(job, id);
    expect(ways.length).toBeGreaterThan(0);
    for (const { changes } of ways) {
      const after = changes.reduce<Job>((changed, { path, value }) => setAt(changed, path, value), job);
      expect(finding(after, id)?.level ?? 'right').toBe('right');
    }
    return ways.map(({ changes }) => changes.map(({ path }) => path).join('+'));
  };

  test('brings the pins to the holes: along, across, and both together', () => {
    expect(follow(put(oldTop(), ['pins.fromSaddle', 14]), 'pinsMeetHoles')).toContain('pins.fromSaddle');
    expect(follow(put(oldTop(), ['pins.spread', 58]), 'pinsMeetHoles')).toContain('pins.spread');
    expect(follow(put(oldTop(), ['pins.spread', 58], ['pins.fromSaddle', 14]), 'pinsMeetHoles')).toContain(
      'pins.spread+pins.fromSaddle',
    );
  });

  test('brings the pins clear of a brace, the cap off it, and wood round a hole', () => {
    const brace = { id: 'a', name: '', across: -32, fromNut: 560, acrossTo: -32, fromNutTo: 760, width: 8 };
    expect(follow(put(oldTop(), ['top.braces', [brace]]), 'bracesClear')).toContain('pins.spread');
    const far = { ...brace, across: -44, acrossTo: -44 };
    expect(follow(put(oldTop(), ['top.braces', [far]]), 'capClear')).toContain('plate.length');
    expect(follow(put(oldTop(), ['plate.depth', 10]), 'capEdge')).toContain('plate.depth');
    expect(follow(put(oldTop(), ['top.holes.left.fromNut', 636.4]), 'keptHoles')).toContain('bridge.frontToSaddle');
  });
});
