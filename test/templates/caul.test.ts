// The clamping cauls against the job's own raw numbers, worked out here anew.
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { bounds, end, start } from '../../geometry/shape/index.ts';
import type { Arc, Path } from '../../geometry/shape/types.ts';
import { caulPiece } from '../../templates/pieces/caul.ts';
import { piecesOf } from '../../templates/pieces/index.ts';
import { insideCaulPiece } from '../../templates/pieces/inside-caul.ts';
import { newShop, type Shop } from '../../templates/shop/index.ts';
import { built } from '../solved.ts';
import { footprintJobs, fullJob, oldTop } from './full-job.ts';

const shopWith = (caul: Partial<Shop['caul']> = {}): Shop => ({ ...newShop(), caul: { ...newShop().caul, ...caul } });

const drawn = (id: string, asked = oldTop(), shop = shopWith()) => {
  const { job, design } = built(asked);
  const drawings = [caulPiece, insideCaulPiece].flatMap((piece) => piece.draw(job, design, shop));
  const marks = drawings.find((drawing) => drawing.id === id)?.marks ?? [];
  const find = (mark: string) => marks.find((one) => one.id === mark);
  const path = (mark: string): Path => {
    const found = find(mark);
    if (found?.kind !== 'path') throw new Error(`no ${mark} on ${id}`);
    return found.path;
  };
  return { job, design, marks, find, path };
};
const arcs = ({ segments }: Path): readonly Arc[] => segments.filter((s): s is Arc => s.kind === 'arc');

describe('the caul on the bridge', () => {
  it('has the deck’s own arc for its face, as long as the deck less its inset, and a straight back so far over the crest', () => {
    const { path } = drawn('caul-profile');
    const [face, ...others] = arcs(path('outline'));
    expect(others).toEqual([]);
    expect(face?.radius).toBe(508);
    const { minX, maxX, minY, maxY } = bounds(path('outline'));
    expect(minX).toBeCloseTo(-41, 9);
    expect(maxX).toBeCloseTo(41, 9);
    // 9.3 thick over a top 10.0 − 0.5 below the fret plane: the crest at z = −0.2; 20 mm to the back.
    expect(minY).toBeCloseTo(0.2 - 20, 9);
    expect(maxY).toBeCloseTo(0.2 + 508 - Math.sqrt(508 ** 2 - 41 ** 2), 9);
  });

  it('on the wings too, has their arcs as well: each level at the tip, its radius from width and fall', () => {
    const { path } = drawn('caul-profile', oldTop(), shopWith({ bears: 'wings' }));
    const drop = (radius: number, y: number) => radius - Math.sqrt(radius ** 2 - y ** 2);
    // From the shoulder, 42 out, to the tip, 76 out and 3.2 over the domed top.
    const [wide, fall] = [34, 9.3 - drop(508, 42) - (3.2 - drop(7600, 76))];
    const level = (wide ** 2 + fall ** 2) / (2 * fall);
    const radii = arcs(path('outline')).map(({ radius }) => radius);
    expect(radii).toHaveLength(3);
    [level, 508, level].forEach((radius, k) => {
      expect(radii[k]).toBeCloseTo(radius, 6);
    });
    expect(bounds(path('outline')).maxX).toBeCloseTo(75, 9);
    // No wing of a pyramid bridge, and no more of its end than up to the pyramid’s foot.
    const pyramid = drawn('caul-profile', footprintJobs.pyramid(), shopWith({ bears: 'wings' }));
    expect(bounds(pyramid.path('outline')).maxX).toBeCloseTo(76 - 20 - 1, 9);
  });

  it('has a channel that keeps its room from every pin hole and from the slot, and runs out where no wall would be left', () => {
    const { path, marks, job, design } = drawn('caul-plan');
    const box = bounds(path('channel'));
    // A cutter that followed it would part the block.
    expect(marks.find(({ id }) => id === 'channel')).toMatchObject({ purpose: 'show' });
    const plan = bounds(path('outline'));
    expect([box.minX, box.maxX]).toEqual([plan.minX, plan.maxX]);
    const rows = design.strings.map(({ pin }) => pin.y);
    expect(box.maxY).toBeCloseTo(Math.max(...rows) + job.pins.hole / 2 + 2, 9);
    // The slot’s round ends, half its width about the ends of its walls’ middle line.
    const { x, slant } = design.saddleLine;
    const far = (76 - 3.2) / 2 / Math.hypot(1, slant);
    expect(box.minY).toBeCloseTo(x - far * Math.abs(slant) - 1.6 - 2, 9);
    const wings = drawn('caul-plan', oldTop(), shopWith({ bears: 'wings' }));
    expect(bounds(wings.path('channel')).maxX).toBeCloseTo(far + 1.6 + 2, 9);
  });

  it('is drawn as its face lies up: bass on the right for the right hand; and drilled for the register pins it covers', () => {
    const { find, path } = drawn('caul-plan', oldTop(), shopWith({ bears: 'wings' }));
    const bass = find('bass');
    expect(bass?.kind === 'note' && bass.at.x).toBe(75);
    const { minX, maxX } = bounds(path('register.left'));
    expect([minX, maxX]).toEqual([56.25, 59.75]);
    expect(drawn('caul-plan').find('register.left')).toBeUndefined();
  });

  it('says when a typed channel is too narrow, and how wide it would have to be', () => {
    const { find } = drawn('caul-plan', oldTop(), shopWith({ channelWidth: 12 }));
    expect(find('channel.narrow')).toBeDefined();
    expect(drawn('caul-plan').find('channel.narrow')).toBeUndefined();
  });
});

