import { endOf, highestOf, laid, squares, worst } from './crown-formulas.ts';
import { depthOf, lengthOf } from './free-outline.ts';
import { areaOf, centreOf, down, momentOf, secondMomentOf, share, shearOf } from './load-formulas.ts';
import { sectionTop } from './section-formulas.ts';
import { deg, drop, mean, rad, sum, type Values, whereFalls, whereLeast } from './values.ts';

/** Works a figure out from its inputs alone. */
export type Formula = (v: Values) => number | 'flat';

const typedOr =
  (symbol: string, otherwise: Formula): Formula =>
  (v) =>
    v.has(symbol) ? v.n(symbol) : otherwise(v);

const parts = (v: Values) => v.all('n').map((n) => 1 - 2 ** (-n / 12));
const leastSquares: Formula = (v) =>
  sum(v.all('x').map((x, k) => x * (parts(v)[k] ?? 0))) / sum(parts(v).map((u) => u ** 2));
const fret: Formula = (v) => v.n('L') * (1 - 2 ** (-v.n('n') / 12));

const evenly = (v: Values, from: number, to: number) => from + ((to - from) * (v.n('k') - 1)) / (v.n('n') - 1);
const sagAt = (v: Values, x: number, relief: number) =>
  x <= v.n('x_1') || x >= v.n('x_j')
    ? 0
    : (4 * relief * (x - v.n('x_1')) * (v.n('x_j') - x)) / (v.n('x_j') - v.n('x_1')) ** 2;

/** Where strings lie: each set out from the one before it. */
const across: Formula = typedOr('y_t', (v) => {
  const n = v.n('n');
  const inPairs = v.has('q');
  const within = inPairs ? v.n('p') * (v.has('S_s') ? v.n('S') / v.n('S_s') : 1) : 0;
  const isWithin = (i: number) => inPairs && i % 2 === 0;
  // The way from string i to the next is a pair's own, or a gap and what the two strings take of it.
  const ways = Array.from({ length: n - 1 }, (_, i) =>
    isWithin(i) ? within : v.has('d_1') ? ((v.all('d')[i] ?? 0) + (v.all('d')[i + 1] ?? 0)) / 2 : 0,
  );
  const gap = (v.n('S') - sum(ways)) / ways.filter((_, i) => !isWithin(i)).length;
  return -v.n('S') / 2 + sum(ways.slice(0, v.n('k') - 1).map((way, i) => way + (isWithin(i) ? 0 : gap)));
});

/** Where pins stand across: in two rows each evenly by the courses, or as strings in pairs. */
const pinsAcross: Formula = (v) => {
  if (!v.has('q')) return evenly(v, -v.n('S_p') / 2, v.n('S_p') / 2);
  const aside = v.has('a') ? v.n('a') : (v.n('p') * v.n('S_p')) / v.n('S');
  return evenly(v, -v.n('S_p') / 2, v.n('S_p') / 2 - aside) + v.n('q') * aside;
};

/** How far behind the saddle line's place a pin stands: on a circle, by Pythagoras from its centre. */
const pinAlong: Formula = (v) => {
  const row = v.n('x_0') + v.n('f_p') + (v.has('q') ? v.n('q') * v.n('r') : 0);
  if (v.has('m')) return row + v.n('m') * v.n('y_p');
  if (!v.has('h') || v.n('h') === 0) return row;
  const rise = Math.abs(v.n('h'));
  const radius = ((v.n('S_p') / 2) ** 2 + rise ** 2) / (2 * rise);
  return row - Math.sign(v.n('h')) * (radius - Math.sqrt(radius ** 2 - v.n('y_p') ** 2));
};

const cone = (v: Values, x: number) => {
  const [nut, end] = [v.radius('R_n'), v.radius('R_e')];
  return nut === 'flat' || end === 'flat' ? 'flat' : nut + ((end - nut) * x) / v.n('x_e');
};
const fretCrown: Formula = (v) => {
  const x = v.n('x');
  const y = v.n('y_n') + ((v.n('y_s') - v.n('y_n')) * x) / v.n('x_s');
  return -drop(cone(v, x), y) - sagAt(v, x, v.n('r'));
};
const slope = (v: Values) => (v.n('k_12') + v.n('a') - v.n('k_1') - v.n('c')) / (v.n('x_12') - v.n('x_1'));

const surface = (v: Values, y: number) => v.n('z_t') + v.n('T_c') - drop(v.radius('R_b'), y) + v.n('tilt') * y;

