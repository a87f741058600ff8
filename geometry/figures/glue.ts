import { load } from '../bridge/load.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import { bridgeFront, bridgeRear } from './bridge.ts';
import type { Figure, How } from './figure.ts';
import { type Given, inputs } from './inputs.ts';
import { outlinePoints, outlineRuns } from './outline.ts';
import { sources } from './sources.ts';

type Sources = Parameters<typeof inputs>[3];

/** How a style's glued area, its middle and its second moment come from its numbers: each formula, what it takes beside the outline's own, and the numbers of the outline. */
interface Shape {
  readonly takes: Sources;
  readonly area: string;
  readonly centre: string;
  readonly moment: string;
  readonly source: string;
}

const boxes = { l: 'bridge.length', d: 'bridge.depth' };
const symmetric = 'x_c = x_f + d/2';
const straight = 'Plane geometry: a rectangle.';

const belly = {
  takes: { ...boxes, d_t: 'bridge.wingDepth', w: 'bridge.bellyWidth' },
  area: 'A = l·d_t + (d − d_t)·w/2',
  source: 'Plane geometry: a belly’s two equal arcs on each side halve the rectangle they run across.',
};

/** How deep a belly bridge is, as it stands behind the integrals over it. */
const depthIs = (from: string) =>
  `D(y), how far the footprint reaches from its straight ${from} edge at y, is d in the middle and d_t beyond the belly, w wide, with two equal arcs between them on each side`;

const rounded = {
  area: 'A = l·d − (4 − π)·r²',
  centre: symmetric,
  moment: 'I = (l − 2·r)·d³/12 + 2·r·(d − 2·r)³/12 + 4·(π·r⁴/16 + 2·h·r³/3 + π·h²·r²/4); h = d/2 − r',
  source: 'Plane geometry: rectangles and quarter circles.',
};

const free = (job: Settled): Shape => {
  const round = `round the outline, the way that makes A positive, x across and y from its foremost place. ${outlineRuns}`;
  return {
    takes: outlinePoints(job),
    area: `A = ∮x dy ${round}`,
    centre: `x_c = x_f + ∮x·y dy/A ${round}`,
    moment: `I = ∮x·(y − x_c + x_f)² dy ${round}`,
    source: sources.freeOutline,
  };
};

const shapeOf = (job: Settled): Shape => {
  const { footprint, ends, depth } = job.bridge;
  switch (footprint) {
    case 'belly':
      return {
        ...belly,
        centre: `x_c = x_f + ∫D(y)² dy/(2·A) over the length l; ${depthIs('front')}`,
        moment: `I = ∫((D(y) − e)³ + e³)/3 dy over the length l, e = x_c − x_f; ${depthIs('front')}`,
      };
    case 'bellyBefore':
      return {
        ...belly,
        centre: `x_c = x_r − ∫D(y)² dy/(2·A) over the length l; ${depthIs('rear')}`,
        moment: `I = ∫((D(y) − e)³ + e³)/3 dy over the length l, e = x_r − x_c; ${depthIs('rear')}`,
      };
    case 'waisted':
      return {
        takes: { ...boxes, d_w: 'bridge.waistDepth', w_w: 'bridge.waistWidth' },
        area: 'A = l·d − (d − d_w)·w_w/2',
        centre: symmetric,
        moment:
          'I = ∫D(y)³/12 dy over the length l; D(y), how deep the footprint is at y, is d_w in the middle and d beyond the waist, w_w wide, with two equal arcs on each edge and side between them',
        source: 'Plane geometry: the two equal arcs on each edge and side halve the rectangle they run across.',
      };
    case 'free':
      return free(job);
    case 'rectangle':
      if (ends === 'eased') return { takes: { ...boxes, r: 'bridge.cornerRadius' }, ...rounded };
      if (ends === 'round') {
        const half: Given = { name: 'half of the depth, the ends’ radius', value: depth / 2, kind: 'length' };
        return { takes: { ...boxes, r: half }, ...rounded };
      }
      break;
    case 'pyramid':
      break;
  }
  return { takes: boxes, area: 'A = l·d', centre: symmetric, moment: 'I = l·d³/12', source: straight };
};

/** Only what stands in the formula. */
const taken = (formula: string, all: Sources): Sources => {
  const symbols = new Set(formula.match(/\p{L}[\p{L}\d]*(_[\p{L}\d]+)?/gu));
  return Object.fromEntries(Object.entries(all).filter(([symbol]) => symbols.has(symbol.replace(/_\d+$/, '_k'))));
};

const how =
  (part: 'area' | 'centre' | 'moment', more: () => Sources) =>
  (job: Settled, design: Design, k: number): How => {
    const shape = shapeOf(job);
    const formula = shape[part];
    return {
      formula,
      inputs: inputs(job, design, k, taken(formula, { ...more(), ...shape.takes })),
      source: part === 'area' || job.bridge.footprint === 'free' ? shape.source : sources.centroid,
    };
  };

export const gluedArea: Figure = {
  id: 'gluedArea',
  title: 'Glued area, mm²',
  about: 'The footprint’s area, all of it taken as glued.',
  kind: 'count',
  per: 'job',
  value: (job, design) => load(job, design).area,
  how: how('area', () => ({})),
};

export const gluedCentre: Figure = {
  id: 'gluedCentre',
  title: 'Nut to the glued area’s middle',
  about: 'From the nut’s front edge to the centroid of the glued area, about which the bridge would tip.',
  kind: 'length',
  per: 'job',
  value: (job, design) => load(job, design).centreFromNut,
  how: how('centre', () => ({ x_f: bridgeFront, x_r: bridgeRear, A: gluedArea })),
};

export const secondMoment: Figure = {
  id: 'secondMoment',
  title: 'Second moment of the glued area, mm⁴',
  about: 'How much the glued area resists tipping: about the line across through its middle.',
  kind: 'count',
  per: 'job',
  value: (job, design) => load(job, design).secondMoment,
  how: how('moment', () => ({ x_f: bridgeFront, x_r: bridgeRear, x_c: gluedCentre })),
};
