import type { Primitive } from '../drawing.ts';
import { patternOf } from '../fields.ts';
import type { Settled } from '../settle.ts';

/** A field's marks by their ids within their view; an id that ends in a full stop stands for all that begin with it. `ID` stands for the key of the list's item, such as a string. */
type Shows = Readonly<Record<string, readonly string[]>>;

const outline = ['bridge.outline'];
const profile = ['bridge.profile', 'bridge.profile.'];
const pinRow = ['pin.'];

/** What shows a number beside the marks that carry its path: what it shapes, where no dimension of its own is drawn. */
const always: Shows = {
  'guitar.scale': ['fromNut', 'break.'],
  'guitar.boardRadiusNut': ['board', 'board.radius'],
  'guitar.nutSpread': ['string.', 'string'],
  'strings.spread': ['string.'],
  'strings.finger': ['break.'],
  'strings.pairGap': ['string.'],
  'strings.list.*.pitch': ['break.ID'],
  'strings.list.*.core': ['break.ID'],
  'strings.list.*.cents': ['break.ID'],
  'strings.list.*.gauge': ['string.ID'],
  'strings.list.*.nutPlace': ['string.ID', 'string.ID.name'],
  'strings.list.*.saddlePlace': ['string.ID', 'gap.ID'],
  'scar.fromNut': ['scar'],
  'scar.length': ['scar'],
  'scar.depth': ['scar'],
  'scar.wingDepth': ['scar'],
  'scar.bellyWidth': ['scar'],
  'top.holes.*.across': ['hole.ID'],
  'top.holes.*.fromNut': ['hole.ID'],
  'top.rises.*.across': ['rise.ID.'],
  'top.rises.*.fromNut': ['rise.ID.'],
  'top.braces.*.across': ['brace.ID.'],
  'top.braces.*.fromNut': ['brace.ID.'],
  'top.braces.*.acrossTo': ['brace.ID.'],
  'top.braces.*.fromNutTo': ['brace.ID.'],
  'bridge.wingDepth': outline,
  'bridge.bellyWidth': outline,
  'bridge.waistDepth': outline,
  'bridge.waistWidth': outline,
  'bridge.cornerRadius': outline,
  'bridge.points.*.across': outline,
  'bridge.points.*.along': outline,
  'bridge.pyramidThickness': profile,
  'bridge.tilt': profile,
  'bridge.scoop': profile,
  'bridge.shoulder': profile,
  'bridge.edgeSize': ['bridge.edge.', 'bridge.section'],
  'slot.slant': ['slot'],
  'slot.length': ['saddle'],
  'slot.width': ['slot'],
  'saddle.play': ['saddle', 'saddle.section'],
  'saddle.wireAcross': ['wireHole'],
  'pins.arcRise': pinRow,
  'pins.secondRow': pinRow,
  'pins.secondAside': pinRow,
  'pins.pinDiameter': pinRow,
  'pins.taper': pinRow,
  'pins.rampDepth': ['pin.ramp'],
  'pins.below': ['string'],
  'pins.leaves': ['string'],
};

/** What hangs on the job besides: the outer strings' gaps go by the wanted heights, and both tips by one thickness where they are the same. */
const inJob = ({ strings, bridge }: Settled): Shows => {
  const [bass, treble] = [strings.list[0]?.id, strings.list.at(-1)?.id].map((id) => [`gap.${id}`, `gap.${id}.value`]);
  return {
    'action.bass': bass ?? [],
    'action.firstFretBass': bass ?? [],
    'action.treble': treble ?? [],
    'action.firstFretTreble': treble ?? [],
    'bridge.tipTreble': bridge.tipTreble === 'same' ? ['bridge.tipThickness.'] : [],
  };
};

/** The key in a path at the place where its pattern has a `*`. */
const keyIn = (path: string, pattern: string): string => path.split('.')[pattern.split('.').indexOf('*')] ?? '';

/** Whether a stroke or text of a view, or of the three together, shows the number at this path: so it is lit while that number is in focus. */
export const litBy = (path: string | undefined, job: Settled): ((p: Pick<Primitive, 'id' | 'jobPath'>) => boolean) => {
  if (path === undefined) return () => false;
  const pattern = patternOf(path) ?? path;
  const ids = (inJob(job)[pattern] ?? always[pattern] ?? []).map((id) => id.replace('ID', () => keyIn(path, pattern)));
  return ({ id, jobPath }) => {
    if (jobPath === path) return true;
    if (ids.length === 0) return false;
    const own = id.replace(/^(above|tail|middle)\./, '');
    return ids.some((shown) => own === shown || (shown.endsWith('.') && own.startsWith(shown)));
  };
};