describe('the caul inside', () => {
  it('lies against the dome less top and plate: an arc about the same centre', () => {
    const { path } = drawn('inside-caul-profile');
    const [face] = arcs(path('outline'));
    expect(face?.radius).toBeCloseTo(7600 - 5.5, 9);
    expect(face?.centre.x).toBeCloseTo(0, 9);
    const { minY, maxY, minX, maxX } = bounds(path('outline'));
    expect(maxX - minX).toBeCloseTo(152 + 6, 9);
    expect(maxY - minY).toBeCloseTo(20, 9);
    expect(arcs(drawn('inside-caul-profile', setAt(oldTop(), 'guitar.topRadius', 'flat')).path('outline'))).toEqual([]);
  });

  it('has a slot for each brace, whose walls keep their room from it', () => {
    const { path, marks, job } = drawn('inside-caul-plan');
    for (const { id, across, fromNut, acrossTo, fromNutTo, width } of job.top.braces) {
      for (const k of [1, 2]) {
        const edge = path(`brace.${id}.edge.${k}`);
        // 14 mm deep in a block of 20: sawn into it, not through.
        expect(marks.find((mark) => mark.id === `brace.${id}.edge.${k}`)).toMatchObject({ purpose: 'show' });
        for (const { x, y } of [start(edge), end(edge)]) {
          // From the brace's middle line, square to it.
          const [dx, dy] = [acrossTo - across, fromNutTo - fromNut];
          const away = Math.abs((x - across) * dy - (y - fromNut) * dx) / Math.hypot(dx, dy);
          expect(away).toBeCloseTo(width / 2 + 1.5, 6);
        }
      }
    }
    // In the profile as wide as the slanted slot is where the saddle line crosses it: 11 mm over the sine of 57°.
    const cut = bounds(drawn('inside-caul-profile').path('brace.bass'));
    expect(cut.maxX - cut.minX).toBeCloseTo((11 * Math.hypot(130, 200)) / 200, 9);
    expect(cut.maxY).toBe(14);
  });

  it('says that a block whose brace slots run right through is sawn apart', () => {
    const says = (shop: Shop) => {
      const mark = drawn('inside-caul-plan', oldTop(), shop).find('braces');
      return mark?.kind === 'note' ? mark.label.join('') : '';
    };
    expect(says(shopWith())).toContain('deep');
    expect(says(shopWith({ insideThickness: 12 }))).toContain('apart');
  });

  it('has no channel where no pins come through', () => {
    expect(drawn('inside-caul-plan', footprintJobs.rectangle()).find('channel')).toBeUndefined();
    expect(drawn('caul-plan', footprintJobs.rectangle()).find('channel')).toBeDefined();
  });
});

it('is no piece of a job in which the bridge stays', () => {
  expect(piecesOf(built(fullJob()).job).some(({ id }) => id.includes('caul'))).toBe(false);
});
