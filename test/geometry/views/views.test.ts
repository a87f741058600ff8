import { describe, expect, it } from 'vitest';
import type { Label } from '../../../geometry/drawing.ts';
import { setAt } from '../../../geometry/fields.ts';
import { layOut, sayWith } from '../../../geometry/layout.ts';
import { bounds, segmentStart } from '../../../geometry/shape/index.ts';
import { threeViews, views } from '../../../geometry/views/index.ts';
import { built, solved, workedExample } from '../../solved.ts';
import { fullJob } from '../../templates/full-job.ts';

const job = workedExample();
const design = solved(job);
const say = sayWith(job.show);
const texts = (marks: Parameters<typeof layOut>[0], how: (label: Label) => string = say) =>
  layOut(marks, { em: 3.5, say: how }).flatMap((p) => (p.kind === 'text' ? [p.text] : []));

describe('the view from the tail', () => {
  it('tells the gap between crown and bridge at every string, in the reader’s unit', () => {
    const { marks } = views.tail(job, design);
    expect(texts(marks)).toEqual(expect.arrayContaining(['4.65', '4.59', '4.45', '4.22', '3.92', '3.52']));
    const inches = sayWith({ length: 'in', radius: 'in', gauge: 'in' });
    expect(texts(marks, inches)).toEqual(
      expect.arrayContaining(['0.183', '0.181', '0.175', '0.166', '0.154', '0.139']),
    );
    const fractions = sayWith({ length: 'fraction', radius: 'in', gauge: 'in' });
    expect(texts(marks, fractions)).toEqual(
      expect.arrayContaining(['0.183', '0.181', '0.175', '0.166', '0.154', '0.139']),
    );
  });

  it('shows bass on the left for the right hand, on the right for the left', () => {
    const bassX = (hand: 'right' | 'left') => {
      const mark = views.tail(built(setAt(job, 'hand', hand)).job, design).marks.find((m) => m.id === 'bass');
      return mark?.kind === 'note' ? mark.at.x : 0;
    };
    expect(bassX('right')).toBeLessThan(0);
    expect(bassX('left')).toBeGreaterThan(0);
  });
});

describe('the section along the middle', () => {
  it('has the nut to the right, as a view from the right of the view from the tail has it', () => {
    const string = views.middle(job, design).marks.find((m) => m.id === 'string');
    if (string?.kind !== 'path') throw new Error('no string');
    const xs = string.path.segments.map((s) => segmentStart(s).x);
    expect(xs[0]).toBeGreaterThan(xs[1] ?? 0);
  });

  it('shows the light under the straightedge as it is with the strings off', () => {
    expect(texts(views.middle(job, design).marks)).toContain('light 0.7 mm');
  });
});

describe('the three views together', () => {
  const whole = threeViews(job, design, 3.5, say);
  const find = (id: string) => {
    const mark = whole.marks.find((m) => m.id === id);
    if (mark?.kind !== 'path') throw new Error(`no ${id}`);
    return mark.path;
  };
  const ys = (id: string) => find(id).segments.map((s) => segmentStart(s).y);
  const xs = (id: string) => find(id).segments.map((s) => segmentStart(s).x);

  it('share the axis across: the footprint stands over the end profile', () => {
    expect(Math.min(...xs('above.bridge.outline'))).toBeCloseTo(Math.min(...xs('tail.bridge.profile')), 9);
    expect(Math.max(...xs('above.bridge.outline'))).toBeCloseTo(Math.max(...xs('tail.bridge.profile')), 9);
  });

  it('share the heights: deck, slot floor and top lie level in elevation and section', () => {
    expect(Math.max(...ys('tail.saddle'))).toBeCloseTo(Math.max(...ys('middle.saddle.section')), 9);
    expect(Math.max(...ys('middle.bridge.section'))).toBeCloseTo(ys('middle.top')[0] ?? 0, 9);
  });
});

describe('what is new in a job', () => {
  const { job: full, design: its } = built(fullJob());
  const pathOf = (view: keyof typeof views, id: string) => {
    const mark = views[view](full, its).marks.find((m) => m.id === id);
    if (mark?.kind !== 'path') throw new Error(`no ${id}`);
    return mark.path;
  };

  it('marks each string’s break point on the slot, where the string turns', () => {
    for (const s of its.strings) {
      const { minX, maxX, minY, maxY } = bounds(pathOf('above', `break.${s.id}`));
      expect((minX + maxX) / 2).toBeCloseTo(s.acrossAtSaddle, 9);
      expect(minY).toBeCloseTo(s.breakX, 9);
      expect(maxY).toBeCloseTo(s.breakX, 9);
    }
  });

  it.each(['tail', 'middle'] as const)(
    'fills the slot with the element from its floor up to the saddle’s bottom: %s',
    (view) => {
      const element = bounds(pathOf(view, 'element'));
      expect(element.maxY).toBeCloseTo(-its.slotFloor, 9);
      expect(element.minY).toBeCloseTo(-its.slotFloor - 1.5, 9);
      const saddle = bounds(pathOf(view, view === 'tail' ? 'saddle' : 'saddle.section'));
      expect(saddle.maxY).toBeCloseTo(element.minY, 9);
      expect(views[view](job, design).marks.some(({ id }) => id === 'element')).toBe(false);
    },
  );

  it('says how thick the element is and how wide the wire’s hole', () => {
    expect(texts(views.middle(full, its).marks)).toContain('element 1.5 mm');
    expect(texts(views.above(full, its).marks).join()).toContain('wire hole ⌀ 2.5 mm,dashed: old slot');
  });

  it('stands a saddle thinner than its slot by the play in the section', () => {
    const section = (id: string) => bounds(pathOf('middle', id));
    const slant = Math.hypot(1, its.saddleLine.slant);
    const saddle = section('saddle.section');
    const element = section('element');
    expect((element.maxX - element.minX) / slant).toBeCloseTo(3.2, 9);
    expect((saddle.maxX - saddle.minX) / slant).toBeCloseTo(3.15, 9);
  });

  it('draws scar, old slot and wire hole mirrored for the left hand, the words too', () => {
    const left = built(setAt(fullJob(), 'hand', 'left'));
    const turned = views.above(left.job, left.design).marks;
    for (const id of ['scar', 'slot.old', 'wireHole']) {
      const mark = turned.find((m) => m.id === id);
      if (mark?.kind !== 'path') throw new Error(`no ${id}`);
      expect(bounds(mark.path).minX).toBeCloseTo(-bounds(pathOf('above', id)).maxX, 9);
    }
    expect(turned.find((m) => m.id === 'scar.name')).toMatchObject({ anchor: 'end', label: ['old scar'] });
  });

  it('leaves out a scar that was not measured', () => {
    const bare = built(setAt(fullJob(), 'scar.outline', 'none'));
    expect(views.above(bare.job, bare.design).marks.some(({ id }) => id.startsWith('scar'))).toBe(false);
  });
});