/** kg/m, with diameters in mm. */
const mass = (v: Values) => {
  const d = v.n('d') / 1000;
  if (v.has('ρ')) return (v.n('ρ') * Math.PI * d ** 2) / 4;
  const c = v.n('c') / 1000;
  const w = (d - c) / 2;
  return (v.n('ρ_c') * Math.PI * c ** 2) / 4 + (v.n('ρ_w') * Math.PI ** 2 * w * (c + w)) / 4;
};

/** The frequency of a stiff string with pinned ends: Fletcher, JASA 36 (1964) 203. Lengths in mm. */
const stiff = (tension: number, length: number, mu: number, EI: number) =>
  (Math.sqrt(tension / mu) / (2 * length)) * 1000 * Math.sqrt(1 + (Math.PI ** 2 * EI) / (tension * length ** 2));

/** Where the note fretted at 12 is the octave, sought with forces and lengths written out. */
const computed = (v: Values) => {
  const core = v.has('c') ? v.n('c') : v.n('d');
  const [EA, EI] = [(v.n('E') * Math.PI * core ** 2) / 4, (v.n('E') * Math.PI * core ** 4) / 64];
  const [mu, a, x, f] = [mass(v), v.n('a'), v.n('L') / 2, v.n('f')];
  const sharp = (s: number) => {
    const open = v.n('L') + s;
    const b = open - x;
    const pull = mu * (2 * (open / 1000) * f) ** 2 - (Math.PI ** 2 * EI) / open ** 2;
    const longer = Math.sqrt(x ** 2 + a ** 2) + Math.sqrt(b ** 2 + a ** 2) - x - b;
    return stiff(pull + (EA * longer) / open, b, mu, EI) / stiff(pull, open, mu, EI);
  };
  return whereFalls(sharp, 2, [-20, 60]) + v.n('p');
};

const heard = (v: Values) => {
  const open = v.n('L') + v.n('s_p');
  const b = v.n('L') / 2 + v.n('s_p');
  const q = 2 ** (v.n('c') / 1200);
  return v.n('s_p') + (open * b * (q - 1)) / (open - q * b);
};

const neededSetback: Formula = (v) => (v.has('s_t') ? v.n('s_t') : v.has('s_p') ? heard(v) : computed(v));

/** The line with the least largest miss: for a slant half the spread of what is left, sought by thirds. */
const least = (v: Values) => {
  const left = (m: number) => v.all('s').map((s, k) => v.n('L') + s - m * (v.all('y')[k] ?? 0));
  const spread = (m: number) => Math.max(...left(m)) - Math.min(...left(m));
  const m = whereLeast(spread, [-1, 1]);
  return { m, x: (Math.max(...left(m)) + Math.min(...left(m))) / 2 };
};
const slant: Formula = typedOr('m_t', (v) =>
  v.has('s_b') ? (v.n('s_t') - v.n('s_b')) / (v.n('y_t') - v.n('y_b')) : least(v).m,
);
const place: Formula = typedOr('x_t', (v) =>
  v.has('s_b')
    ? v.n('L') + v.n('s_b') - (v.n('y_b') * (v.n('s_t') - v.n('s_b'))) / (v.n('y_t') - v.n('y_b'))
    : least(v).x,
);
const thickness: Formula = (v) =>
  2 *
  (v.n('e') +
    Math.max(...v.all('s').map((s, k) => Math.abs(v.n('L') + s - v.n('x_0') - v.n('m') * (v.all('y')[k] ?? 0)))) /
      Math.hypot(1, v.n('m')));

/** How far off the crown's middle a break point is wanted, and gets. */
const off = (v: Values) => {
  const wanted = (v.n('L') + v.n('s_n') - v.n('x_0') - v.n('m') * v.n('y')) / Math.sqrt(1 + v.n('m') ** 2);
  const reach = v.n('t') / 2 - v.n('e');
  return { wanted, got: Math.max(-reach, Math.min(reach, wanted)) };
};

/** Where a break point goes for cents heard, as lengths in the ratio of the notes: `(x' − L/2)/x'` becomes q times as large. */
const filed = (v: Values, x: number, cents: number) => {
  const share = (2 ** (cents / 1200) * (x - v.n('L') / 2)) / x;
  return v.n('L') / 2 / (1 - share);
};
const middleOf = (v: Values) => v.n('x_0') + v.n('m') * v.n('y');
const onCrown = (v: Values, x: number) => {
  const reach = (v.n('t') / 2 - v.n('e')) * Math.hypot(1, v.n('m'));
  return Math.min(middleOf(v) + reach, Math.max(middleOf(v) - reach, x));
};
const tipBeyond: Formula = (v) => (v.has('r') ? v.n('r') : v.n('l') / 2) - v.n('l_s') / 2;
const outerLine = (v: Values, u: number) =>
  v.n('d_b') + ((v.n('d_t') - v.n('d_b')) * (u - v.n('u_b'))) / (v.n('u_t') - v.n('u_b'));

