import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../../geometry/drawing.ts';
import { setAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { layOut, sayWith } from '../../../geometry/layout.ts';
import { bounds } from '../../../geometry/shape/index.ts';
import { views } from '../../../geometry/views/index.ts';
import { drawnPiece } from '../../drawn.ts';
import { built, workedExample } from '../../solved.ts';

const make = (values: Readonly<Record<string, unknown>>) =>
  built(Object.entries(values).reduce<Job>((job, [path, value]) => setAt(job, path, value), workedExample()));

const say = sayWith(workedExample().show);
const titleOf = ({ marks }: Drawing) =>
  layOut(marks, { em: 3.5, say }).flatMap((p) => (p.kind === 'text' && p.id === 'title' ? [p.text] : []))[0];
const pathsOf = ({ marks }: Drawing, id: string) =>
  marks.flatMap((mark) => (mark.kind === 'path' && mark.id.startsWith(id) && !mark.id.includes('hatch') ? [mark] : []));
const boxOf = (drawing: Drawing, id: string) => {
  const [mark] = pathsOf(drawing, id);
  if (mark === undefined) throw new Error(`no ${id}`);
  return bounds(mark.path);
};

describe('the section across', () => {
  it('is taken where it is asked for, and says where', () => {
    const { job, design } = make({ 'show.sectionAlong': 22.1 });
    const view = views.tail(job, design);
    expect(titleOf(view)).toBe('From the tail at 22.1 mm');
    // Through six pin holes: seven pieces; the saddle stands elsewhere, and is only shown.
    expect(pathsOf(view, 'bridge.profile')).toHaveLength(7);
    expect(pathsOf(view, 'saddle')[0]?.line).toBe('phantom');
    const before = make({ 'show.sectionAlong': -2 });
    expect(titleOf(views.tail(before.job, before.design))).toBe('From the tail at −2.0 mm');
    expect(pathsOf(views.tail(before.job, before.design), 'bridge.profile')).toEqual([]);
  });

  it('is the whole profile at the saddle line, as it always was', () => {
    const { job, design } = make({});
    const view = views.tail(job, design);
    expect(titleOf(view)).toBe('From the tail');
    expect(boxOf(view, 'bridge.profile').maxX).toBeCloseTo(76, 9);
    expect(pathsOf(view, 'saddle')[0]?.line).toBe('outline');
  });

  it('measures the treble tip where it is another', () => {
    const { job, design } = make({ 'bridge.tipTreble': 2.6 });
    const tip = views.tail(job, design).marks.find(({ id }) => id === 'bridge.tipTreble');
    expect(tip).toMatchObject({ kind: 'dimension', jobPath: 'bridge.tipTreble', from: { x: 76 } });
    expect(views.tail(make({}).job, make({}).design).marks.some(({ id }) => id === 'bridge.tipTreble')).toBe(false);
  });
});

describe('the section along', () => {
  it('is taken where it is asked for: the bridge as deep as its belly is there, and as thick as its wing', () => {
    const { job, design } = make({ 'show.sectionAcross': 73, 'guitar.topRadius': 'flat' });
    const view = views.middle(job, design);
    expect(titleOf(view)).toBe('Along, 73.0 mm to the treble');
    const box = boxOf(view, 'bridge.section');
    expect(box.maxX - box.minX).toBeCloseTo(24, 9);
    // 3 mm from the tip a level scoop has hardly risen.
    expect(box.maxY - box.minY).toBeGreaterThan(3.2);
    expect(box.maxY - box.minY).toBeLessThan(3.3);
    expect(pathsOf(view, 'saddle.section')).toEqual([]);
  });

  it('shows the saddle where it crosses it, and the string that is nearest', () => {
    const { job, design } = make({ 'show.sectionAcross': -27.75 });
    const view = views.middle(job, design);
    const { minX, maxX } = boxOf(view, 'saddle.section');
    expect((minX + maxX) / 2).toBeCloseTo(-644, 9);
    expect(pathsOf(view, 'bridge.section')).toHaveLength(2);
    const texts = layOut(view.marks, { em: 3.5, say }).flatMap((p) => (p.kind === 'text' ? [p.text] : []));
    expect(texts).toContain('E2 breaks by 27.7°');
    expect(texts.some((text) => text.startsWith('light'))).toBe(false);
  });

  it('leads a string that is tied into its block, without a pin', () => {
    const { job, design } = make({ 'pins.hold': 'tied' });
    const view = views.middle(job, design);
    expect(pathsOf(view, 'pin')).toEqual([]);
    expect(boxOf(view, 'string').minX).toBeCloseTo(-design.bridgeRear, 9);
  });

  it('stands the bridge on the dome along', () => {
    const { job, design } = make({ 'top.radiusAlong': 2000 });
    const arcs = pathsOf(views.middle(job, design), 'bridge.section')[0]?.path.segments.filter((s) => s.kind === 'arc');
    expect(arcs?.map(({ radius }) => radius)).toEqual([2000]);
    expect(pathsOf(views.middle(job, design), 'top')[0]?.path.segments[0]).toMatchObject({ kind: 'arc', radius: 2000 });
  });
});

describe('a floor that follows the dome', () => {
  const { job, design } = make({ 'slot.floor': 'dome', 'saddle.under': 0.8, 'guitar.topRadius': 3000 });

  it('gives the saddle, what lies under it and the templates the dome’s own arc', () => {
    const radii = (drawing: Drawing, id: string) =>
      pathsOf(drawing, id)[0]?.path.segments.flatMap((s) => (s.kind === 'arc' ? [Math.round(s.radius)] : [])) ?? [];
    const view = views.tail(job, design);
    expect(radii(view, 'saddle')).toContain(3000);
    expect(radii(view, 'element')).toEqual([3000, 3000]);
    const piece = (id: string) => drawnPiece(id, job, design);
    expect(radii(piece('saddle'), 'finishedBottom')).toEqual([3000]);
    expect(radii(piece('end-profile'), 'slotFloor')).toEqual([3000]);
  });

  it('keeps the saddle’s bottom as far above the underside everywhere', () => {
    const box = boxOf(views.tail(job, design), 'saddle');
    const fall = 3000 - Math.sqrt(3000 ** 2 - box.maxX ** 2);
    expect(-box.maxY).toBeCloseTo(design.saddle.bottom - fall, 9);
  });
});
