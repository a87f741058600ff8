import { describe, expect, it } from 'vitest';
import { deckHeight } from '../../geometry/bridge/surface.ts';
import { boardRadius, crownAt, sag } from '../../geometry/instrument/board.ts';
import { fretAt } from '../../geometry/instrument/frets.ts';
import { massPerLength, tension } from '../../geometry/instrument/tension.ts';
import { bestRadius, fitRadius } from '../../geometry/saddle/radius.ts';
import type { Settled } from '../../geometry/settle.ts';
import { solved, workedExample } from '../solved.ts';

describe('frets: equal temperament', () => {
  it('fret 12 halves the scale and fret 24 quarters what is left', () => {
    expect(fretAt(640, 12)).toBeCloseTo(320, 12);
    expect(fretAt(640, 24)).toBeCloseTo(480, 12);
  });

  // The builders' divisor: each fret lies a 17.817th of the remaining length farther [practice].
  it('agrees with the divisor 17.817, fret by fret', () => {
    let left = 650;
    for (let fret = 1; fret <= 20; fret += 1) {
      left -= left / 17.817;
      expect(fretAt(650, fret)).toBeCloseTo(650 - left, 1);
    }
  });
});

describe('a conical board', () => {
  // Hartstein, in American Lutherie: strings that fan out from S_n to S_f over D_f fit a cone exactly when R_x = R_n·(1 + D_x(S_f − S_n)/(D_f·S_n)).
  // With no relief, no setback and first-fret clearance equal to action, every string then keeps one height above the crowns under it.
  it('keeps each string at one height above it, all along it', () => {
    const base = workedExample();
    const { scale, frets, nutSpread } = base.guitar;
    const nutRadius = 254;
    const hartstein = (x: number) => nutRadius * (1 + (x * (base.strings.spread - nutSpread)) / (scale * nutSpread));
    const job: Settled = {
      ...base,
      guitar: { ...base.guitar, relief: 0, boardRadiusNut: nutRadius, boardRadiusEnd: hartstein(fretAt(scale, frets)) },
      action: { bass: 2.2, treble: 2.2, firstFretBass: 2.2, firstFretTreble: 2.2 },
      strings: { ...base.strings, list: base.strings.list.map((s) => ({ ...s, setback: 0 })) },
    };
    expect(boardRadius(job.guitar, 500)).toBeCloseTo(hartstein(500), 9);
    for (const s of solved(job).strings) {
      for (let x = 0; x <= scale; x += 20) {
        const y = s.acrossAtNut + ((s.acrossAtSaddle - s.acrossAtNut) * x) / s.breakX;
        const z = s.heightAboveFretPlane - s.slope * (s.breakX - x);
        expect(z - crownAt(job.guitar, x, y)).toBeCloseTo(2.2, 9);
      }
    }
  });

  it('a cylinder does not: the outer strings come closer in the middle of the neck', () => {
    const job = workedExample();
    const [s] = solved({
      ...job,
      guitar: { ...job.guitar, relief: 0 },
      action: { bass: 2, treble: 2, firstFretBass: 2, firstFretTreble: 2 },
    }).strings;
    if (!s) throw new Error('no string');
    const at = (x: number) => {
      const y = s.acrossAtNut + ((s.acrossAtSaddle - s.acrossAtNut) * x) / s.breakX;
      return s.heightAboveFretPlane - s.slope * (s.breakX - x) - crownAt(job.guitar, x, y) - sag(job.guitar, x);
    };
    expect(Math.abs(at(500) - 2)).toBeGreaterThan(0.01);
  });
});

describe('relief', () => {
  it('is nothing at fret 1 and at the body joint, the whole of it half-way, a parabola between', () => {
    const { guitar } = workedExample();
    const first = fretAt(guitar.scale, 1);
    const joint = fretAt(guitar.scale, guitar.bodyJoint);
    expect(sag(guitar, first)).toBe(0);
    expect(sag(guitar, joint)).toBe(0);
    expect(sag(guitar, (first + joint) / 2)).toBeCloseTo(guitar.relief, 12);
    expect(sag(guitar, first + (joint - first) / 4)).toBeCloseTo(0.75 * guitar.relief, 12);
    expect(sag(guitar, joint + 50)).toBe(0);
  });
});

describe('strings', () => {
  // Mersenne's law, as in Fletcher & Rossing, The Physics of Musical Instruments, 2nd ed., ch. 2. The mass of a plain string here is taken from its volume.
  it('a plain string pulls μ(2Lf)²', () => {
    const job = workedExample();
    const e4 = job.strings.list.find((s) => s.id === 'E4');
    if (!e4) throw new Error('no E4');
    const volumeOfOneMetre = Math.PI * (0.012 * 0.0254 * 0.5) ** 2;
    expect(tension(e4, 640)).toBeCloseTo(7850 * volumeOfOneMetre * (2 * 0.64 * 329.628) ** 2, 9);
  });

  // Pappus's theorem: a ring of wire of radius w/2 about a circle of radius (c + w)/2; a close wrap lays 1/w rings on a metre.
  it('a wrap weighs what Pappus says of its rings', () => {
    const [d, c] = [1.2, 0.5];
    const w = (d - c) / 2 / 1000;
    const ring = Math.PI * (w / 2) ** 2 * 2 * Math.PI * ((c / 1000 + w) / 2);
    const core = 7850 * Math.PI * (c / 2000) ** 2;
    expect(massPerLength({ gauge: d, core: c, material: 'steel', wrap: 'phosphor bronze' })).toBeCloseTo(
      core + (8860 * ring) / w,
      12,
    );
  });
});

