import { bridgeBlank } from '../../geometry/bridge/stock.ts';
import { woods } from '../../geometry/bridge/woods.ts';
import type { Design } from '../../geometry/design.ts';
import { blank } from '../../geometry/saddle/blank.ts';
import type { Settled } from '../../geometry/settle.ts';
import { formatQuantity } from '../../geometry/units.ts';
import { heading, paragraph, type Row, toTick, toWrite } from '../text-pages.ts';

/** Standard gravity, N/kg: CODATA and ISO 80000-3. */
const gravity = 9.80665;

type Step =
  | { readonly kind: 'do' | 'mind' | 'write'; readonly says: string }
  | { readonly kind: 'part'; readonly says: string };

const doing = (says: string): Step => ({ kind: 'do', says });
const mind = (says: string): Step => ({ kind: 'mind', says });
const write = (says: string): Step => ({ kind: 'write', says });
const part = (says: string): Step => ({ kind: 'part', says });
const when = (is: boolean, ...steps: readonly Step[]): readonly Step[] => (is ? steps : []);

/** The order of work for this job, with the cautions where they belong. */
const stepsOf = (job: Settled, design: Design): readonly Step[] => {
  const mm = (value: number) => formatQuantity(value, 'length', job.show, { unit: true });
  const isBridge = job.work === 'bridge';
  const pull = design.totalTension;
  const wood = bridgeBlank(job, design);
  const bone = blank(job, design);
  const tied = job.pins.hold !== 'pins';
  return [
    part('Before anything comes apart'),
    doing('Read the strung guitar: action, exposure, relief, the old bridge, light under the straightedge.'),
    mind(
      `The strings pull ${formatQuantity(pull, 'force', job.show, { unit: true })} together, as much as ${Math.round(pull / gravity)} kg weigh. Slacken them by turns before any work, and protect your eyes.`,
    ),
    part('Strings off'),
    doing(
      isBridge
        ? 'Measure scale, board radius, spreads, straightedge, the top along and across, braces, plate and holes.'
        : 'Measure scale, board radius, spreads, straightedge, the slot and the bridge as it is.',
    ),
    doing('Print the templates at 100 %. Measure the check bars of every sheet and write down what they read.'),
    ...when(
      isBridge,
      mind(
        'Heat and solvents harm an old finish, and the finish may be nitrocellulose, which burns, or hold lead: try a hidden place, no open flame, fresh air, no dry sanding.',
      ),
      doing('Take the old bridge off, the slowest way first; keep it.'),
      part('The bridge'),
      mind('Some woods are protected (CITES): check before you buy, sell or ship.'),
      doing(
        `Saw the blank, ${woods[job.stock.wood].name}: ${mm(wood.length)} by ${mm(wood.depth)} by ${mm(wood.thickness)}.`,
      ),
      mind(
        'Ebony and rosewood dust harms: extraction and a respirator. At a bandsaw or belt sander hold small parts in a clamp, never in the fingers.',
      ),
      doing('Fit the underside to the top before anything is cut from above.'),
      doing(
        'Trace the footprint; saw outside the line, then file to it. Shape the top and the wings by the end profile.',
      ),
      doing(`Rout the slot ${mm(job.slot.width)} wide, ${mm(job.slot.depth)} deep.`),
      doing(tied ? 'Drill the holes for the strings.' : 'Drill the pin holes; ream each until its pin seats.'),
      ...when(job.plate.cap !== 'none', doing('Glue the plate cap to the plate, grain as drawn, before the bridge.')),
      doing(
        'Mark the place from the nut, on both sides; mask it; clear the finish inside the line, no deeper than the wood.',
      ),
      doing('Clamp it dry with its cauls: no light under it anywhere, nothing in the way inside.'),
      doing('Glue it, clamp from the middle outwards, wipe off what comes out, look again at its place.'),
      write('Glue'),
      write('Clamped from, to'),
      write('Humidity, temperature'),
    ),
    part('The saddle'),
    mind('Bone dust harms: extraction and a respirator; hold small parts in a clamp.'),
    doing(
      `Saw the saddle’s blank: ${mm(bone.length)} by ${mm(bone.height)} by ${mm(bone.thickness)}. Fit it to the slot: it goes in by hand and stands by itself.`,
    ),
    doing('Mark the heights from its template, shape the crown, then round it; leave what is proud at the bottom.'),
    part('Set-up'),
    doing('String it and bring it to pitch by turns. Set the relief, then the nut, then the saddle.'),
    doing('Measure the action at fret 12, type it in, take the rest off the bottom; file the break points.'),
    write('Action measured, bass and treble'),
    doing('Measure again after a day.'),
    write('Action after a day, bass and treble'),
    doing('Keep the record: glue, clamp time, humidity, readings before and after.'),
    mind('Follow local rules. Where you are in doubt, ask a qualified repairer.'),
  ];
};

const rowOf = ({ kind, says }: Step, width: number): Row => {
  switch (kind) {
    case 'part':
      return { ...paragraph(says, width, { bold: true }), keeps: true };
    case 'do':
      return toTick(says, width);
    case 'mind':
      return paragraph(`Caution: ${says}`, width, { bold: true, inward: true });
    case 'write':
      return toWrite(says, width);
  }
};

/** The order of work, with boxes to tick, lines to write on and its cautions. */
export const workRows = (job: Settled, design: Design, width: number): readonly Row[] => [
  heading('The order of work'),
  ...stepsOf(job, design).map((step) => rowOf(step, width)),
];
