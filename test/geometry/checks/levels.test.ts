import { describe, expect, test } from 'vitest';
import { build } from '../../../geometry/build.ts';
import type { Finding, Level } from '../../../geometry/checks/check.ts';
import { findings } from '../../../geometry/checks/findings.ts';
import { checks } from '../../../geometry/checks/index.ts';
import { type CheckId, checkIds } from '../../../geometry/checks/ranges.ts';
import type { Job } from '../../../geometry/job.ts';
import { workedExample } from '../../solved.ts';
import { nylonJob, type Put, put } from './jobs.ts';

const foundIn = (job: Job): readonly Finding[] => {
  const solved = build(job);
  if (!solved.ok) throw new Error(solved.problems.map(({ says }) => says).join('\n'));
  return findings(solved.job, solved.design);
};

const finding = (job: Job, id: CheckId): Finding => {
  const found = foundIn(job).find(({ check }) => check === id);
  if (found === undefined) throw new Error(`Nothing is found by ${id}.`);
  return found;
};

/** The worked example with the wood that its two bass strings ask for, and a slot square to the centre line: every check is right. */
const sound = (): Job =>
  put(
    workedExample(),
    ['bridge.thickness', 9.5],
    ['slot.depth', 5.6],
    ['slot.line', 'typed'],
    ['slot.fromNut', 642.8],
    ['slot.slant', 0],
    ['slot.width', 3.3],
    ['saddle.play', 0.05],
    ...['E2', 'A2', 'D3', 'G3', 'B3', 'E4'].map((id): Put => [`strings.list.${id}.setback`, 2.5]),
    ['guitar.boardWidth', 54],
    ['plate.cap', 2],
    ['guitar.measured', measured(640)],
    ['scar.outline', 'rectangle'],
    ['scar.fromNut', 634.2],
    ['scar.length', 150],
    ['scar.depth', 22],
    [
      'top.holes',
      [...oldPins, hole('left', 'screw', -60, 645, 3, 'register'), hole('right', 'screw', 60, 645, 3, 'register')],
    ],
    ['top.rises', [{ id: 'a', across: 10, fromNut: 660, height: 0.2 }]],
    ['top.braces', [brace(90)]],
    ...strung,
    ['strung.light', light],
  );

const hole = (id: string, what: string, across: number, fromNut: number, diameter: number, plan: string) => ({
  id,
  what,
  across,
  fromNut,
  diameter,
  plan,
});
/** Where the new pins come: 55.5 apart, 12.5 behind the slot. */
const oldPins = [0, 1, 2, 3, 4, 5].map((k) => hole(`p${k}`, 'pin', -27.75 + 11.1 * k, 655.3, 5, 'keep'));
/** A brace 8 wide, along the guitar on the bass side. */
const brace = (aside: number) => ({
  id: 'b',
  name: 'bass brace',
  across: -aside,
  fromNut: 600,
  acrossTo: -aside,
  fromNutTo: 720,
  width: 8,
});

const measured = (scale: number) =>
  [5, 12, 19].map((fret) => ({ id: `f${fret}`, fret, distance: scale * (1 - 2 ** (-fret / 12)) }));

const misread = (by: number) =>
  measured(640).map((reading) => (reading.fret === 12 ? { ...reading, distance: reading.distance + by } : reading));

/** The strings' middle runs 0.4 over fret 1 and 2.5 over fret 12, less the board's sag there: by hand to the saddle. */
const strung: readonly Put[] = [
  ['strung.thickness', 9],
  ['strung.exposure', 4.5],
  ['strung.actionBass', 2.8],
  ['strung.actionTreble', 2.2],
  ['strung.firstFretBass', 0.45],
  ['strung.firstFretTreble', 0.35],
  ['strung.relief', 0],
];
const at = (fret: number) => 640 * (1 - 2 ** (-fret / 12));
const overOldSaddle = 0.4 + ((2.5 - 0.4) / (at(12) - at(1))) * (642.5 - at(1));
/** With so much light the straightedge agrees with the strings: `T + light = T + e − z_s`. */
const light = 4.5 - overOldSaddle;

interface Row {
  readonly doubtful: readonly Put[];
  readonly wrong: readonly Put[];
  /** What the deciding number is in each of the two, where it can be told by hand. */
  readonly values?: readonly [number, number];
}

const lowBridge: readonly Put[] = [
  ['bridge.thickness', 7],
  ['slot.depth', 4],
];

const one = (path: string, doubtful: unknown, wrong: unknown): Row => ({
  doubtful: [[path, doubtful]],
  wrong: [[path, wrong]],
});

