import { endProfile } from '../../geometry/bridge/profile.ts';
import { pyramidOf } from '../../geometry/bridge/pyramid.ts';
import { undersideHeight } from '../../geometry/bridge/surface.ts';
import type { Mark } from '../../geometry/drawing.ts';
import { across, forHand, length, note, radius, showLine, stroke, upright } from '../../geometry/marks.ts';
import { slotFloorLine } from '../../geometry/saddle/face.ts';
import type { OnePiece } from './piece.ts';

/** The bridge's section across, to hold against the blank's rear end: deck arc, wings, tips, and the underside on the dome. */
export const endProfilePiece: OnePiece = {
  id: 'end-profile',
  title: 'End profile',
  faceUp: 'seen from the tail',
  use: 'Shape the arch of the deck and the fall of the wings, seen from the end.',
  draw: (job, design) => {
    const { bridge, guitar, slot } = job;
    const pyramid = bridge.footprint === 'pyramid' ? pyramidOf(job, -1) : undefined;
    const half = bridge.length / 2;
    const shoulder = bridge.deckWidth / 2;
    const { profile, deckCentre, topHeight } = design;
    const top = -Math.max(deckCentre, profile.shoulderBass, profile.shoulderTreble);
    const bottom = -profile.tipUnderside;
    const floor = slotFloorLine(job, design, 'across');
    const marks: Mark[] = [
      stroke('outline', endProfile(job), { line: 'outline', purpose: 'cut' }),
      stroke('slotFloor', { segments: [floor], closed: false }, { line: 'hidden', purpose: 'show' }),
      showLine('centre', { x: 0, y: top - 6 }, { x: 0, y: bottom + 4 }, 'centre'),
      upright('tip', { x: -half, y: -profile.tipTop }, { x: -half, y: -profile.tipUnderside }, -half, -2.4),
      ...(bridge.tipTreble === 'same'
        ? []
        : [
            upright(
              'tipTreble',
              { x: half, y: -profile.tipTopTreble },
              { x: half, y: -profile.tipUnderside },
              half,
              5.2,
            ),
          ]),
      ...(pyramid
        ? [
            upright(
              'pyramid',
              { x: -pyramid.ridge.x, y: -pyramid.ridge.y },
              { x: -pyramid.ridge.x, y: -undersideHeight(job, pyramid.ridge.x) },
              -half,
              -5.2,
            ),
          ]
        : []),
      upright('thickness', { x: 0, y: -deckCentre }, { x: 0, y: -topHeight }, half, 2.4),
      across(
        'deck',
        { x: -shoulder, y: -profile.shoulderBass },
        { x: shoulder, y: -profile.shoulderTreble },
        bottom,
        3,
      ),
      across('length', { x: -half, y: bottom }, { x: half, y: bottom }, bottom, 5.2),
      note('radius', { x: 0, y: top }, ['top ', radius(bridge.topRadius)], {
        anchor: 'start',
        shift: { dx: 0.8, dy: -0.8 },
      }),
      note('dome', { x: half, y: bottom }, ['dome ', radius(guitar.topRadius)], {
        anchor: 'end',
        shift: { dx: -0.6, dy: 1.6 },
      }),
      note('floor', { x: 0, y: top }, ['slot floor ', length(slot.depth), ' down'], {
        anchor: 'end',
        shift: { dx: -0.8, dy: -0.8 },
      }),
      note('bass', { x: -half, y: top }, ['bass'], { anchor: 'start', bold: true, shift: { dx: 0, dy: -0.8 } }),
      note('treble', { x: half, y: top }, ['treble'], { anchor: 'end', bold: true, shift: { dx: 0, dy: -0.8 } }),
    ];
    return { id: 'end-profile', title: 'End profile', marks: forHand(marks, job.hand) };
  },
};
