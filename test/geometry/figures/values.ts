import type { Input } from '../../../geometry/figures/figure.ts';

/** A figure's inputs by their symbols, as a formula reads them: a missing one throws. */
export interface Values {
  readonly has: (symbol: string) => boolean;
  readonly n: (symbol: string) => number;
  readonly radius: (symbol: string) => number | 'flat';
  /** All with this symbol and a running number: `T` reads T_1, T_2 and so on. */
  readonly all: (symbol: string) => readonly number[];
  readonly radii: (symbol: string) => readonly (number | 'flat')[];
}

export const valuesOf = (inputs: readonly Input[]): Values => {
  const by = new Map(inputs.map(({ symbol, value }) => [symbol, value]));
  const radius = (symbol: string) => {
    const value = by.get(symbol);
    if (value === undefined) throw new Error(`The inputs have no ${symbol}.`);
    return value;
  };
  const n = (symbol: string) => {
    const value = radius(symbol);
    if (value === 'flat') throw new Error(`${symbol} is flat.`);
    return value;
  };
  const many = <T>(symbol: string, read: (one: string) => T) => {
    const found: T[] = [];
    while (by.has(`${symbol}_${found.length + 1}`)) found.push(read(`${symbol}_${found.length + 1}`));
    if (found.length === 0) throw new Error(`The inputs have no ${symbol}_1.`);
    return found;
  };
  return { has: (symbol) => by.has(symbol), n, radius, all: (s) => many(s, n), radii: (s) => many(s, radius) };
};

export const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
export const mean = (values: readonly number[]): number => sum(values) / values.length;
export const rad = (degrees: number): number => (degrees * Math.PI) / 180;
export const deg = (radians: number): number => (radians * 180) / Math.PI;

/** ∫f over a stretch, by Simpson's rule on a fine division. */
export const simpson = (f: (t: number) => number, from: number, to: number, n = 2000): number => {
  const h = (to - from) / n;
  return (
    (h / 3) * sum(Array.from({ length: n + 1 }, (_, i) => (i === 0 || i === n ? 1 : i % 2 ? 4 : 2) * f(from + i * h)))
  );
};

/** Drop of an arc, as defined: `R − √(R² − y²)`. */
export const drop = (radius: number | 'flat', y: number): number =>
  radius === 'flat' ? 0 : radius - Math.sqrt(radius ** 2 - y ** 2);

/** Where a falling function passes a value, by halving. */
export const whereFalls = (f: (x: number) => number, to: number, [from, until]: readonly [number, number]): number => {
  let [low, high] = [from, until];
  for (let step = 0; step < 100; step += 1) {
    const middle = (low + high) / 2;
    if (f(middle) > to) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
};

/** Where a function with one valley is least, by thirds. */
export const whereLeast = (f: (x: number) => number, [from, until]: readonly [number, number]): number => {
  let [low, high] = [from, until];
  for (let step = 0; step < 300; step += 1) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (f(a) < f(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
};
