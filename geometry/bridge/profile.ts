import type { Settled } from '../settle.ts';
import { pen } from '../shape/path.ts';
import type { Path } from '../shape/types.ts';
import { deckHeight, undersideHeight } from './surface.ts';

/** The heights that the end profile runs through, above the fret plane at pitch, mm. */
export interface ProfileHeights {
  readonly shoulderBass: number;
  readonly shoulderTreble: number;
  readonly tipTop: number;
  readonly tipUnderside: number;
}

export const profileHeights = (job: Settled): ProfileHeights => {
  const tipUnderside = undersideHeight(job, job.bridge.length / 2);
  return {
    shoulderBass: deckHeight(job, -job.bridge.deckWidth / 2),
    shoulderTreble: deckHeight(job, job.bridge.deckWidth / 2),
    tipTop: tipUnderside + job.bridge.tipThickness,
    tipUnderside,
  };
};

/** Radius of a hollow wing, mm: the arc through the shoulder that runs out level at the tip, `(w² + H²)/(2H)` for a wing w wide that falls by H. */
export const hollowRadius = (width: number, fall: number): number => (width ** 2 + fall ** 2) / (2 * fall);

/**
 * The bridge's end profile, seen from the tail: x across (+ treble), y DOWN from the fret plane, mm; closed. Deck arc, wings, tips, and the
 * underside on the top's dome. With a tilt the deck stays an arc of the top radius, through its two shoulders: it leaves the sheared
 * surface of `deckHeight` by a micrometre or two.
 */
export const endProfile = (job: Settled): Path => {
  const { length, deckWidth, topRadius, wing } = job.bridge;
  const { shoulderBass, shoulderTreble, tipTop, tipUnderside } = profileHeights(job);
  const tip = length / 2;
  const shoulder = deckWidth / 2;
  const wingWidth = tip - shoulder;
  let outline = pen({ x: -tip, y: -tipUnderside }).line({ x: -tip, y: -tipTop });
  const wingTo = (to: { x: number; y: number }, fall: number) => {
    outline =
      wing === 'hollow' && wingWidth > 0 ? outline.arc(to, hollowRadius(wingWidth, fall), -1) : outline.line(to);
  };
  wingTo({ x: -shoulder, y: -shoulderBass }, shoulderBass - tipTop);
  const deckEnd = { x: shoulder, y: -shoulderTreble };
  outline = topRadius === 'flat' ? outline.line(deckEnd) : outline.arc(deckEnd, topRadius, 1);
  wingTo({ x: tip, y: -tipTop }, shoulderTreble - tipTop);
  outline = outline.line({ x: tip, y: -tipUnderside });
  const start = { x: -tip, y: -tipUnderside };
  return job.guitar.topRadius === 'flat' ? outline.close() : outline.arc(start, job.guitar.topRadius, -1).close();
};