describe('statics of the crown', () => {
  it('downforce and break angle agree with forces added as vectors', () => {
    const job = workedExample();
    for (const s of solved(job).strings) {
      const toNut = { x: -1, z: -s.slope };
      const toPin = { x: s.leaves.x - s.breakX, z: s.leaves.z - s.heightAboveFretPlane };
      const unit = (v: { x: number; z: number }) => ({ x: v.x / Math.hypot(v.x, v.z), z: v.z / Math.hypot(v.x, v.z) });
      const a = unit(toNut);
      const b = unit(toPin);
      expect(s.downforce).toBeCloseTo(-s.tension * (a.z + b.z), 9);
      expect(s.breakAngle).toBeCloseTo(180 - (Math.acos(a.x * b.x + a.z * b.z) * 180) / Math.PI, 9);
    }
  });

  it('the bridge is as thick as measured at its centre, and falls off by the two sagittas', () => {
    const job = workedExample();
    const design = solved(job);
    const y = 27.75;
    expect(deckHeight(job, 0) - design.topHeight).toBeCloseTo(9.3, 12);
    const sagitta = (r: number) => r - Math.sqrt(r * r - y * y);
    expect(deckHeight(job, y) - design.topHeight).toBeCloseTo(9.3 - sagitta(508), 9);
  });
});

describe('the best circle', () => {
  it('finds the radius of a circle its points lie on, tilted or not', () => {
    for (const radius of [60, 254, 377.9, 2000]) {
      for (const t of [0, -0.03, 0.02]) {
        const points = [-27, -15, -4, 6, 17, 28].map((x) => ({
          x,
          y: 4 + t * x - (radius - Math.sqrt(radius ** 2 - x ** 2)),
        }));
        expect(Number(bestRadius(points).radius)).toBeCloseTo(radius, 4);
      }
    }
  });

  it('no other radius does better, searched by halving', () => {
    const points = solved(workedExample()).strings.map((s) => ({ x: s.acrossAtSaddle, y: s.heightAboveFretPlane }));
    const squares = (r: number) => fitRadius(points, r).misses.reduce((sum, m) => sum + m * m, 0);
    let [low, high] = [100, 2000];
    for (let k = 0; k < 200; k += 1) {
      const a = low + (high - low) * 0.382;
      const b = low + (high - low) * 0.618;
      if (squares(a) < squares(b)) high = b;
      else low = a;
    }
    expect(Number(bestRadius(points).radius)).toBeCloseTo((low + high) / 2, 2);
  });

  it('calls a straight line and a hollow one flat', () => {
    expect(bestRadius([-3, -1, 1, 3].map((x) => ({ x, y: 2 + 0.1 * x }))).radius).toBe('flat');
    expect(bestRadius([-3, -1, 1, 3].map((x) => ({ x, y: x * x * 0.01 }))).radius).toBe('flat');
  });

  // A circle's drop at its edge is half the turn times the reach: 5 µm at 28 mm is a turn of 0.00036.
  it('calls a crown flat that would drop under 5 µm 28 mm out, and its like on an instrument of any size', () => {
    const dropping = (drop: number, size: number) =>
      [-28, -17, -6, 6, 17, 28].map((x) => ({ x: x * size, y: (4 + 0.02 * x - drop * (x / 28) ** 2) * size }));
    for (const size of [0.5, 1, 3]) {
      expect(bestRadius(dropping(0.0049, size)).radius).toBe('flat');
      expect(Number(bestRadius(dropping(0.0052, size)).radius)).toBeCloseTo((size * 28 ** 2) / (2 * 0.0052), -1);
    }
  });

  it('a gauge’s misses balance: no height and no tilt is left in them', () => {
    const points = solved(workedExample()).strings.map((s) => ({ x: s.acrossAtSaddle, y: s.heightAboveFretPlane }));
    const { misses } = fitRadius(points, 304.8);
    expect(misses.reduce((sum, m) => sum + m, 0)).toBeCloseTo(0, 10);
    expect(misses.reduce((sum, m, k) => sum + m * (points[k]?.x ?? 0), 0)).toBeCloseTo(0, 9);
  });

  // [practice] A sagitta over the outer strings: a 12 in gauge on a 15 in crown shows light by the difference of the two.
  it('a tighter gauge misses by the difference of the sagittas, end to middle', () => {
    const points = [-27.75, 0, 27.75].map((x) => ({ x, y: -(381 - Math.sqrt(381 ** 2 - x * x)) }));
    const { misses } = fitRadius(points, 304.8);
    const sagitta = (r: number) => r - Math.sqrt(r * r - 27.75 ** 2);
    expect((misses[1] ?? 0) - (misses[0] ?? 0)).toBeCloseTo(sagitta(304.8) - sagitta(381), 9);
  });
});
