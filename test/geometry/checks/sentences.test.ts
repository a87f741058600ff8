import { describe, expect, test } from 'vitest';
import { build } from '../../../geometry/build.ts';
import type { Finding } from '../../../geometry/checks/check.ts';
import { findings } from '../../../geometry/checks/findings.ts';
import type { CheckId } from '../../../geometry/checks/ranges.ts';
import type { Job } from '../../../geometry/job.ts';
import { solved, workedExample } from '../../solved.ts';
import { type Put, put } from './jobs.ts';

const foundIn = (job: Job, ...puts: readonly Put[]): readonly Finding[] => {
  const result = build(put(job, ...puts));
  if (!result.ok) throw new Error(result.problems.map(({ says }) => says).join('\n'));
  return findings(result.job, result.design);
};

const says = (id: CheckId, ...puts: readonly Put[]): string | undefined =>
  foundIn(workedExample(), ...puts).find(({ check }) => check === id)?.says;

describe('sentences', () => {
  test('the worked example’s two bass strings are doubtful, and the saddle’s share in the slot at E2', () => {
    const open = foundIn(workedExample()).filter(({ level }) => level !== 'right');
    expect(open.map(({ level, says, range }) => [level, says, range])).toEqual([
      ['doubtful', 'Saddle stands out by 4.65 mm at E2 and 4.59 mm at A2', 'usual 2.0 to 4.5 mm'],
      ['doubtful', 'Of the saddle’s height, in the slot: 47.7 % at E2', 'at least 50 %'],
    ]);
  });

  test('the worst stand first, equally grave ones in the checks’ order', () => {
    const found = foundIn(workedExample(), ['bridge.tipThickness', 1.9], ['pins.fromSaddle', 6.8]);
    expect(found.slice(0, 5).map(({ check, level }) => `${check} ${level}`)).toEqual([
      'tip wrong',
      'exposure doubtful',
      'inSlot doubtful',
      'pinWood doubtful',
      'straightedge right',
    ]);
  });

  test('speak in the reader’s unit, and keep a number on its own side of the limit shown', () => {
    expect(says('exposure', ['show.length', 'in'])).toBe('Saddle stands out by 0.183 in at E2 and 0.181 in at A2');
    const e2 = solved(workedExample()).strings[0]?.exposure ?? 0;
    const over = 9.3 + e2 - 4.5004;
    expect(says('exposure', ['bridge.thickness', over])).toBe('Saddle stands out by 4.5004 mm at E2');
    const own: Put = ['limits.exposure', { doubtfulFrom: 1.5, from: 2, to: 4.5, doubtfulTo: 5.5 }];
    expect(says('exposure', ['bridge.thickness', over], ['show.length', 'in'], own)).toBe(
      'Saddle stands out by 0.1772 in at E2',
    );
    const under = 9.3 + e2 - 4.4996;
    expect(says('exposure', ['bridge.thickness', under], ['show.length', 'in'], own)).toMatch(/ to 0\.177 in$/);
    expect(says('exposure', ['bridge.thickness', under])).toMatch(/ to 4\.4996 mm$/);
    expect(says('thickness', ['bridge.thickness', 6.999], ['show.length', 'fraction'])).toBe(
      'Bridge 0.2756 in thick at the centre',
    );
  });

  test('write all their numbers alike in a job in fractions: so where each is one, else in decimals', () => {
    const fractions = ['show.length', 'fraction'] as const;
    const inch = 25.4;
    const thick = (...puts: readonly Put[]) => {
      const found = foundIn(workedExample(), fractions, ['bridge.thickness', (23 / 64) * inch], ...puts);
      const { says, range } = found.find(({ check }) => check === 'thickness') ?? { says: '', range: '' };
      return [says, range];
    };
    // Common practice runs from 7 to 10.5 mm: about 9/32 and 13/32 in.
    expect(thick()).toEqual(['Bridge 23/64 in thick at the centre', 'usual 9/32 to 13/32 in']);
    expect(thick(['bridge.thickness', 0.365 * inch])).toEqual([
      'Bridge 0.365 in thick at the centre',
      'usual 0.275 to 0.415 in',
    ]);
    const own = (from: number, to: number): Put => [
      'limits.thickness',
      { doubtfulFrom: (1 / 4) * inch, from: from * inch, to: to * inch, doubtfulTo: inch / 2 },
    ];
    expect(thick(own(5 / 16, 3 / 8))).toEqual(['Bridge 23/64 in thick at the centre', 'your range 5/16 to 3/8 in']);
    // Its own range from 0.360 in is no 64th.
    expect(thick(own(0.36, 3 / 8))).toEqual(['Bridge 0.359 in thick at the centre', 'your range 0.360 to 0.375 in']);
    // No sentence of any job mixes both.
    for (const { says, range } of foundIn(workedExample(), fractions)) {
      const said = `${says}, ${range}`;
      expect(/\d\/\d/.test(said) && /\d\.\d+ in\b/.test(said), said).toBe(false);
    }
  });

  test('say usual ranges in numbers that are round in the reader’s unit, unless one of theirs would then stand on another side', () => {
    const inch = 25.4;
    const range = (id: CheckId, unit: string, ...puts: readonly Put[]) =>
      foundIn(workedExample(), ['show.length', unit], ...puts).find(({ check }) => check === id)?.range;
    expect(range('pinGap', 'in')).toBe('at least 0.120 in');
    expect(range('saddleEnd', 'in')).toBe('usual 0.235 to 0.650 in');
    // 4.5 mm, about 0.175 in, are right: so is D3 with 4.47 mm.
    expect(range('exposure', 'in')).toBe('usual 0.080 to 0.177 in');
    expect(range('firstFret', 'in')).toBe('usual 0.012 to 0.024 in');
    expect(range('actionBass', 'fraction', ['action.bass', (3 / 32) * inch])).toBe('usual 5/64 to 7/64 in');
    // 7 mm are right: so is 7.1 mm, near 9/32 in, and 6.99 mm is not, though it is more than 0.275 in.
    const thick = (value: number): readonly Put[] => [
      ['bridge.thickness', value],
      ['slot.depth', 3],
    ];
    expect(range('thickness', 'fraction', ...thick(7.1))).toBe('usual 0.275 to 0.415 in');
    expect(range('thickness', 'fraction', ...thick(6.99))).toBe('usual 0.276 to 0.415 in');
    // The job’s own limits stand as they are.
    expect(range('exposure', 'in', ['limits.exposure', { to: 4.6 }])).toBe('your range 0.080 to 0.181 in');
  });

  test('name the readings that contradict each other, and by how much', () => {
    const inch = 25.4;
    const old = (strung: Readonly<Record<string, number>>): readonly Put[] =>
      Object.entries(strung).map(([key, value]) => [`strung.${key}`, value]);
    // 11/32 in of bridge under a straightedge that would run 1/32 in below its top: 5/16 in, where 13/32 in were read strings off.
    const light: readonly Put[] = [
      ['guitar.rise', 'readings'],
      ['guitar.neckPlaneHeight', (13 / 32) * inch],
      ...old({ thickness: (11 / 32) * inch, light: -inch / 32 }),
    ];
    expect(says('rise', ...light)).toBe(
      'Rise under tension 2.38 mm, by the readings: straightedge to top 10.32 mm, but the old bridge, 8.73 mm, with its light, −0.79 mm, makes 7.94 mm',
    );
    expect(says('rise', ...light, ['guitar.neckPlaneHeight', 8.9])).toBe('Rise under tension 0.96 mm, by the readings');

    // The strung guitar of the settling tests, whose saddle and action put the plane at 9.3 + 4.4 − 4.13 mm.
    const strung = old({
      thickness: 9.3,
      exposure: 4.4,
      actionBass: 2.5,
      actionTreble: 1.9,
      firstFretBass: 0.5,
      firstFretTreble: 0.3,
      relief: 0,
      light: -0.3,
    });
    expect(says('rise', ['guitar.rise', 'readings'], ['guitar.neckPlaneHeight', 12], ...strung)).toMatch(
      /^Rise under tension 2\.\d+ mm, by the readings: straightedge to top 12\.0 mm, but old bridge, saddle and action, at pitch, make 9\.\d+ mm$/,
    );
    expect(says('neckPlane', ...strung)).toMatch(
      /^Straightedge and strung guitar lie 0\.\d+ mm apart: the old bridge with its light makes 9\.0 mm, with saddle and action 9\.\d+ mm$/,
    );
  });

  test('say where a number comes from', () => {
    expect(says('rise')).toBe('Rise under tension 0.5 mm');
    expect(says('rise', ['guitar.rise', 'readings'])).toBe('Rise under tension 0.7 mm, assumed');
    expect(says('rise', ['guitar.rise', 'readings'], ['strung.thickness', 9], ['strung.light', 0.2])).toBe(
      'Rise under tension 0.8 mm, by the readings',
    );
  });

  test('name the strings that cannot be reached and the thickness that would do', () => {
    const typed: readonly Put[] = [
      ['slot.line', 'typed'],
      ['slot.fromNut', 643],
      ['slot.slant', 0],
      ['slot.width', 2.85],
      ['saddle.play', 0.05],
    ];
    // A saddle of 2.8 carries 1 mm to each side of 643: E2 needs 644, so does not miss; E4 needs 641.8 and A2 643.2.
    expect(says('intonation', ...typed)).toBe(
      'Break point off the crown by 0.2 mm at E4: a saddle 3.2 mm thick along this line would carry them all',
    );
    expect(says('intonation')).toBe('Every break point lies on the crown, clear of its edges');
  });

  test('say a neck reset rather than a bridge, with what it takes', () => {
    const low: readonly Put[] = [
      ['guitar.neckPlaneHeight', 5.9],
      ['bridge.thickness', 6.5],
      ['slot.depth', 3.5],
    ];
    // To 9.25 (8.75 with 0.5 of light) the plane comes up by 3.35; the joint is 640·2^(−14/12) = 285.1 before the scale’s end.
    expect(says('neck', ...low)).toBe(
      'A bridge about 5.4 mm thick would suit the neck: a neck reset rather than a bridge, by 0.7°, 1.06 mm off the heel',
    );
  });

  test('tell bare scar from scar that is hardly covered', () => {
    const scar: readonly Put[] = [
      ['scar.outline', 'rectangle'],
      ['bridge.footprint', 'rectangle'],
      ['scar.length', 153],
      ['scar.depth', 30],
      ['slot.line', 'typed'],
      ['slot.fromNut', 643],
      ['slot.slant', 0],
      ['scar.fromNut', 633.5],
    ];
    // The front edge lies at 643 − 9.6 = 633.4, the tips at 76 of 76.5.
    expect(says('scar', ...scar)).toMatch(
      /^Bare scar shows, 0\.5 mm at each tip; the old scar is covered by only 0\.1 mm at the front edge$/,
    );
    expect(says('scar')).toBeUndefined();
    // Where it lies far beyond the rear edge, its corners do too: that is told of that edge, and of the tips no more than they miss.
    expect(says('scar', ...scar, ['scar.depth', 60])).toMatch(
      /^Bare scar shows, [\d.]+ mm at the rear edge, 0\.5 mm at each tip; the old scar/,
    );

    // A bridge whose treble half is half a millimetre shorter.
    const corner = (id: string, across: number, along: number) => ({ id, across, along, turn: 'corner' });
    const uneven: readonly Put[] = [
      ['bridge.footprint', 'free'],
      ['bridge.mirrored', 'no'],
      ['bridge.points', [corner('a', -76, 0), corner('b', 75.5, 0), corner('c', 75.5, 36), corner('d', -76, 36)]],
    ];
    expect(says('scar', ...scar, ...uneven)).toMatch(
      /^Bare scar shows, 1\.0 mm at the treble tip, 0\.5 mm at the bass tip; the old scar/,
    );
  });

  test('a bridge that stays is still looked at', () => {
    const stays = foundIn(workedExample(), ['work', 'saddle'], ['bridge.tipThickness', 1.5]);
    expect(stays.find(({ check }) => check === 'tip')?.level).toBe('wrong');
  });
});