const rows: Readonly<Record<CheckId, Row>> = {
  straightedge: { ...one('bridge.thickness', 10.2, 10.6), values: [-0.2, -0.6] },
  // The middle of what suits leaves half a millimetre of light.
  neck: {
    doubtful: [['guitar.neckPlaneHeight', 7.2], ...lowBridge],
    wrong: [['guitar.neckPlaneHeight', 6.2], ...lowBridge],
    values: [6.7, 5.7],
  },
  exposure: one('bridge.thickness', 9.3, 8.1),
  inSlot: one('slot.depth', 4.9, 3.2),
  woodUnderSlot: { ...one('slot.depth', 7.7, 8.1), values: [1.8, 1.4] },
  frontWall: { ...one('bridge.frontToSaddle', 6.2, 5.1), values: [4.55, 3.45] },
  pinWood: { ...one('pins.fromSaddle', 6.8, 5.9), values: [2.65, 1.75] },
  reaming: { ...one('pins.pinDiameter', 6.25, 6.75), values: [25, 35] },
  breakAngle: one('pins.leaves', 5.9, 4.5),
  thickness: { ...one('bridge.thickness', 10.9, 11.6), values: [10.9, 11.6] },
  tip: { ...one('bridge.tipThickness', 2.2, 1.9), values: [2.2, 1.9] },
  actionBass: { ...one('action.bass', 3, 3.3), values: [3, 3.3] },
  actionTreble: { ...one('action.treble', 1.3, 1), values: [1.3, 1] },
  firstFret: { ...one('action.firstFretBass', 0.7, 0.8), values: [0.7, 0.8] },
  relief: { ...one('guitar.relief', 0.4, 0.5), values: [0.4, 0.5] },
  rise: { ...one('guitar.rise', 2, 2.6), values: [2, 2.6] },
  setback: { ...one('strings.list.E2.setback', 1, -0.5), values: [1, -0.5] },
  // The crown carries break points up to 1.625 − 0.4 to each side of 642.8.
  intonation: { ...one('strings.list.E2.setback', 4.3, 5.1), values: [0.275, 1.075] },
  saddleThickness: { ...one('slot.width', 4, 6.6), values: [3.95, 6.55] },
  saddleEnd: { ...one('slot.length', 66.55, 63.45), values: [5.5, 3.95] },
  // Halfway from 36.5 to 55.5, but for half of the setback.
  boardEdge: one('guitar.boardWidth', 50.5, 49),
  pinFan: one('pins.spread', 61.5, 67),
  crownRadius: {
    doubtful: [
      ['guitar.boardRadiusNut', 300],
      ['guitar.boardRadiusEnd', 400],
      ['limits.crownRadius.from', 1.2],
    ],
    wrong: [
      ['guitar.boardRadiusNut', 300],
      ['guitar.boardRadiusEnd', 900],
    ],
  },
  scar: { ...one('scar.fromNut', 633.3, 632.2), values: [0.1, -1] },
  // The front edge lies at 633.2; the hole is 3 wide.
  keptHoles: { ...one('top.holes.left.fromNut', 636.7, 635.7), values: [2, 1] },
  pinsMeetHoles: { ...one('top.holes.p0.across', -28.25, -26.25), values: [0.5, -1.5] },
  // The bass pin's edge lies 30.25 from the centre line, the cap's 42.5.
  bracesClear: { ...one('top.braces', [brace(35.25)], [brace(34)]), values: [1, -0.25] },
  topRise: { ...one('top.rises.a.height', 1, -2), values: [1, -2] },
  registerPins: { ...one('top.holes.right.across', -30, -45), values: [30, 15] },
  capEdge: { ...one('plate.depth', 11, 8), values: [3, 1.5] },
  capGrain: { doubtful: [['pins.spread', 27.5]], wrong: [['plate.grain', 'across']], values: [0.5, -5] },
  capClear: { ...one('top.braces', [brace(47)], [brace(45.5)]), values: [0.5, -1] },
  plateCap: { ...one('plate.cap', 3, 0.8), values: [3, 0.8] },
  // Fitted through 0 with u = 1 − 2^(−n/12): of what one reading is off, its own share stays, 1 − u²/Σu².
  frets: { ...one('guitar.measured', misread(0.6), misread(1)) },
  // Mersenne: tension goes with the square of the pitch.
  tension: one('strings.list.E2.pitch', 82.407 * 1.25, 82.407 * 1.4),
  // The farther back the pins, the nearer the belly’s edge.
  pinEdge: one('pins.fromSaddle', 19, 20.8),
  pinGap: { ...one('pins.hole', 8.5, 10), values: [2.6, 1.1] },
  scale: { ...one('guitar.measured', measured(640.8), measured(638.5)), values: [0.8, 1.5] },
  neckPlane: { ...one('strung.light', light + 0.3, light - 0.5), values: [0.3, 0.5] },
};

