/** Where the curve of a free outline comes from. */
const freeCurve =
  'the curve: Catmull & Rom (1974), with the centripetal parameter of Yuksel, Schaefer & Keyser (2011).';

/** Where the figures' formulas come from, as it is said to whoever asks. */
export const sources = {
  definition: 'Definition.',
  geometry: 'Plane geometry.',
  typed: 'As it was typed: a measurement, not worked out.',
  temperament: 'Equal temperament of twelve steps to the octave (pitch after ISO 16: A4 = 440 Hz).',
  leastSquares: 'Least squares; equal temperament for the frets’ places.',
  leastMiss: 'The line whose largest miss is least: Chebyshev’s, found by exchange after de la Vallée Poussin.',
  cone: 'Definition of the crowns’ heights: a cone through the two radii (for strings that fan out: Hartstein, in American Lutherie), and a parabola for the relief.',
  wanted: 'Definition: straight from bass to treble in string number, of pairs in the course’s.',
  stretched: 'Plane geometry: a string stretched over two corners lies on the one to which it falls less steeply.',
  mersenne:
    'Mersenne’s law; Fletcher & Rossing, The Physics of Musical Instruments, 2nd ed., ch. 2. Densities from memory; the wrap’s helix is left out.',
  stretch:
    'Stretch and stiffness: Fletcher, Journal of the Acoustical Society of America 36 (1964) 203, for a stiff string with pinned ends; Byers, American Lutherie 47 (1996), for the method. Young’s moduli from memory. Good to about 1 mm.',
  heard: 'Definition: lengths in the ratio of the notes, the string’s tension unaltered.',
  crownEdge: 'Definition; that four tenths of a mm of the crown are kept at each edge is common practice.',
  statics: 'Statics.',
  beam: 'Statics; beam formula σ = N/A + M·c/I. An estimate, to compare alternatives by: peel concentrates at the edge.',
  pivot:
    'Definition: the string pivots at the nut (practice: twice at the saddle). Which limits are usual is common practice.',
  neck: 'Definition; which clearance and which thickness are usual is common practice.',
  practice: 'Common practice: nothing was measured.',
  centroid: 'Green’s theorem over the footprint’s outline; the whole footprint is taken as glued.',
  freeOutline: `Green’s theorem over the footprint’s outline, the whole of it taken as glued; ${freeCurve}`,
  freeCurve: `Definition; ${freeCurve}`,
} as const;
