import type { Primitive } from '../drawing.ts';
import { getAt, patternOf } from '../fields.ts';
import type { Job } from '../job.ts';
import {
  blank,
  footprint,
  pinsAbove,
  pinsInTwo,
  pinsOnArc,
  plate,
  scarOf,
  sections,
  slotAbove,
  topAbove,
} from './above.ts';
import { boardRadius, pairRow, pyramidEnd, range, row, tail } from './across.ts';
import * as choices from './choices.ts';
import { neck } from './neck.ts';
import { behind, crownOver, pin, section, tied, wire } from './section.ts';
import { dome, domeAlong, relief, straightedge, strung } from './side.ts';
import { drawn, type Sketch } from './sketch.ts';

export { litPath, paper, type Sketch } from './sketch.ts';

/** A sketch, and what is lit on it. */
export interface Shown {
  readonly sketch: Sketch;
  readonly lit: string;
}
type Show = Shown | ((job: Job, path: string) => Shown);

const on =
  (sketch: Sketch) =>
  (lit: string): Shown => ({ sketch, lit });
/** On the bridge from above, as this job's is. */
const onFootprint =
  (lit: string): Show =>
  ({ bridge }) => ({ sketch: footprint(bridge.footprint, bridge.ends), lit });
const onScar =
  (lit: string): Show =>
  ({ scar }) => ({ sketch: scarOf(scar.outline === 'none' ? 'rectangle' : scar.outline), lit });
/** Where the strings are held as this job's are. */
const onHold =
  (lit: string, pins: Shown): Show =>
  ({ pins: { hold } }) =>
    hold === 'pins' ? pins : { sketch: hold === 'tied' ? tied : behind, lit };
const onRow =
  (lit: string): Show =>
  ({ strings }) => ({ sketch: strings.courses === 'pairs' ? pairRow : row, lit });
const chosen =
  (sketch: Sketch, of: (job: Job) => string): Show =>
  (job) => ({ sketch, lit: of(job) });

const inNeck = on(neck);
const inStrung = on(strung);
const inSection = on(section);
const inTail = on(tail);
const inTop = on(topAbove);
const inSlot = on(slotAbove);

