import { bridgeBlank, bridgeSize, capBlank, type RawPiece } from '../bridge/stock.ts';
import { bridgeVolume } from '../bridge/volume.ts';
import { woods } from '../bridge/woods.ts';
import type { Design } from '../design.ts';
import type { Settled } from '../settle.ts';
import type { Figure } from './figure.ts';
import { type Given, inputs } from './inputs.ts';

const job = { per: 'job' } as const;

/** mm³ in a cm³. */
const cubed = 1000;

const part = (name: string, volume: number): Given => ({ name, value: volume / cubed, kind: 'count' });

export const bridgeVolumeFigure: Figure = {
  ...job,
  id: 'bridgeVolume',
  title: 'Bridge, volume in cm³',
  about: 'The wood of the finished bridge, slot and pin holes taken out.',
  kind: 'count',
  value: (settled, design) => bridgeVolume(settled, design).wood / cubed,
  how: (settled, design, k) => {
    const { whole, slot, holes, edges } = bridgeVolume(settled, design);
    return {
      formula:
        'V = V_w − V_s − V_h − V_e; V_w = ∬(z_top − z_underside) dA over the footprint; V_s = ∬(z_top − z_floor) dA over the slot; V_h: each hole’s area times the thickness at its middle; V_e: what round-over or chamfer takes off, its section times the deck’s width, front and back',
      inputs: inputs(settled, design, k, {
        V_w: part('between top and underside, cm³', whole),
        V_s: part('the slot, cm³', slot),
        V_h: part('the pin holes, cm³', holes),
        V_e: part('off the edges, cm³', edges),
      }),
      source: 'Cavalieri’s principle; Gauss’s quadrature (Abramowitz & Stegun, table 25.4).',
    };
  },
};

export const bridgeWeightFigure: Figure = {
  ...job,
  id: 'bridgeWeight',
  title: 'Bridge, weight in g',
  about: 'By a handbook’s mean density of its wood: one board may be a tenth lighter or heavier.',
  kind: 'count',
  value: (settled, design) =>
    ((bridgeVolumeFigure.value(settled, design, 0) as number) * woods[settled.stock.wood].density) / 1000,
  how: (settled, design, k) => {
    const { name, density, source } = woods[settled.stock.wood];
    return {
      formula: 'W = V·ρ/1000',
      inputs: inputs(settled, design, k, {
        V: bridgeVolumeFigure,
        ρ: { name: `density of ${name}, kg/m³`, value: density, kind: 'count' },
      }),
      source: `Definition. Density: ${source}.`,
    };
  },
};

const sides = [
  ['length', 'Length', 'l_B', 'across the guitar'],
  ['depth', 'Depth', 'd_B', 'along the guitar'],
  ['thickness', 'Thickness', 'T_B', 'from its lowest place to its highest'],
] as const;

/** The three sides of a blank: each the piece's own size and the allowance twice. */
const blankFigures = (
  id: 'bridgeBlank' | 'capBlank',
  title: string,
  piece: string,
  of: (settled: Settled, design: Design) => RawPiece | undefined,
  own: (settled: Settled, design: Design, k: number) => string | Given,
): readonly Figure[] =>
  sides.map(([side, named, symbol, where], k) => ({
    ...job,
    id: `${id}${named}`,
    title: `${title}, ${side}`,
    about: `How much the raw piece for the ${piece} measures ${where}, with the allowance on every side.`,
    kind: 'length',
    value: (settled, design) => of(settled, design)?.[side],
    how: (settled, design) => ({
      formula: `${symbol} = s + 2·a`,
      inputs: inputs(settled, design, 0, { s: own(settled, design, k), a: 'stock.allowance' }),
      source: 'Definition; the allowance is for saw and plane.',
    }),
  }));

const cap = ['plate.length', 'plate.depth', 'plate.cap'] as const;

export const blanks: readonly Figure[] = [
  ...blankFigures('bridgeBlank', 'Bridge blank', 'bridge', bridgeBlank, (settled, design, k) => ({
    name: `the bridge’s own ${sides[k]?.[0]}`,
    value: bridgeSize(settled, design)[k] ?? 0,
    kind: 'length',
  })),
  ...blankFigures('capBlank', 'Plate cap blank', 'plate cap', capBlank, (_, __, k) => cap[k] ?? ''),
];
