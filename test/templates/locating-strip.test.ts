// The strips from fret 12 to the saddle, measured with a rule along each strip's middle.
import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import type { Job } from '../../geometry/job.ts';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { bounds, end, start } from '../../geometry/shape/index.ts';
import type { Path } from '../../geometry/shape/types.ts';
import { locatingStrip } from '../../templates/pieces/locating-strip.ts';
import { newShop } from '../../templates/shop/index.ts';
import { built } from '../solved.ts';
import { footprintJobs, oldTop } from './full-job.ts';

const drawn = (asked: Job = oldTop()) => {
  const { job, design } = built(asked);
  const { marks } = locatingStrip.draw(job, design, newShop());
  const path = (id: string): Path => {
    const found = marks.find((mark) => mark.id === id);
    if (found?.kind !== 'path') throw new Error(`no ${id}`);
    return found.path;
  };
  const texts = layOut(marks, { em: 3.5, say: sayWith(job.show) }).flatMap((p) => (p.kind === 'text' ? [p] : []));
  return { marks, path, design, texts, said: (id: string) => texts.find((text) => text.id === id)?.text };
};
/** Where a straight mark crosses a strip's middle. */
const crossing = (path: Path, middle: number): number => {
  const [a, b] = [start(path), end(path)];
  return a.y + ((b.y - a.y) * (middle - a.x)) / (b.x - a.x);
};

describe('the locating strips', () => {
  const { path, said, design } = drawn();
  const middle = (id: string) => (bounds(path(`${id}.outline`)).minX + bounds(path(`${id}.outline`)).maxX) / 2;
  const from12 = (id: string, mark: string) =>
    crossing(path(`${id}.${mark}`), middle(id)) - start(path(`${id}.fret12`)).y;

  it('show the saddle line as far from fret 12 as the worked example’s scale and setbacks put it', () => {
    // Half of 640, and the outer strings' setbacks 4.0 and 1.8, through whose break points the line runs.
    expect(from12('bass', 'saddleLine')).toBeCloseTo(320 + 4, 6);
    expect(from12('centre', 'saddleLine')).toBeCloseTo(320 + 2.9, 6);
    expect(from12('treble', 'saddleLine')).toBeCloseTo(320 + 1.8, 6);
    expect(said('bass.toSaddle')).toBe('fret 12 to saddle line 324.00 mm');
    // Slanted as the slot is, over the strip's whole width.
    const line = path('bass.saddleLine');
    expect((end(line).y - start(line).y) / (end(line).x - start(line).x)).toBeCloseTo(-2.2 / 55.5, 9);
  });

  it('show the bridge’s front edge and the outer strings’ break points, and list all of them', () => {
    for (const id of ['bass', 'centre', 'treble']) expect(from12(id, 'front')).toBeCloseTo(322.9 - 9.6, 6);
    expect(said('centre.toFront')).toBe('fret 12 to front edge 313.30 mm');
    expect(from12('bass', 'break')).toBeCloseTo((design.strings[0]?.breakX ?? 0) - 320, 9);
    for (const s of design.strings)
      expect(said(`centre.break.${s.id}`)).toBe(`${s.name} ${(s.breakX - 320).toFixed(2)} mm`);
    expect(said('treble.title')).toBe('treble, 27.75 mm from the centre line');
  });

  it('are read in 64ths where all that they show lies on them, else all in decimal inches', () => {
    const inch = 25.4;
    // A scale of 25 1/2 in, whose fret 12 lies at half of it; setbacks of 1/8 in, and strings over 2 1/4 in.
    const whole = Object.entries({
      'show.length': 'fraction',
      'guitar.scale': 25.5 * inch,
      'strings.spread': 2.25 * inch,
      'bridge.frontToSaddle': 0.375 * inch,
      'slot.slant': 'auto',
    }).reduce<Job>((job, [path, value]) => setAt(job, path, value), oldTop());
    const typed = whole.strings.list.reduce<Job>(
      (job, { id }) => setAt(job, `strings.list.${id}.setback`, inch / 8),
      whole,
    );
    const all = (of: ReturnType<typeof drawn>) => of.texts.map(({ text }) => text).filter((text) => / in\b/.test(text));
    const fractions = drawn(typed);
    expect(fractions.said('centre.toSaddle')).toBe('fret 12 to saddle line 12 7/8 in');
    expect(fractions.said('bass.toFront')).toBe('fret 12 to front edge 12 1/2 in');
    expect(fractions.said('treble.title')).toBe('treble, 1 1/8 in from the centre line');
    expect(all(fractions).filter((text) => text.includes('.'))).toEqual([]);
    // A single string whose break point lies elsewhere, and nothing is.
    const first = typed.strings.list[0]?.id;
    const mixed = drawn(setAt(typed, `strings.list.${first}.setback`, 3.9));
    expect(mixed.said('centre.toSaddle')).toMatch(/^fret 12 to saddle line 12\.\d{3} in$/);
    expect(mixed.said('treble.title')).toBe('treble, 1.125 in from the centre line');
    expect(all(mixed).filter((text) => text.includes('/'))).toEqual([]);
  });

  it('stand the other way round for the left hand, read the same way', () => {
    const left = drawn(setAt(oldTop(), 'hand', 'left'));
    expect(bounds(left.path('bass.outline')).minX).toBeCloseTo(-bounds(path('bass.outline')).maxX, 9);
    expect(left.said('bass.toSaddle')).toBe(said('bass.toSaddle'));
    // No word runs over a strip's edge.
    for (const one of [drawn(), left])
      for (const text of one.texts) {
        const strip = text.id.split('.')[0];
        if (strip !== 'bass' && strip !== 'centre' && strip !== 'treble') continue;
        const [words, edges] = [boundsOfPrimitives([text]), bounds(one.path(`${strip}.outline`))];
        expect(words.minX, text.text).toBeGreaterThan(edges.minX);
        expect(words.maxX, text.text).toBeLessThan(edges.maxX);
      }
  });

  it('show the edge that the footprint has under each strip, where it is no straight one', () => {
    const free = drawn(footprintJobs.free());
    const at = (id: string) => start(free.path(`${id}.front`)).y;
    expect(at('bass')).toBeCloseTo(at('treble'), 6);
    // The outline's point on the centre line is typed 1.5 mm before the front edge.
    expect(at('bass') - at('centre')).toBeGreaterThan(0.3);
  });
});
