/*
 * Polynomials on [0, 1] in Bernstein form, Σ bᵢ·C(n, i)·tⁱ(1 − t)ⁿ⁻ⁱ: the form in which a Bézier curve's coordinates stand.
 * Farouki & Rajan, Computer Aided Geometric Design 4 (1987) 191: the roots are best conditioned in it; and by Descartes' rule it has at most as many roots
 * inside (0, 1) as its coefficients change sign.
 */

/** The polynomial's value at t. [de Casteljau] */
export const bernsteinAt = (b: readonly number[], t: number): number => {
  const row = [...b];
  for (let n = row.length - 1; n > 0; n--)
    for (let i = 0; i < n; i++) row[i] = (row[i] as number) * (1 - t) + (row[i + 1] as number) * t;
  return row[0] ?? 0;
};

/** The coefficients of the polynomial's two halves, each on [0, 1]. [de Casteljau] */
const halves = (b: readonly number[]): { readonly left: readonly number[]; readonly right: readonly number[] } => {
  const left: number[] = [];
  const right = [...b];
  for (let n = b.length - 1; n >= 0; n--) {
    left.push(right[0] as number);
    for (let i = 0; i < n; i++) right[i] = ((right[i] as number) + (right[i + 1] as number)) / 2;
  }
  return { left, right };
};

/** The derivative's coefficients. */
export const bernsteinDerivative = (b: readonly number[]): number[] =>
  b.slice(1).map((v, i) => (b.length - 1) * (v - (b[i] as number)));

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k);

/** The coefficients of the product of two polynomials. */
export const bernsteinProduct = (a: readonly number[], b: readonly number[]): number[] => {
  const m = a.length - 1;
  const n = b.length - 1;
  const product = new Array<number>(m + n + 1).fill(0);
  a.forEach((u, i) => {
    b.forEach((v, j) => {
      product[i + j] = (product[i + j] as number) + (choose(m, i) * choose(n, j) * u * v) / choose(m + n, i + j);
    });
  });
  return product;
};

/** The sign of the first coefficient that is not 0, and how often the sign changes after it. */
const signs = (b: readonly number[]): { readonly first: number; readonly changes: number } => {
  let first = 0;
  let last = 0;
  let changes = 0;
  for (const v of b) {
    if (v === 0) continue;
    const sign = v > 0 ? 1 : -1;
    if (last === 0) first = sign;
    else if (sign !== last) changes++;
    last = sign;
  }
  return { first, changes };
};

/** The one root inside, by bisection sped up with secants (Illinois, Dowell & Jarratt, BIT 11 (1971) 168). */
const oneRoot = (b: readonly number[]): number => {
  const below = signs(b).first;
  let lo = 0;
  let hi = 1;
  let flo = b[0] as number;
  let fhi = b.at(-1) as number;
  for (let i = 0; i < 80 && hi - lo > 1e-17; i++) {
    const secant = lo + ((hi - lo) * flo) / (flo - fhi);
    const t = i % 4 !== 3 && secant > lo && secant < hi ? secant : (lo + hi) / 2;
    if (t <= lo || t >= hi) break;
    const f = bernsteinAt(b, t);
    if (f === 0) return t;
    if (Math.sign(f) === below) {
      lo = t;
      flo = f;
      fhi /= 2;
    } else {
      hi = t;
      fhi = f;
      flo /= 2;
    }
  }
  return (lo + hi) / 2;
};

/** Two roots closer than this cannot be told from one that only touches. */
const finest = 1e-11;

const inside = (b: readonly number[], from: number, to: number, found: number[]): void => {
  const { changes } = signs(b);
  if (changes === 0) return;
  const middle = (from + to) / 2;
  if (changes === 1) found.push(from + (to - from) * oneRoot(b));
  else if (to - from < finest) found.push(middle);
  else {
    const { left, right } = halves(b);
    inside(left, from, middle, found);
    if (right[0] === 0) found.push(middle);
    inside(right, middle, to, found);
  }
};

/** The roots in [0, 1], in order; none for the zero polynomial, whose every point is one. */
export const bernsteinRoots = (b: readonly number[]): number[] => {
  const found: number[] = [];
  if (b.every((v) => v === 0)) return found;
  if (b[0] === 0) found.push(0);
  inside(b, 0, 1, found);
  if (b.length > 1 && b.at(-1) === 0) found.push(1);
  return found;
};

/** As bernsteinRoots, and where the polynomial only comes within a tolerance of 0, in the middle: a touch lost to rounding. */
export const bernsteinTouches = (b: readonly number[], tolerance: number): number[] => {
  if (b.every((v) => Math.abs(v) <= tolerance)) return [];
  const turns = bernsteinRoots(bernsteinDerivative(b)).filter((t) => Math.abs(bernsteinAt(b, t)) <= tolerance);
  return [...bernsteinRoots(b), ...turns].sort((p, q) => p - q);
};
