import { footprints } from './bridge/footprints/index.ts';
import { type FittedScale, fewestFrets, fitScale } from './instrument/scale.ts';
import { missingReadings, type NeckPlaneAtPitch, neckPlaneAtPitch } from './instrument/strung.ts';
import type { Job } from './job.ts';
import type { Problem } from './problem.ts';
import { sayFor } from './say.ts';
import { strungLabels } from './schema/strung-labels.ts';
import type { ShowUnits } from './units.ts';

/** A job whose readings are settled: every measurement that may be worked out from others stands as a number. It may name the decimal mark of whoever reads it (`readAs`). */
export type Settled = Job & {
  readonly show: Pick<ShowUnits, 'decimal'>;
  readonly guitar: { readonly scale: number; readonly neckPlaneHeight: number; readonly rise: number };
};

/** Rise under tension that is taken where nothing was measured, mm [practice]. */
export const assumedRise = 0.7;

/** Where the settled numbers come from. */
export interface Readings {
  /** The scale by the measured frets, if there are enough of them. */
  readonly frets: FittedScale | undefined;
  readonly scaleFrom: 'typed' | 'frets';
  readonly atPitch: NeckPlaneAtPitch;
  readonly neckPlaneFrom: 'typed' | 'strung';
  readonly riseFrom: 'typed' | 'readings' | 'assumed';
}

export type Settling =
  | { readonly ok: true; readonly job: Settled; readonly readings: Readings }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/** A bridge whose outline is drawn by points has the length and depth that these give it. */
const sized = (bridge: Job['bridge']): Job['bridge'] => ({ ...bridge, ...footprints[bridge.footprint].size?.(bridge) });

const label = (key: keyof Job['strung']): string => strungLabels[key];

/** Puts numbers in place of the words that say where they come from, or says which readings are missing. */
export const settle = (job: Job): Settling => {
  const { guitar, strung, strings } = job;
  const frets = fitScale(guitar.measured);
  const scale = guitar.scale === 'frets' ? frets?.scale : guitar.scale;
  if (scale === undefined || scale < 300 || scale > 1000) {
    const n = guitar.measured.length;
    const { mm } = sayFor(job);
    const says =
      scale === undefined
        ? `The scale length is to come from the measured frets, but ${n === 0 ? 'none is' : n === 1 ? 'only one is' : `only ${n} are`} given. Measure at least ${fewestFrets}, or type the scale length.`
        : `By the measured frets the scale length would be ${mm(scale)}; it may be from ${mm(300)} to ${mm(1000)}. Check the frets’ numbers and distances.`;
    return { ok: false, problems: [{ path: 'guitar.scale', value: guitar.scale, says }] };
  }
  const setback = strings.list.reduce((sum, string) => sum + string.setback, 0) / strings.list.length;
  const atPitch = neckPlaneAtPitch(strung, { scale, bodyJoint: guitar.bodyJoint, setback });
  const pitchHeight = atPitch.strung ?? atPitch.straightedge;
  const bothRead = guitar.neckPlaneHeight !== 'strung' && pitchHeight !== undefined;
  const rise =
    guitar.rise !== 'readings'
      ? guitar.rise
      : bothRead
        ? (guitar.neckPlaneHeight as number) - pitchHeight
        : assumedRise;
  const riseFrom = guitar.rise !== 'readings' ? 'typed' : bothRead ? 'readings' : 'assumed';
  if (guitar.neckPlaneHeight === 'strung' && pitchHeight === undefined) {
    const missing = missingReadings(strung);
    const says = `The straightedge’s height is to come from the strung guitar, but these are not taken: ${missing.map((key) => `“${label(key)}”`).join(', ')}. Take them, or “${label('light')}” with “${label('thickness')}”; or type the height.`;
    return { ok: false, problems: [{ path: 'guitar.neckPlaneHeight', value: 'strung', says }] };
  }
  const neckPlaneHeight = guitar.neckPlaneHeight === 'strung' ? (pitchHeight ?? 0) + rise : guitar.neckPlaneHeight;
  return {
    ok: true,
    job: { ...job, guitar: { ...guitar, scale, neckPlaneHeight, rise }, bridge: sized(job.bridge) },
    readings: {
      frets,
      scaleFrom: guitar.scale === 'frets' ? 'frets' : 'typed',
      atPitch,
      neckPlaneFrom: guitar.neckPlaneHeight === 'strung' ? 'strung' : 'typed',
      riseFrom,
    },
  };
};
