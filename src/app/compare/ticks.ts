/** Round numbers from below the least to above the greatest, with some `wanted` steps between them: 1, 2 or 5 of a power of ten apart. */
export const ticks = (least: number, greatest: number, wanted: number): readonly number[] => {
  const raw = Math.max(greatest - least, 1e-6) / wanted;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = ([1, 2, 5, 10].find((n) => n * power >= raw * (1 - 1e-9)) ?? 10) * power;
  const from = Math.floor(least / step + 1e-9);
  const to = Math.max(from + 1, Math.ceil(greatest / step - 1e-9));
  // Twelve digits, so that 3 × 0.1 is 0.3.
  return Array.from({ length: to - from + 1 }, (_, k) => Number(((from + k) * step).toPrecision(12)));
};
