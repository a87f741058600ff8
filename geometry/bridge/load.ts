import { perDesign } from '../per-design.ts';
import { bounds } from '../shape/measure.ts';
import { moments } from '../shape/moments.ts';
import type { Held } from './held.ts';
import { footprintOutline } from './outline.ts';

/** What the strings do to the glue line; N, N·mm, MPa. An estimate, to compare alternatives by: peel concentrates at the edge. */
export interface GlueLoad {
  /** Down on the top, all forces together. */
  readonly down: number;
  /** Tipping the bridge forward, about the middle of the glued area at the bare top. */
  readonly moment: number;
  /** Mean pull across the glue line, + peels. */
  readonly meanStress: number;
  /** At the glued area's rear edge, + peels. */
  readonly rearStress: number;
  readonly meanShear: number;
}

export interface StringLoad {
  readonly id: string;
  readonly tension: number;
  readonly downforce: number;
  /** Its own share of the tipping moment, with its pin's help and without, N·mm. */
  readonly moment: Readonly<Record<Held, number>>;
}

export interface Load {
  /** The glued area, mm², its middle's distance from the nut, and its second moment across, mm⁴. */
  readonly area: number;
  readonly centreFromNut: number;
  readonly secondMoment: number;
  readonly strings: readonly StringLoad[];
  readonly cases: Readonly<Record<Held, GlueLoad>>;
}

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

/**
 * The load on the glue line. Of each string two forces act from outside: T along it at the crown, towards the nut and slightly down; and T straight down at the front wall of its pin hole, where the
 * ball end bears on the plate. So `N = ΣT(sin θ_in + 1)`, M their moment about the centroid of the glued area at the bare top, and the rear edge bears `−N/A + M·c/I`; mean shear `ΣT·cos θ_in/A`. Ball ends
 * that pull into a worn plate have no second force. Nor have strings that the bridge itself holds, tied at a block or at its back edge: there the string's pull back on the block and its push on the crown's rear side are between parts of one bridge, and what
 * acts from outside is T at the crown alone. The whole footprint is taken as glued. Source: statics; beam formula σ = N/A + M·c/I.
 */
export const load = perDesign((job, design): Load => {
  const outline = footprintOutline(job, design);
  const { area, centroid, secondY } = moments(outline);
  const toRear = bounds(outline).maxY - centroid.y;
  const strings = design.strings.map((s) => {
    const slope = Math.atan(s.slope);
    const along = s.tension * Math.cos(slope);
    const down = s.tension * Math.sin(slope);
    const atCrown = along * (s.heightAboveFretPlane - design.topHeight) - down * (s.breakX - centroid.y);
    const atPin = -s.tension * (s.leaves.x - centroid.y);
    return { s, along, down, atCrown, atPin };
  });
  const caseOf = (held: Held): GlueLoad => {
    const hasPins = held === 'pins';
    const down = sum(strings.map(({ s, down: d }) => d + (hasPins ? s.tension : 0)));
    const moment = sum(strings.map(({ atCrown, atPin }) => atCrown + (hasPins ? atPin : 0)));
    return {
      down,
      moment,
      meanStress: -down / area,
      rearStress: -down / area + (moment * toRear) / secondY,
      meanShear: sum(strings.map(({ along }) => along)) / area,
    };
  };
  return {
    area,
    centreFromNut: centroid.y,
    secondMoment: secondY,
    strings: strings.map(({ s, atCrown, atPin }) => ({
      id: s.id,
      tension: s.tension,
      downforce: s.downforce,
      moment: { pins: atCrown + atPin, wornPlate: atCrown, tied: atCrown },
    })),
    cases: { pins: caseOf('pins'), wornPlate: caseOf('wornPlate'), tied: caseOf('tied') },
  };
});
