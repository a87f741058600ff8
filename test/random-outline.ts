import fc from 'fast-check';
import type { Job } from '../geometry/job.ts';

type OutlinePoints = Job['bridge']['points'];

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** x to a power, its sign kept: below 1 an ellipse grows shoulders. */
const swollen = (x: number, power: number): number => Math.sign(x) * Math.abs(x) ** power;

/**
 * Points of a free outline round a bridge of this length and depth, in their order: spread over a swollen ellipse, each moved in a little by chance and here and there a corner. Mirrored, only the treble half's, from
 * the front to the rear; whether it begins and ends on the centre line is left to chance.
 */
export const randomOutline = (mirrored: boolean): fc.Arbitrary<(length: number, depth: number) => OutlinePoints> =>
  fc
    .record({
      chances: fc.array(fc.record({ inwards: share, aside: share, corner: share }), {
        minLength: mirrored ? 3 : 4,
        maxLength: 14,
      }),
      power: fc.double({ min: 0.4, max: 1, noNaN: true }),
      rough: fc.double({ min: 0, max: 0.15, noNaN: true }),
      corners: fc.constantFrom(0, 0.2, 1),
      onCentre: fc.boolean(),
    })
    .map(({ chances, power, rough, corners, onCentre }) => (length, depth) => {
      const count = chances.length;
      return chances.map(({ inwards, aside, corner }, k) => {
        const isEnd = mirrored && onCentre && (k === 0 || k === count - 1);
        const moved = isEnd ? 0 : (aside - 0.5) * 0.5;
        const turn = mirrored
          ? Math.PI * ((onCentre ? k + moved : k + 0.5 + moved) / (onCentre ? count - 1 : count) - 0.5)
          : 2 * Math.PI * ((k + moved) / count - 0.25);
        const reach = 1 - rough * inwards;
        const across = (length / 2) * reach * swollen(Math.cos(turn), power);
        return {
          id: `point-${k + 1}`,
          across: isEnd ? 0 : mirrored ? Math.max(0, across) : across,
          along: (depth / 2) * (1 + reach * swollen(Math.sin(turn), power)),
          turn: corner < corners ? 'corner' : 'smooth',
        };
      });
    });