/** Where each field is measured, by its path with `*` for the keys of lists' items. Whatever is chosen among shapes shows them all. */
const shows: Readonly<Record<string, Show>> = {
  'show.sectionAcross': on(sections)('across'),
  'show.sectionAlong': on(sections)('along'),

  'strung.thickness': inStrung('thickness'),
  'strung.exposure': inStrung('exposure'),
  'strung.actionBass': inStrung('action'),
  'strung.actionTreble': inStrung('action'),
  'strung.firstFretBass': inStrung('firstFret'),
  'strung.firstFretTreble': inStrung('firstFret'),
  'strung.relief': on(relief)('relief'),
  'strung.light': inStrung('light'),

  'guitar.scale': inNeck('scale'),
  'guitar.measured.*.fret': inNeck('fret'),
  'guitar.measured.*.distance': inNeck('distance'),
  'guitar.frets': inNeck('frets'),
  'guitar.bodyJoint': inNeck('joint'),
  'guitar.boardRadiusNut': on(boardRadius)('nut'),
  'guitar.boardRadiusEnd': on(boardRadius)('end'),
  'guitar.nutSpread': inNeck('nutSpread'),
  'guitar.boardWidth': inNeck('boardWidth'),
  'guitar.neckPlaneHeight': on(straightedge)('height'),
  'guitar.rise': on(straightedge)('rise'),
  'guitar.topRadius': on(dome)('across'),
  'guitar.heelDepth': on(straightedge)('heel'),
  'guitar.relief': on(relief)('relief'),

  'scar.outline': onScar('outline'),
  'scar.fromNut': inNeck('toBridge'),
  'scar.length': onScar('length'),
  'scar.depth': onScar('depth'),
  'scar.wingDepth': onScar('wingDepth'),
  'scar.bellyWidth': onScar('bellyWidth'),

  'top.radiusAlong': on(domeAlong)('along'),
  'top.holes.*.across': inTop('holeAcross'),
  'top.holes.*.fromNut': inTop('holeFromNut'),
  'top.holes.*.diameter': inTop('holeDiameter'),
  'top.rises.*.across': inTop('riseAcross'),
  'top.rises.*.fromNut': inTop('riseFromNut'),
  'top.rises.*.height': on(dome)('height'),
  'top.braces.*.across': inTop('braceAcross'),
  'top.braces.*.fromNut': inTop('braceFromNut'),
  'top.braces.*.acrossTo': inTop('braceAcrossTo'),
  'top.braces.*.fromNutTo': inTop('braceFromNutTo'),
  'top.braces.*.width': inTop('braceWidth'),

  'action.bass': inStrung('action'),
  'action.treble': inStrung('action'),
  'action.firstFretBass': inStrung('firstFret'),
  'action.firstFretTreble': inStrung('firstFret'),

  'strings.spacing': chosen(choices.spacings, ({ strings }) => strings.spacing),
  'strings.courses': chosen(choices.courses, ({ strings }) => strings.courses),
  'strings.pairGap': on(pairRow)('pairGap'),
  'strings.spread': onRow('spread'),
  'strings.finger': inStrung('finger'),
  'strings.list.*.pitch': inStrung('string'),
  'strings.list.*.gauge': on(wire)('gauge'),
  'strings.list.*.core': on(wire)('core'),
  'strings.list.*.nutPlace': inNeck('nutPlace'),
  'strings.list.*.saddlePlace': onRow('place'),
  'strings.list.*.setback': on(crownOver)('setback'),
  'strings.list.*.cents': inStrung('octave'),

  'bridge.footprint': onFootprint('outline'),
  'bridge.length': onFootprint('length'),
  'bridge.depth': onFootprint('depth'),
  'bridge.wingDepth': onFootprint('wingDepth'),
  'bridge.bellyWidth': onFootprint('bellyWidth'),
  'bridge.waistDepth': onFootprint('waistDepth'),
  'bridge.waistWidth': onFootprint('waistWidth'),
  'bridge.ends': chosen(choices.ends, ({ bridge }) => bridge.ends),
  'bridge.cornerRadius': onFootprint('corner'),
  'bridge.pyramidWidth': onFootprint('pyramidWidth'),
  'bridge.pyramidThickness': on(pyramidEnd)('ridge'),
  'bridge.points.*.across': onFootprint('pointAcross'),
  'bridge.points.*.along': onFootprint('pointAlong'),
  'bridge.points.*.turn': (job, path) => ({ sketch: choices.turns, lit: String(getAt(job, path) ?? 'smooth') }),
  'bridge.mirrored': chosen(choices.symmetries, ({ bridge }) => bridge.mirrored),
  'bridge.frontToSaddle': inSection('frontToSaddle'),
  'bridge.thickness': inTail('thickness'),
  'bridge.topRadius': inTail('topRadius'),
  'bridge.tilt': inTail('tilt'),
  'bridge.deckWidth': inTail('deck'),
  'bridge.tipThickness': inTail('tip'),
  'bridge.tipTreble': inTail('tipTreble'),
  'bridge.wing': chosen(choices.wings, ({ bridge }) => bridge.wing),
  'bridge.scoop': inTail('scoop'),
  'bridge.shoulder': inTail('shoulder'),
  'bridge.edge': chosen(choices.edges, ({ bridge }) => bridge.edge),
  'bridge.edgeSize': inSection('edge'),

  'slot.width': inSection('slotWidth'),
  'slot.length': inSlot('length'),
  'slot.depth': inSection('slotDepth'),
  'slot.ends': chosen(choices.slotEnds, ({ slot }) => slot.ends),
  'slot.floor': chosen(choices.floors, ({ slot }) => slot.floor),
  'slot.line': inSlot('place'),
  'slot.fromNut': inNeck('toSaddle'),
  'slot.slant': inSlot('slant'),

  'saddle.crown': chosen(choices.crowns, ({ saddle }) => saddle.crown),
  'saddle.play': inSlot('play'),
  'saddle.proud': inSection('proud'),
  'saddle.under': inSection('under'),
  'saddle.wireHole': inSlot('wire'),
  'saddle.wireAcross': inSlot('wireAcross'),

  'pins.hold': onHold('held', inSection('held')),
  'pins.spread': on(pinsAbove)('spread'),
  'pins.fromSaddle': onHold('toPins', inSection('toPins')),
  'pins.row': chosen(choices.pinRows, ({ pins }) => pins.row),
  'pins.arcRise': on(pinsOnArc)('arcRise'),
  'pins.secondRow': on(pinsInTwo)('secondRow'),
  'pins.secondAside': on(pinsInTwo)('secondAside'),
  'pins.below': on(tied)('below'),
  'pins.taper': on(pin)('taper'),
  'pins.pinDiameter': on(pin)('diameter'),
  'pins.ramp': inSection('ramp'),
  'pins.rampDepth': inSection('rampDepth'),
  'pins.hole': onHold('hole', on(pin)('hole')),
  'pins.leaves': inSection('leaves'),

  'plate.cap': inSection('cap'),
  'plate.length': on(plate)('length'),
  'plate.depth': on(plate)('depth'),
  'plate.grain': chosen(choices.grains, ({ plate: { grain } }) => grain),

  'stock.allowance': on(blank)('allowance'),

  'setup.log.*.readings.*.action': inStrung('action'),
  'setup.log.*.readings.*.cents': inStrung('octave'),

  'limits.*.doubtfulFrom': on(range)('doubtfulFrom'),
  'limits.*.from': on(range)('from'),
  'limits.*.to': on(range)('to'),
  'limits.*.doubtfulTo': on(range)('doubtfulTo'),
};

/** Every range has the same four bounds. */
const tableKey = (path: string): string | undefined => patternOf(path)?.replace(/^limits\.[^.]+\./, 'limits.*.');

/** Where the field at a path is measured, on a guitar like this job's; undefined where there is nothing to hold a rule to. */
export const sketchOf = (path: string, job: Job): Shown | undefined => {
  const key = tableKey(path);
  const show = key === undefined ? undefined : shows[key];
  return typeof show === 'function' ? show(job, path) : show;
};

/** A sketch's strokes and texts, those that are lit under the job path `lit`. */
export const sketchPrimitives = ({ sketch, lit }: Shown): readonly Primitive[] => drawn(sketch, lit);
