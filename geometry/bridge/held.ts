import type { Job } from '../job.ts';

/** How the strings' ends are held: by ball ends under pins in a sound plate; by ball ends that pull into a worn one; or by the bridge itself, tied at a block or at its back edge. */
export type Held = 'pins' | 'wornPlate' | 'tied';

/** How the strings' ends are held in this job: a worn plate with a cap on it is as good as a sound one. */
export const heldIn = ({ pins, plate }: Pick<Job, 'pins' | 'plate'>): Held => {
  if (pins.hold !== 'pins') return 'tied';
  return plate.state === 'worn' && plate.cap === 'none' ? 'wornPlate' : 'pins';
};

export const helds: readonly Held[] = ['pins', 'wornPlate', 'tied'];