describe('levels', () => {
  test('there is one check for every range', () => {
    expect(checks.map(({ id }) => id).toSorted()).toEqual(checkIds.toSorted());
  });

  test('a sound job is right in every way', () => {
    const found = foundIn(sound());
    expect(found.filter(({ level }) => level !== 'right').map(({ says }) => says)).toEqual([]);
    expect(found.map(({ check }) => check)).toEqual(checks.map(({ id }) => id));
    for (const { means, source } of found) expect([means, source]).toEqual(['', 'common practice, from memory']);
  });

  test.each(checkIds)('%s: one job doubtful, one wrong', (id) => {
    const { doubtful, wrong, values } = rows[id];
    for (const [k, level, puts] of [
      [0, 'doubtful', doubtful],
      [1, 'wrong', wrong],
    ] as const satisfies readonly (readonly [number, Level, readonly Put[]])[]) {
      const found = finding(put(sound(), ...puts), id);
      expect(found.level, found.says).toBe(level);
      expect(found.means).not.toBe('');
      if (values !== undefined) expect(found.facts[0]?.value).toBeCloseTo(values[k], 9);
    }
  });

  test('nylon has ranges of its own', () => {
    const steel = sound();
    const nylon = nylonJob();
    const same = (id: CheckId, ...puts: readonly Put[]) =>
      [steel, nylon].map((job) => finding(put(job, ...puts), id).level);
    expect(same('actionBass', ['action.bass', 3.7])).toEqual(['wrong', 'right']);
    expect(same('actionTreble', ['action.treble', 2])).toEqual(['right', 'wrong']);
    expect(same('firstFret', ['action.firstFretBass', 0.55], ['action.firstFretTreble', 0.35])).toEqual([
      'right',
      'doubtful',
    ]);
    expect(same('rise', ['guitar.rise', 0.2])).toEqual(['doubtful', 'right']);
    expect(finding(nylon, 'straightedge')).toMatchObject({
      level: 'right',
      says: 'The straightedge would run 1.6 mm below the bridge’s top',
      range: 'usual −5.0 to −1.0 mm',
    });
    expect(finding(put(steel, ['guitar.neckPlaneHeight', 7.9]), 'straightedge').level).toBe('wrong');
    expect(finding(put(steel, ['pins.leaves', 5.5]), 'breakAngle').level).toBe('doubtful');
    expect(finding(put(nylon, ['pins.leaves', 4.5]), 'breakAngle').level).toBe('right');
  });

  test('a range of the job’s own changes the level, and says so', () => {
    const own = put(sound(), ['limits.thickness.to', 9], ['limits.tip.from', 3.5]);
    expect(finding(own, 'thickness')).toMatchObject({
      level: 'doubtful',
      range: 'your range 7.0 to 9.0 mm',
      source: 'set for this job',
      isOwnRange: true,
    });
    expect(finding(own, 'tip').level).toBe('doubtful');
    expect(finding(put(own, ['limits.tip.doubtfulFrom', 3.4]), 'tip').level).toBe('wrong');
    expect(finding(put(sound(), ['limits.woodUnderSlot.from', 3.9]), 'woodUnderSlot').range).toBe(
      'your range at least 3.9 mm',
    );
    expect(finding(put(sound(), ['limits.pinFan.from', 0]), 'pinFan').range).toBe('your range 0.0 to 12.0°');
  });

  test('a limit itself is right, whatever the last bits say', () => {
    expect(finding(put(sound(), ['bridge.thickness', 7]), 'thickness').level).toBe('right');
    expect(finding(put(sound(), ['bridge.thickness', 9.7], ['slot.depth', 7.7]), 'woodUnderSlot').level).toBe('right');
    expect(
      finding(put(sound(), ['guitar.neckPlaneHeight', 10.1], ['bridge.thickness', 10.4]), 'straightedge').level,
    ).toBe('doubtful');
  });

  // [practice]: four to five thirty-seconds of an inch of saddle standing out; blanks of 3/32 and 1/8 in; a plate cap of about 0.07 in.
  test('what benches call usual is right', () => {
    const flat = put(
      sound(),
      ['guitar.boardRadiusNut', 'flat'],
      ['guitar.boardRadiusEnd', 'flat'],
      ['bridge.topRadius', 'flat'],
    );
    for (const thirtySeconds of [4, 5]) {
      const e2 = finding(flat, 'exposure').facts.find(({ where }) => where === 'E2')?.value ?? 0;
      const thickness = 9.5 + e2 - (thirtySeconds / 32) * 25.4;
      const found = finding(put(flat, ['bridge.thickness', thickness]), 'exposure');
      expect(found.facts.find(({ where }) => where === 'E2')?.value).toBeCloseTo((thirtySeconds / 32) * 25.4, 9);
      expect(found.level, found.says).toBe('right');
    }
    for (const width of [3 / 32, 1 / 8])
      expect(finding(put(sound(), ['slot.width', width * 25.4 + 0.05]), 'saddleThickness').level).toBe('right');
    expect(finding(put(sound(), ['plate.cap', 0.07 * 25.4]), 'plateCap').level).toBe('right');
  });
});