const neckReset = (v: Values) => (v.n('T_min') + v.n('T_max') + v.n('c_min') + v.n('c_max')) / 2 - v.n('h');

const bestRadius: Formula = (v) => {
  const reach = Math.max(...v.all('y').map(Math.abs));
  const bend = whereLeast((k) => squares(v, k === 0 ? 'flat' : 1 / k), [0, 0.9 / reach]);
  return bend * reach < v.n('α') ? 'flat' : 1 / bend;
};
const nearestGauge: Formula = (v) =>
  v.radii('R').reduce((best, radius) => (worst(v, radius) < worst(v, best) ? radius : best));

const loads = Object.fromEntries(
  ['Pins', 'WornPlate', 'Tied'].flatMap((held): [string, Formula][] => [
    [`load${held}Down`, (v) => down(v, held === 'Pins')],
    [`load${held}Moment`, momentOf],
    [`load${held}MeanStress`, (v) => -v.n('N') / v.n('A')],
    [`load${held}RearStress`, (v) => -v.n('N') / v.n('A') + (v.n('M') * (v.n('x_r') - v.n('x_c'))) / v.n('I')],
    [`load${held}MeanShear`, shearOf],
  ]),
);

/** Every figure's formula, written anew from trade definitions and the sources named in each figure. */
export const formulas: Readonly<Record<string, Formula>> = {
  scale: typedOr('L_t', leastSquares),
  scaleByFrets: leastSquares,
  scaleError: (v) => {
    const left = v.all('x').map((x, k) => x - v.n('L') * (parts(v)[k] ?? 0));
    return Math.sqrt(sum(left.map((one) => one ** 2)) / ((v.n('m') - 1) * sum(parts(v).map((u) => u ** 2))));
  },
  fret1: fret,
  fret12: (v) => v.n('L') / 2,
  bodyJoint: fret,
  lastFret: fret,
  strungSaddleHeight: (v) => {
    const c = (v.n('c_b') + v.n('c_t')) / 2;
    const a = (v.n('a_b') + v.n('a_t')) / 2 - sagAt(v, v.n('x_12'), v.n('r'));
    return c + ((a - c) * (v.n('L') + mean(v.all('s')) - v.n('x_1'))) / (v.n('x_12') - v.n('x_1'));
  },
  neckPlaneStrung: (v) => v.n('T') + v.n('e') - v.n('z'),
  neckPlaneStraightedge: (v) => v.n('T') + v.n('light'),
  neckPlaneHeight: typedOr('h_t', (v) => v.n('h_p') + v.n('rise')),
  rise: typedOr('r_t', (v) => (v.has('r_u') ? v.n('r_u') : v.n('h') - v.n('h_p'))),
  straightedgeClearance: (v) => v.n('h') - v.n('T_c'),
  suitsFrom: (v) => v.n('h') - v.n('c_max'),
  suitsTo: (v) => v.n('h') - v.n('c_min'),
  suitingThickness: (v) => Math.min(Math.max(v.n('T_c'), v.n('s_1'), v.n('T_min')), Math.min(v.n('s_2'), v.n('T_max'))),
  resetRaise: neckReset,
  resetAngle: (v) => deg(Math.atan2(v.n('Δh'), v.n('L') - v.n('x_j'))),
  resetOffHeel: (v) => (v.n('D') * v.n('Δh')) / (v.n('L') - v.n('x_j')),
  boardRadiusAtSaddle: (v) => cone(v, v.n('x_0')),
  acrossAtNut: across,
  acrossAtSaddle: across,
  actionWanted: (v) => evenly(v, v.n('a_b'), v.n('a_t')),
  firstFretWanted: (v) => evenly(v, v.n('c_b'), v.n('c_t')),
  tension: (v) => mass(v) * (2 * (v.n('L') / 1000) * v.n('f')) ** 2,
  totalTension: (v) => sum(v.all('T')),
  neededSetback,
  saddleLineFromNut: place,
  saddleSlant: slant,
  bestSlotFromNut: place,
  bestSlotSlant: slant,
  saddleThicknessNeeded: thickness,
  bestSlotThicknessNeeded: thickness,
  saddleThickness: (v) => v.n('w') - v.n('play'),
  saddleLength: (v) => v.n('l_s') - v.n('play'),
  missed: (v) => (off(v).wanted - off(v).got) * Math.sqrt(1 + v.n('m') ** 2),
  fromFront: (v) => v.n('t') / 2 + off(v).got,
  setback: (v) => v.n('s_n') - v.n('missed'),
  breakPointFromNut: (v) => v.n('L') + v.n('s'),
  behindSlotMiddle: (v) => v.n('x_s') - v.n('x_0') - v.n('m') * v.n('y'),
  outlineLength: lengthOf,
  outlineDepth: depthOf,
  bridgeFront: (v) => v.n('x_0') - v.n('f') - (v.has('v') ? v.n('v') : 0),
  bridgeRear: (v) => v.n('x_f') + v.n('d'),
  topHeight: (v) => v.n('rise') - v.n('h'),
  deckCentre: (v) => v.n('z_t') + v.n('T_c'),
  deckHeight: (v) => surface(v, v.n('y')),
  sectionTop,
  sectionUnderside: (v) => v.n('z_t') - drop(v.radius('R_t'), v.n('y')),
  sectionThickness: (v) => v.n('z') - v.n('z_u'),
  shoulderBass: (v) => surface(v, -v.n('w') / 2),
  shoulderTreble: (v) => surface(v, v.n('w') / 2),
  tipTop: (v) => v.n('z_t') - drop(v.radius('R_t'), v.n('l') / 2) + v.n('T_t'),
  slotFloor: (v) => v.n('z_c') - v.n('D'),
  woodUnderSlot: (v) => v.n('z_f') - v.n('z_t'),
  crownAtFret1: fretCrown,
  crownAtFret12: fretCrown,
  slope,
  heightAboveFretPlane: (v) => v.n('k_1') + v.n('c') + slope(v) * (v.n('x_s') - v.n('x_1')),
  saddleBottom: (v) => v.n('z_f') + v.n('u'),
  exposure: (v) => v.n('z_s') - v.n('z_b'),
  saddleHeight: (v) => v.n('z_s') - v.n('z_0') + (v.has('R_t') ? drop(v.radius('R_t'), v.n('y')) : 0),
  fromBassEnd: (v) => v.n('l') / 2 + v.n('y') * Math.hypot(1, v.n('m')),
  bestRadius,
  bestTilt: (v) => laid(v, v.radius('R')).m,
  bestRadiusMiss: (v) => worst(v, v.radius('R')),
  nearestGauge,
  nearestGaugeMiss: (v) => worst(v, v.radius('R')),
  gaugeMiss: (v) => laid(v, v.radius('R')).at(v.n('y')) - v.n('z_s'),
  crownRadius: (v) => (v.has('R_b') ? v.radius('R_b') : nearestGauge(v)),
  crownHeight: (v) => (v.has('R') ? laid(v, v.radius('R')).at(v.n('y')) : v.n('z_s')),
  crownMiss: (v) => v.n('z') - v.n('z_s'),
  endHeightBass: (v) => endOf(v, -1),
  endHeightTreble: (v) => endOf(v, 1),
  highest: highestOf,
  blankLength: (v) => v.n('l'),
  blankHeight: (v) => v.n('H') + v.n('p'),
  blankThickness: (v) => v.n('t'),
  pinAcross: pinsAcross,
  pinFromNut: pinAlong,
  reamDepth: (v) => (v.n('D') - v.n('d')) / v.n('taper'),
  leavesFromNut: (v) =>
    v.has('x_p')
      ? v.n('x_p') - (v.has('d') ? v.n('d') / 2 : 0) - (v.has('l_r') ? v.n('l_r') : 0)
      : v.n('x_s') + v.n('l'),
  leavesHeight: (v) => (v.has('z_b') ? v.n('z_b') : surface(v, v.n('y_p')) - (v.has('b') ? v.n('b') : 0)),
  slopeAngle: (v) => deg(Math.atan(v.n('slope'))),
  angleBehind: (v) => deg(Math.atan2(v.n('z_s') - v.n('z_e'), v.n('x_e') - v.n('x_s'))),
  breakAngle: (v) => v.n('θ_in') + v.n('θ_out'),
  fanAngle: (v) =>
    deg(Math.atan2(v.n('y_p') - v.n('y_s'), v.n('x_p') - v.n('x_s')) - Math.atan2(v.n('y_s') - v.n('y_n'), v.n('x_s'))),
  downforce: (v) => v.n('T') * (Math.sin(rad(v.n('θ_in'))) + Math.sin(rad(v.n('θ_out')))),
  totalDownforce: (v) => sum(v.all('F')),
  gluedArea: areaOf,
  gluedCentre: centreOf,
  secondMoment: secondMomentOf,
  stringMoment: share,
  stringMomentFree: share,
  ...loads,
  lifeAtSaddle: (v) => {
    const until = (x: number, z: number) =>
      whereFalls(
        (d) => deg(Math.atan(v.n('slope') - d / v.n('x_s')) + Math.atan2(v.n('z_s') - d - z, x - v.n('x_s'))),
        v.n('θ_min'),
        [-40, 40],
      );
    const byExposure = v.n('e') - v.n('e_min');
    if (v.has('x_e')) return Math.min(byExposure, until(v.n('x_e'), v.n('z_e')));
    const foot = v.n('x_p') - v.n('d_h') / 2;
    const deck = surface(v, v.n('y_p'));
    return Math.min(byExposure, until(foot - v.n('l_r'), deck), until(foot, deck - v.n('b')));
  },
  passAction: typedOr(
    'a_t',
    typedOr('a_m', (v) => v.n('a_p') + ((v.n('a_q') - v.n('a_p')) * (v.n('k') - v.n('p'))) / (v.n('q') - v.n('p'))),
  ),
  passBreakPoint: (v) =>
    v.has('c_1') ? v.all('c').reduce((x, cents) => onCrown(v, filed(v, x, cents)), v.n('x_s')) : v.n('x_s'),
  nutToSaddle: (v) => v.n('x_0') + v.n('m') * v.n('y'),
  fret12ToSaddle: (v) => v.n('x') - v.n('x_12'),
  overFront: (v) => v.n('x_s') - (v.n('x_0') - v.n('f')),
  overRear: (v) => v.n('x_0') - v.n('f') + v.n('d') - (v.n('x_s') + v.n('d_s')),
  overBass: tipBeyond,
  overTreble: tipBeyond,
  bareScar: (v) => Math.max(0, -Math.min(...v.all('c'))),
  capApart: (v) => {
    const [x, y] = [v.has('x_1') ? v.all('x') : [], v.has('y_1') ? v.all('y') : []];
    const count = Math.max(x.length, y.length);
    // Square to the grain: of a slanted one by the rule for a point's distance from the line y = x.
    const apart = (i: number, j: number) => {
      const [dx, dy] = [(x[j] ?? 0) - (x[i] ?? 0), (y[j] ?? 0) - (y[i] ?? 0)];
      return x.length > 0 && y.length > 0 ? Math.abs(dx - dy) / Math.hypot(1, 1) : Math.abs(dx + dy);
    };
    const pairs = Array.from({ length: count }, (_, i) => Array.from({ length: i }, (_, j) => apart(i, j))).flat();
    return Math.min(...pairs);
  },
  capStagger: (v) => Math.max(0, v.n('d') + v.n('e') - v.n('a')),
  bridgeVolume: (v) => v.n('V_w') - v.n('V_s') - v.n('V_h') - v.n('V_e'),
  bridgeWeight: (v) => (v.n('V') * v.n('ρ')) / 1000,
  ...Object.fromEntries(
    ['bridgeBlank', 'capBlank'].flatMap((of) =>
      ['Length', 'Depth', 'Thickness'].map((side): [string, Formula] => [
        `${of}${side}`,
        (v) => v.n('s') + v.n('a') + v.n('a'),
      ]),
    ),
  ),
  takeOff: (v) => ((v.n('a') - v.n('a_w')) * v.n('x')) / v.n('x_12'),
  takeOffBass: (v) => outerLine(v, 0),
  takeOffTreble: (v) => outerLine(v, v.n('l')),
  takeOffSquare: (v) => Math.max(0, Math.min(...v.all('d'))),
  afterLine: (v) => {
    const cut = v.has('l') ? v.n('d_b') + ((v.n('d_t') - v.n('d_b')) * v.n('u')) / v.n('l') : 0;
    return v.n('a') - (cut === 0 ? 0 : (cut * v.n('x_12')) / v.n('x'));
  },
  afterSquare: (v) => v.n('a') - (v.n('d') * v.n('x_12')) / v.n('x'),
  newBreakPoint: (v) => {
    const x = v.has('c') ? filed(v, v.n('x'), v.n('c')) : v.n('x');
    return v.n('t') / 2 + (onCrown(v, x) - middleOf(v)) / Math.hypot(1, v.n('m'));
  },
  lifeAfterLine: (v) => v.n('life_d') + v.n('a_l') - v.n('a_w'),
  lifeLeft: (v) => (v.n('d') * v.n('x_12')) / v.n('x_s'),
};
