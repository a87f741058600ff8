import { heightOn, placeOver } from '../bridge/graph.ts';
import { footprintOutline } from '../bridge/outline.ts';
import { stretchesAlong } from '../bridge/spans.ts';
import { type Half, undersideHeight } from '../bridge/surface.ts';
import { bridgeTopAt, topLine, topLineWith, wingSpan } from '../bridge/top-line.ts';
import { levelRadius } from '../bridge/wings/hollow.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { shoulderBass, shoulderTreble, topHeight } from './bridge.ts';
import type { Figure, How } from './figure.ts';
import { dropIs } from './heights.ts';
import { type Given, inputs } from './inputs.ts';
import { lengthOf } from './outline.ts';
import { sources } from './sources.ts';

/*
 * The bridge where a section along the guitar cuts it off the middle, half-way between its front and its rear: across it is one upper line, of deck, shoulders, wings and pyramids, over one underside.
 */

const length = { kind: 'length', per: 'job' } as const;
type Sources = Parameters<typeof inputs>[3];
type Part = Pick<How, 'formula' | 'source'> & { readonly takes: Sources };

/** Whether the section is drawn off the middle, and there is a bridge. */
const isCut = (job: Settled, design: Design): boolean =>
  job.show.sectionAcross !== 0 && stretchesAlong(footprintOutline(job, design))(job.show.sectionAcross).length > 0;

const hair = 1e-9;

/** The arc that rounds a shoulder at the section; undefined where the section is beside it. */
const roundedAt = (job: Settled, y: number): Part | undefined => {
  const sharp = topLineWith(job, { shoulder: 'sharp' });
  const line = topLine(job);
  if (sharp === undefined || Math.abs(heightOn(sharp, y) - heightOn(line, y)) < hair) return undefined;
  const { segment } = placeOver(line, y);
  if (segment.kind !== 'arc') return undefined;
  const centre = (name: string, value: number): Given => ({ name, value, kind: 'length' });
  const across = centre('across, the middle of the arc that rounds the shoulder', segment.centre.x);
  const isHollow = Math.sin(segment.start + segment.sweep / 2) > 0;
  const height = centre('from the fret plane, the middle of that arc', -segment.centre.y);
  return {
    formula: `z = z_m ${isHollow ? '−' : '+'} √(r${isHollow ? '_h' : ''}² − (y − y_m)²): on the arc that touches deck and wing`,
    takes: { [isHollow ? 'r_h' : 'r']: 'bridge.shoulder', y_m: across, z_m: height },
    source: sources.geometry,
  };
};

const deck = ({ bridge }: Settled): Part => ({
  formula:
    bridge.topRadius === 'flat'
      ? 'z = z_1 + (z_2 − z_1)·(y + w/2)/w; R_b is flat'
      : 'z = z_m + √(R_b² − (y − y_m)²); the middle (y_m, z_m) lies R_b from the shoulders (−w/2, z_1) and (w/2, z_2), below them',
  takes: { R_b: 'bridge.topRadius', w: 'bridge.deckWidth', z_1: shoulderBass, z_2: shoulderTreble },
  source: sources.geometry,
});

const tipPath = ({ bridge }: Settled, half: Half): string =>
  half === 1 && bridge.tipTreble !== 'same' ? 'bridge.tipTreble' : 'bridge.tipThickness';

/** What a wing takes, and where it ends: at the tip, or a pyramid's foot. */
const ends = (job: Settled, half: Half) => {
  const hasPyramid = job.bridge.footprint === 'pyramid';
  return {
    takes: {
      z_t: topHeight,
      R_t: 'guitar.topRadius',
      T_t: tipPath(job, half),
      l: lengthOf(job),
      ...(hasPyramid && { p: 'bridge.pyramidWidth' }),
    },
    says: `z_e = z_t − drop(R_t, e) + T_t; e = l/2${hasPyramid ? ' − p' : ''}; ${dropIs}`,
  };
};

