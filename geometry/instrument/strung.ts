import type { Job } from '../job.ts';
import { notTaken } from '../schema/not-taken.ts';
import { fretAt } from './frets.ts';

type Strung = Job['strung'];

/** Height of the string row's middle over the old saddle, above the fret plane at pitch, mm: the line through fret 1 and fret 12, carried on to the saddle. The board's crown under the middle has no drop, only its sag. */
export const strungSaddleHeight = (
  strung: Readonly<Record<'actionBass' | 'actionTreble' | 'firstFretBass' | 'firstFretTreble' | 'relief', number>>,
  { scale, bodyJoint, setback }: { readonly scale: number; readonly bodyJoint: number; readonly setback: number },
): number => {
  const [x1, x12, joint] = [fretAt(scale, 1), fretAt(scale, 12), fretAt(scale, bodyJoint)];
  // The same parabola as the board's own sag; at fret 1 it is nothing.
  const sag12 = x12 >= joint ? 0 : (4 * strung.relief * (x12 - x1) * (joint - x12)) / (joint - x1) ** 2;
  const z1 = (strung.firstFretBass + strung.firstFretTreble) / 2;
  const z12 = (strung.actionBass + strung.actionTreble) / 2 - sag12;
  return z1 + ((z12 - z1) / (x12 - x1)) * (scale + setback - x1);
};

/** The readings that are still missing for the neck plane height of a strung guitar, by their keys. */
export const missingReadings = (strung: Strung): readonly (keyof Strung)[] =>
  (
    ['thickness', 'exposure', 'actionBass', 'actionTreble', 'firstFretBass', 'firstFretTreble', 'relief'] as const
  ).filter((key) => strung[key] === notTaken);

export interface NeckPlaneAtPitch {
  /** From the old bridge, its saddle's exposure and the action: `h − rise = T + e − z_s` at the middle, mm. */
  readonly strung?: number;
  /** From a straightedge at pitch over the old bridge: `h − rise = T + light`, mm. */
  readonly straightedge?: number;
  /** The middle's height over the old saddle, above the fret plane, mm. */
  readonly saddleHeight?: number;
}

/** The neck plane height at pitch by each way that its readings allow. */
export const neckPlaneAtPitch = (
  strung: Strung,
  line: { readonly scale: number; readonly bodyJoint: number; readonly setback: number },
): NeckPlaneAtPitch => {
  const all = missingReadings(strung).length === 0;
  const { thickness, light } = strung;
  const saddleHeight = all ? strungSaddleHeight(strung as { readonly [K in keyof Strung]: number }, line) : undefined;
  return {
    ...(saddleHeight !== undefined && {
      saddleHeight,
      strung: (thickness as number) + (strung.exposure as number) - saddleHeight,
    }),
    ...(typeof thickness === 'number' && typeof light === 'number' && { straightedge: thickness + light }),
  };
};
