/** Numbers that look drawn by chance and are the same at every run: a multiply-and-shift generator of 32 bits (mulberry32, public domain). */
export const seeded = (seed: number) => {
  let state = seed >>> 0;
  /** Even from `from` to `to`. */
  const even = (from: number, to: number): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return from + ((to - from) * ((t ^ (t >>> 14)) >>> 0)) / 2 ** 32;
  };
  /** Normal, with mean 0 and this standard deviation (Box and Muller 1958). */
  const normal = (deviation: number): number =>
    deviation * Math.sqrt(-2 * Math.log(1 - even(0, 1))) * Math.cos(2 * Math.PI * even(0, 1));
  return { even, normal };
};