/** Out from the shoulder, by the wing's style: its formula and the radius of its arcs, if it has any. */
const wingLine = (job: Settled, half: Half): { readonly formula: string; readonly takes: Sources } => {
  const { wing, scoop } = job.bridge;
  const span = wingSpan(job, half);
  const radius = (of: string, value: number): Given => ({ name: `the wing’s radius, ${of}`, value, kind: 'length' });
  if (span === undefined || wing === 'straight') return { formula: 'z = z_s − H·u/s', takes: {} };
  switch (wing) {
    case 'round':
      return {
        formula: 'z = z_s − R_o + √(R_o² − u²)',
        takes: { R_o: radius('level at the shoulder, (s² + H²)/(2·H)', levelRadius(span)) },
      };
    case 'ogee':
      return {
        formula: 'z = z_s − R_g + √(R_g² − u²) up to u = s/2, from there z = z_e + R_g − √(R_g² − (s − u)²)',
        takes: { R_g: radius('level at both ends, (s² + H²)/(4·H)', levelRadius(span) / 2) },
      };
    case 'hollow':
      return scoop === 'level'
        ? {
            formula: 'z = z_e + R_h − √(R_h² − (s − u)²)',
            takes: { R_h: radius('level at the tip, (s² + H²)/(2·H)', levelRadius(span)) },
          }
        : {
            formula:
              'z = z_m − √(R² − (u − u_m)²); the middle (u_m, z_m) lies R from (0, z_s) and (s, z_e), above them',
            takes: { R: 'bridge.scoop' },
          };
  }
};

const wing = (job: Settled, half: Half): Part => {
  const { takes, says } = ends(job, half);
  const line = wingLine(job, half);
  return {
    formula: `${line.formula}; u = |y| − w/2, s = e − w/2, H = z_s − z_e; ${says}`,
    takes: { ...takes, ...line.takes, w: 'bridge.deckWidth', z_s: half < 0 ? shoulderBass : shoulderTreble },
    source: sources.geometry,
  };
};

const pyramid = (job: Settled, half: Half): Part => ({
  formula: `z = b + (z_r − (z_e + z_l)/2)·(1 − |2·(|y| − e)/p − 1|); b = z_e + (z_l − z_e)·(|y| − e)/p; z_r = z_t − drop(R_t, l/2 − p/2) + T_r; z_l = z_t − drop(R_t, l/2) + T_t; ${ends(job, half).says}`,
  takes: { ...ends(job, half).takes, T_r: 'bridge.pyramidThickness' },
  source: sources.geometry,
});

const partAt = (job: Settled, y: number): Part => {
  const { footprint, deckWidth, pyramidWidth } = job.bridge;
  const half: Half = y < 0 ? -1 : 1;
  const rounded = roundedAt(job, y);
  if (rounded !== undefined) return rounded;
  if (footprint === 'pyramid' && Math.abs(y) > job.bridge.length / 2 - pyramidWidth) return pyramid(job, half);
  return Math.abs(y) <= deckWidth / 2 ? deck(job) : wing(job, half);
};

export const sectionTop: Figure = {
  ...length,
  id: 'sectionTop',
  title: 'Height of the bridge’s top at the section',
  about:
    'Deck, shoulder, wing or tip where the section along the guitar cuts it, from the fret plane; below it if negative.',
  value: (job, design) => (isCut(job, design) ? bridgeTopAt(job, job.show.sectionAcross) : undefined),
  how: (job, design, k) => {
    const { formula, takes, source } = partAt(job, job.show.sectionAcross);
    return { formula, inputs: inputs(job, design, k, { y: 'show.sectionAcross', ...takes }), source };
  },
};

export const sectionUnderside: Figure = {
  ...length,
  id: 'sectionUnderside',
  title: 'Height of the bridge’s underside at the section',
  about: 'Where it lies on the top at the saddle line, from the fret plane; below it if negative.',
  value: (job, design) => (isCut(job, design) ? undersideHeight(job, job.show.sectionAcross) : undefined),
  how: (job, design, k) => ({
    formula: `z_u = z_t − drop(R_t, y); ${dropIs}`,
    inputs: inputs(job, design, k, { z_t: topHeight, R_t: 'guitar.topRadius', y: 'show.sectionAcross' }),
    source: sources.definition,
  }),
};

export const sectionThickness: Figure = {
  ...length,
  id: 'sectionThickness',
  title: 'Thickness at the section',
  about: 'How thick the bridge is where the section along the guitar cuts it, its front and back edges left out.',
  value: (job, design) => {
    const [top, under] = [sectionTop.value(job, design, 0), sectionUnderside.value(job, design, 0)];
    return typeof top === 'number' && typeof under === 'number' ? top - under : undefined;
  },
  how: (job, design, k) => ({
    formula: 'T = z − z_u',
    inputs: inputs(job, design, k, { z: sectionTop, z_u: sectionUnderside }),
    source: sources.definition,
  }),
};
