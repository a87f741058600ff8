import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { layOut, sayWith } from '../../geometry/layout.ts';
import { bounds, start } from '../../geometry/shape/index.ts';
import type { Path, Point } from '../../geometry/shape/types.ts';
import { views } from '../../geometry/views/index.ts';
import { drawPiece, pieces, piecesOf } from '../../templates/pieces/index.ts';
import { laySheets } from '../../templates/sheets.ts';
import { newShop } from '../../templates/shop/index.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { drawnPiece, drawnPieces } from '../drawn.ts';
import { built, solved, workedExample } from '../solved.ts';
import { footprintJobs, fullJob, oldTop } from './full-job.ts';

const right = workedExample();
const left = built(setAt(right, 'hand', 'left')).job;

/** Where the bass word, and the bass string or pin, stand across the paper: −1 left, +1 right. */
const bassSide = (id: string, job: typeof right) => {
  const { marks } = drawnPiece(id, job, solved(job));
  const word = marks.find((mark) => mark.id === 'bass');
  const string = marks.find((mark) => mark.id === 'string.E2' || mark.id === 'pin.E2');
  return {
    word: word?.kind === 'note' ? Math.sign(word.at.x) : Number.NaN,
    string: string?.kind === 'path' ? Math.sign(start(string.path).x) : undefined,
  };
};

describe('which side is bass', () => {
  it('on the footprint, bridge top up: left for the right hand, right for the left', () => {
    expect(bassSide('footprint', right)).toEqual({ word: -1, string: -1 });
    expect(bassSide('footprint', left)).toEqual({ word: 1, string: 1 });
  });

  it('on the end profile, seen from the tail: the same way round', () => {
    expect(bassSide('end-profile', right).word).toBe(-1);
    expect(bassSide('end-profile', left).word).toBe(1);
  });

  it('on the saddle’s front face: the other way round, as it mirrors the view from the tail', () => {
    expect(bassSide('saddle', right)).toEqual({ word: 1, string: 1 });
    expect(bassSide('saddle', left)).toEqual({ word: -1, string: -1 });
    expect(bassSide('saddle-back', right)).toEqual({ word: -1, string: -1 });
    expect(bassSide('saddle-back', left)).toEqual({ word: 1, string: 1 });
  });

  it('on the crown from above, front face towards you: as on the front face', () => {
    expect(bassSide('saddle-crown', right)).toEqual({ word: 1, string: 1 });
    expect(bassSide('saddle-crown', left)).toEqual({ word: -1, string: -1 });
  });
});

describe('a left-handed guitar', () => {
  const all = [oldTop(), fullJob(), ...Object.values(footprintJobs).map((make) => make())].map((asked) => {
    const [one, other] = [built(asked), built(setAt(asked, 'hand', 'left'))];
    const drawings = ({ job, design }: typeof one) => [
      views.above(job, design),
      views.tail(job, design),
      // A page of words reads the same way for both hands.
      ...drawnPieces(job, design).filter(({ ownPage }) => !ownPage),
    ];
    return [asked.bridge.footprint, drawings(one), drawings(other)] as const;
  });

  it.each(all)('has everything on %s mirrored, each word at its own side', (_, rightOnes, leftOnes) => {
    expect(leftOnes.map(({ id }) => id)).toEqual(rightOnes.map(({ id }) => id));
    rightOnes.forEach(({ marks: ofRight, id }, k) => {
      const ofLeft = new Map(leftOnes[k]?.marks.map((mark) => [mark.id, mark]));
      expect(ofLeft.size).toBe(ofRight.length);
      for (const mark of ofRight) {
        const other = ofLeft.get(mark.id);
        const where = `${id}: ${mark.id}`;
        if (mark.kind === 'path' && other?.kind === 'path') {
          const [a, b] = [bounds(mark.path), bounds(other.path)];
          const misses = [b.minX + a.maxX, b.maxX + a.minX, b.minY - a.minY, b.maxY - a.maxY];
          expect(Math.max(...misses.map(Math.abs)), where).toBeLessThan(1e-9);
        } else if (mark.kind === 'note' && other?.kind === 'note') {
          expect(other.label, where).toEqual(mark.label);
          // A view's own name and its notes stand where they are read first.
          if (!['title', 'fromNut', 'gaps', 'gap'].includes(mark.id))
            expect(other.at.x, where).toBeCloseTo(0 - mark.at.x, 6);
        } else expect(other?.kind, where).toBe(mark.kind);
      }
    });
  });

  it('has its plate cap’s bass on the right, as the footprint has', () => {
    const [one, other] = [built(oldTop()).job, built(setAt(oldTop(), 'hand', 'left')).job];
    expect(bassSide('plate-cap', one)).toEqual({ word: -1, string: -1 });
    expect(bassSide('plate-cap', other)).toEqual({ word: 1, string: 1 });
  });
});

describe('which pieces a job has', () => {
  it('a plate cap only where one is asked for, and pins go through it', () => {
    const has = (asked: ReturnType<typeof oldTop>) => piecesOf(built(asked).job).some(({ id }) => id === 'plate-cap');
    expect(has(oldTop())).toBe(true);
    expect(has(setAt(oldTop(), 'plate.cap', 'none'))).toBe(false);
    expect(has(setAt(setAt(oldTop(), 'pins.hold', 'behind'), 'pins.hole', 3))).toBe(false);
    expect(piecesOf(built(oldTop()).job)).toEqual(pieces);
  });
});

it('every piece says what it is for and which face lies up, and but for pages of words has something to cut', () => {
  for (const piece of pieces) {
    expect(piece.use).toMatch(/\.$/);
    expect(piece.faceUp).not.toBe('');
    const { job, design } = built(oldTop());
    if (piece.ownPage) continue;
    for (const { marks } of drawPiece(piece, job, design, newShop()))
      expect(marks.some((mark) => mark.kind === 'path' && mark.purpose === 'cut')).toBe(true);
  }
});

it('every mark on a sheet has an id of its own, the sheet’s own among them', () => {
  const { job, design } = built(oldTop());
  for (const { title, primitives } of laySheets(
    drawnPieces(job, design),
    newShop(),
    sheetInfo(job, '1'),
    sayWith(job.show),
  )) {
    const ids = primitives.map(({ id }) => id);
    expect(
      ids.filter((id, k) => ids.indexOf(id) !== k),
      title,
    ).toEqual([]);
  }
});

const full = built(fullJob());
const drawn = (id: string, { job, design }: ReturnType<typeof built> = full) => {
  const { marks } = drawnPiece(id, job, design);
  const path = (mark: string): Path => {
    const found = marks.find((one) => one.id === mark);
    if (found?.kind !== 'path') throw new Error(`no ${mark} on ${id}`);
    return found.path;
  };
  const texts = layOut(marks, { em: 3.5, say: sayWith(job.show) }).flatMap((p) => (p.kind === 'text' ? [p] : []));
  return { marks, path, said: (mark: string) => texts.find((text) => text.id === mark)?.text };
};
/** Start and end of a straight mark. */
const straight = (path: Path): readonly [Point, Point] => {
  const [line, ...rest] = path.segments;
  if (line?.kind !== 'line' || rest.length > 0) throw new Error('not one straight line');
  return [line.from, line.to];
};
const middleOf = (path: Path): Point => {
  const [a, b] = straight(path);
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
};

describe('the saddle’s front face', () => {
  const { job, design } = full;
  const { path, said, marks } = drawn('saddle');
  const whole = bounds(path('outline'));

  it('is cut in one with the strip that is left proud, the finished bottom shown over it and named', () => {
    const bottom = bounds(path('finishedBottom'));
    expect([bottom.minY, bottom.maxY]).toEqual([-design.saddle.bottom, -design.saddle.bottom]);
    expect(whole.maxY - bottom.maxY).toBeCloseTo(1.2, 9);
    expect(bottom.minX).toBeCloseTo(whole.minX, 9);
    expect(bottom.maxX).toBeCloseTo(whole.maxX, 9);
    expect(said('finishedBottom.name')).toBe('finished bottom');
    expect(said('proud.height.value')).toBe('proud 1.2 mm');
    expect(said('proud.words')).toBe('leave 1.2 mm proud under the finished bottom for the first stringing');
    // Cut in one: the finished bottom is only shown.
    expect(marks.flatMap((m) => (m.kind === 'path' && m.purpose === 'cut' ? [m.id] : []))).toEqual([
      'outline',
      'takeOff',
    ]);
    expect(marks.find(({ id }) => id === 'finishedBottom')).toMatchObject({ purpose: 'show' });
    const flush = drawn('saddle', built(setAt(fullJob(), 'saddle.proud', 0)));
    expect(flush.marks.filter(({ id }) => /^(proud|finishedBottom)/.test(id))).toEqual([]);
    expect(bounds(flush.path('outline')).maxY).toBeCloseTo(-design.saddle.bottom, 9);
  });

  it('names the blank: as long as the saddle, as high as its crown over the proud bottom, as thick as the slot less the play', () => {
    const high = whole.maxY - whole.minY;
    expect(said('blank')).toBe(`blank 75.95 mm by ${high.toFixed(2)} mm (proud included) by 3.15 mm`);
  });

  it('says at which strings the heights beside it hold, and how high it is at its highest', () => {
    const [bass, treble] = [design.strings[0], design.strings[5]];
    expect(said('height.bass.value')).toBe(`at E2: ${bass?.saddleHeight.toFixed(2)} mm`);
    expect(said('height.treble.value')).toBe(`at E4: ${treble?.saddleHeight.toFixed(2)} mm`);
    const high = bounds(path('finishedBottom')).maxY - whole.minY;
    expect(said('highest')).toBe(`at its highest ${high.toFixed(2)} mm over the finished bottom`);
  });

  it('dimensions each string’s mark from the bass end, which is on the right for the right hand', () => {
    for (const s of design.strings) {
      const [mark] = straight(path(`string.${s.id}`));
      expect(said(`string.${s.id}.value`)).toBe((whole.maxX - mark.x).toFixed(2));
    }
    const mirror = drawn('saddle', built(setAt(fullJob(), 'hand', 'left')));
    const left = bounds(mirror.path('outline')).minX;
    const [bass] = straight(mirror.path('string.E2'));
    expect(mirror.said('string.E2.value')).toBe((bass.x - left).toFixed(2));
    expect(mirror.said('string.E2.value')).toBe(said('string.E2.value'));
  });

  it('by gauge, names the gauge and how far the crown is from each string’s height; by heights it says so and has none', () => {
    expect(said('crown')).toMatch(/^crown by gauge 15 in, at most 0\.0\d mm off/);
    // Crown less wanted height, read off the drawn arc.
    const arc = path('outline').segments.find((s) => s.kind === 'arc');
    if (arc?.kind !== 'arc') throw new Error('the crown is no arc');
    for (const s of design.strings) {
      const [mark] = straight(path(`string.${s.id}`));
      const crown = Math.sqrt(arc.radius ** 2 - (mark.x - arc.centre.x) ** 2) - arc.centre.y;
      const shown = Number(said(`string.${s.id}.more`)?.replace('−', '-'));
      expect(Math.abs(shown - (crown - s.heightAboveFretPlane))).toBeLessThan(0.0051 + 0.002);
    }
    const through = drawn('saddle', built(setAt(fullJob(), 'saddle.crown', 'heights')));
    expect(through.said('crown')).toMatch(/^crown through each string’s height/);
    expect(through.marks.filter(({ id }) => id.endsWith('.more'))).toEqual([]);
  });

  it('has the last reading’s bottom as far over its lowest edge as comes off, at both ends', () => {
    // Twice at the saddle what is too much at fret 12, and a little more for the setback [practice], under the outer strings.
    const [bass, treble] = straight(path('takeOff'));
    const edge = whole.maxY;
    const at = (x: number) => edge - (bass.y + ((treble.y - bass.y) * (x - bass.x)) / (treble.x - bass.x));
    for (const [k, action] of [
      [0, 2.9],
      [5, 2.3],
    ] as const) {
      const s = design.strings[k];
      if (!s) throw new Error('no string');
      const wanted = k === 0 ? job.action.bass : job.action.treble;
      expect(at(straight(path(`string.${s.id}`))[0].x)).toBeCloseTo((action - wanted) * (s.breakX / design.fret12), 9);
    }
    expect(said('takeOff.bass.value')).toBe((edge - bass.y).toFixed(2));
    expect(said('takeOff.treble.value')).toBe((edge - treble.y).toFixed(2));
    const none = drawn('saddle', built({ ...fullJob(), setup: { log: [] } }));
    expect(none.marks.filter(({ id }) => id.startsWith('takeOff'))).toEqual([]);
    expect(marks.some(({ id }) => id === 'takeOff.words')).toBe(true);
  });

  it('says what it stands on', () => {
    expect(said('under')).toBe('stands on an element 1.5 mm thick');
  });
});

describe('the saddle’s back face', () => {
  const { design } = full;
  const { path, said, marks } = drawn('saddle-back');
  const outline = bounds(path('outline'));
  const lowest = outline.maxY;
  const linesOf = (all: typeof marks) => all.filter(({ id }) => /^line\.\d+$/.test(id));

  it('is the front face seen the other way round', () => {
    const front = bounds(drawn('saddle').path('outline'));
    expect(outline.minX).toBeCloseTo(-front.maxX, 9);
    expect(outline.minY).toBeCloseTo(front.minY, 9);
    for (const s of design.strings) {
      const [[back], [fore]] = [straight(path(`string.${s.id}`)), straight(drawn('saddle').path(`string.${s.id}`))];
      expect(back.x).toBeCloseTo(-fore.x, 9);
    }
  });

  it('has lines over its lowest edge, 0.5 mm or 1/64 in from one to the next, the whole ones named at both ends', () => {
    expect(linesOf(marks)).toHaveLength(6);
    for (const k of [1, 2, 3, 4, 5, 6]) expect(lowest - middleOf(path(`line.${k}`)).y).toBeCloseTo(k / 2, 9);
    expect([said('line.2.bass'), said('line.2.treble'), said('line.4.bass')]).toEqual(['1', '1', '2']);
    const inches = drawn('saddle-back', built(setAt(fullJob(), 'show.length', 'fraction')));
    for (const k of [1, 4, 8]) expect(lowest - middleOf(inches.path(`line.${k}`)).y).toBeCloseTo((k * 25.4) / 64, 9);
    expect([inches.said('line.4.bass'), inches.said('line.8.treble')]).toEqual(['1/16', '1/8']);
  });

  it('says how far each break point is from this face: with the front face’s distance the saddle’s thickness', () => {
    const crown = drawn('saddle-crown');
    for (const s of design.strings) {
      const front = Number(crown.said(`string.${s.id}.more`) ?? crown.said(`string.${s.id}.value`));
      expect(front + Number(said(`string.${s.id}.value`))).toBeCloseTo(3.15, 1);
    }
  });

  it('has the last reading’s bottom as the front face has it, and its two ends in words', () => {
    const [a, b] = straight(path('takeOff'));
    const [c, d] = straight(drawn('saddle').path('takeOff'));
    expect([a.y, b.y]).toEqual([c.y, d.y]);
    expect(said('takeOff.words')).toBe(
      `by the last reading: ${(lowest - a.y).toFixed(2)} mm off at the bass end, ${(lowest - b.y).toFixed(2)} mm at the treble`,
    );
  });
});

describe('the crown from above', () => {
  const { design } = full;
  const { path, said } = drawn('saddle-crown');
  const crown = bounds(path('outline'));

  it('is as long and as thick as the saddle, its front face below', () => {
    expect(crown.maxX - crown.minX).toBeCloseTo(design.saddle.length, 9);
    expect(crown.maxY - crown.minY).toBeCloseTo(design.saddle.thickness, 9);
  });

  it('has each break point where the string leaves the saddle on the guitar, and dimensions it from the front face', () => {
    const { x: line, slant } = design.saddleLine;
    const angle = Math.atan(slant);
    for (const s of design.strings) {
      const mark = middleOf(path(`break.${s.id}`));
      expect(crown.maxY - mark.y).toBeCloseTo(s.fromFront, 9);
      expect(said(`string.${s.id}.value`)).toBe(s.fromFront.toFixed(2));
      // Turned back by half a turn and by the slant, and moved to the saddle line, it is the point on the guitar.
      const [along, square] = [-mark.x, -mark.y];
      expect(along * Math.cos(angle) - square * Math.sin(angle)).toBeCloseTo(s.acrossAtSaddle, 9);
      expect(line + along * Math.sin(angle) + square * Math.cos(angle)).toBeCloseTo(s.breakX, 9);
    }
  });

  it('crosses and names what cannot be reached, which way, and how thick a saddle would do', () => {
    const unread = built({ ...fullJob(), setup: { log: [] } });
    const piece = drawn('saddle-crown', unread);
    const missed = unread.design.strings.filter((s) => s.missed !== 0);
    expect(missed.length).toBeGreaterThan(1);
    for (const s of unread.design.strings) {
      const says = piece.said(`missed.${s.id}`);
      if (s.missed === 0) expect(says).toBeUndefined();
      else {
        const way = s.missed > 0 ? 'behind' : 'in front';
        expect(says).toBe(`${s.name} would need ${Math.abs(s.missed).toFixed(2)} mm more, ${way}`);
        const cross = middleOf(piece.path(`missed.${s.id}.rising`));
        const from = middleOf(piece.path(`break.${s.id}`));
        expect(Math.hypot(cross.x - from.x, cross.y - from.y)).toBeCloseTo(Math.abs(s.missed), 9);
        // The front face, towards the nut, lies below.
        expect(Math.sign(cross.y - from.y)).toBe(s.missed > 0 ? -1 : 1);
      }
    }
    expect(piece.said('thicknessNeeded')).toContain(`${unread.design.saddle.thicknessNeeded.toFixed(2)} mm thick`);
  });

  it('by the last reading, has a short mark where a string that was heard breaks now: sharp goes back, flat forward', () => {
    const y = (id: string) => middleOf(path(id)).y;
    expect(y('now.G3')).toBeLessThan(y('break.G3'));
    expect(y('now.E2')).toBeGreaterThan(y('break.E2'));
    expect(said('string.G3.more')).toBe((crown.maxY - y('now.G3')).toFixed(2));
    expect(said('string.A2.more')).toBeUndefined();
  });
});

describe('the footprint of a bridge that stays', () => {
  it('has the old slot in hidden line on the measured line, to be filled, only where the slot is cut anew', () => {
    const { path, marks, said } = drawn('footprint');
    const old = path('slot.old');
    expect(marks.find(({ id }) => id === 'slot.old')).toMatchObject({ line: 'hidden', purpose: 'show' });
    const { minX, maxX, minY, maxY } = bounds(old);
    expect((minX + maxX) / 2).toBeCloseTo(0, 9);
    expect((minY + maxY) / 2).toBeCloseTo(640.4, 9);
    expect(said('signs')).toBe('dashed: old slot, fill');
    const has = (job: ReturnType<typeof fullJob>) =>
      drawn('footprint', built(job)).marks.some(({ id }) => id.startsWith('slot.old'));
    expect(has(setAt(fullJob(), 'slot.line', 'typed'))).toBe(false);
    expect(has(setAt(fullJob(), 'work', 'bridge'))).toBe(false);
  });

  it('has the wire hole to drill on the slot’s line, with its size, on the bass side', () => {
    const { path, marks, said } = drawn('footprint');
    const { minX, maxX, minY, maxY } = bounds(path('wireHole'));
    const middle = { x: (minX + maxX) / 2, y: (minY + maxY) / 2 };
    const { x, slant } = full.design.saddleLine;
    expect(maxX - minX).toBeCloseTo(2.5, 9);
    expect(middle.y).toBeCloseTo(x + slant * middle.x, 9);
    expect(Math.hypot(middle.x, middle.y - x)).toBeCloseTo(31, 9);
    expect(middle.x).toBeLessThan(0);
    expect(marks.find(({ id }) => id === 'wireHole')).toMatchObject({ purpose: 'drill' });
    expect(said('wireHole.size')).toMatch(/^wire hole ⌀ 2\.5 mm, 31\.0 mm .*bass side$/);
  });

  it('has the old scar where it was measured, named', () => {
    const { path, said } = drawn('footprint');
    const { minX, maxX, minY, maxY } = bounds(path('scar'));
    expect([maxX - minX, minY, maxY - minY].map((n) => Number(n.toFixed(6)))).toEqual([147, 632.5, 39]);
    expect(said('scar.name')).toBe('old scar');
    expect(drawn('footprint', built(right)).marks.some(({ id }) => id.startsWith('scar'))).toBe(false);
  });
});

describe('the footprint over what is there already', () => {
  const old = built(oldTop());
  const { path, marks, said } = drawn('footprint', old);
  const round = (id: string) => {
    const { minX, maxX, minY, maxY } = bounds(path(id));
    return [(minX + maxX) / 2, (minY + maxY) / 2, maxX - minX].map((n) => Number(n.toFixed(6)));
  };

  it('has each old hole in its place: drilled where it is kept, thin where a pin meets it, crossed where it is plugged', () => {
    for (const { id, across, fromNut, diameter, plan, what } of old.job.top.holes) {
      expect(round(`hole.${id}`)).toEqual([across, fromNut, diameter].map((n) => Number(n.toFixed(6))));
      const isKept = plan === 'keep' || plan === 'register';
      const purpose = isKept && what !== 'pin' ? 'drill' : 'show';
      expect(marks.find((mark) => mark.id === `hole.${id}`)).toMatchObject({ purpose });
      expect(marks.some((mark) => mark.id === `hole.${id}.rising`)).toBe(!isKept);
    }
    expect(said('hole.left.name')).toBe('register ⌀ 3.0 mm');
    expect(said('hole.bolt.name')).toBe('⌀ 6.0 mm');
    expect(said('signs')).toBe('thin circles: old pin holes ⌀ 5.0 mm · crossed: old hole, plug');
  });

  it('has the top’s readings with their sign, and each brace in hidden line by its name', () => {
    expect([said('rise.belly.height'), said('rise.dip.height')]).toEqual(['+0.8 mm', '−0.4 mm']);
    expect(said('brace.bass.name')).toBe('main brace');
    const [a, b] = [straight(path('brace.bass.edge.1')), straight(path('brace.bass.edge.2'))];
    // The two edges run side by side, as far apart as the brace is wide.
    const [dx, dy] = [a[1].x - a[0].x, a[1].y - a[0].y];
    const apart = Math.abs((b[0].x - a[0].x) * dy - (b[0].y - a[0].y) * dx) / Math.hypot(dx, dy);
    expect(apart).toBeCloseTo(8, 9);
    expect(dx / dy).toBeCloseTo((20 + 110) / (560 - 760), 9);
    expect(marks.find(({ id }) => id === 'brace.bass.edge.1')).toMatchObject({ line: 'hidden', purpose: 'show' });
  });

  it('says where the saddle line is by nut and fret 12, and how far the outline reaches beyond the scar', () => {
    // Setbacks 4.0 and 1.8 on a scale of 640: the saddle line runs through the outer strings' break points.
    expect(said('fromFret12.bass')).toBe('at E2: 324.0 mm');
    expect(said('fromFret12.treble')).toBe('at E4: 321.8 mm');
    expect(said('fromNut')).toBe(
      'nut to saddle at E2: 644.0 mm, at E4: 641.8 mm · 9.6 mm and 12.5 mm: on the centre line',
    );
    // The front edge at 642.9 − 9.6; the scar from 633.6 over 37, 153 across against 152.
    expect(said('overScar')).toBe(
      'beyond the old scar: front 0.3 mm, rear 1.2 mm, bass tip −0.5 mm, treble tip −0.5 mm',
    );
    expect(said('bareScar')).toBe('bare scar up to 0.5 mm wide');
  });
});

describe('the footprint’s distances from the saddle line', () => {
  // Where the slot lies as measured, its slant is the job's own number.
  const typed = (slant: number) =>
    drawn(
      'footprint',
      built(setAt(setAt(setAt(fullJob(), 'slot.line', 'typed'), 'pins.row', 'square'), 'slot.slant', slant)),
    );

  it('are said to hold on the centre line where that line slants, as they are drawn beside the bridge', () => {
    const { said } = typed(-0.03);
    const [front, pins] = [said('frontToSaddle.value'), said('saddleToPins.value')];
    expect(said('fromNut')?.endsWith(` · ${front} mm and ${pins} mm: on the centre line`)).toBe(true);
  });

  it('are said nowhere else where it is square to it', () => {
    expect(typed(0).said('fromNut')).not.toContain('centre line');
  });
});

describe('what the footprint shows of the deck and of how strings are held', () => {
  const of = (style: keyof typeof footprintJobs) => drawn('footprint', built(footprintJobs[style]()));

  it('a chamfer’s end as far inside the front edge as it takes off, over the deck only', () => {
    const { path, marks } = of('belly');
    const { minX, maxX, minY, maxY } = bounds(path('bridge.edge.1'));
    expect([minX, maxX].map((x) => Number(x.toFixed(6)))).toEqual([-42, 42]);
    expect(minY).toBeCloseTo(bounds(path('outline')).minY + 1.5, 9);
    expect(maxY).toBeCloseTo(minY, 9);
    expect(marks.some(({ id }) => id === 'ramp.E2')).toBe(true);
  });

  it('pyramids by their ridges, from foot to tip', () => {
    const { path, marks } = of('pyramid');
    expect(marks.filter(({ id }) => id.startsWith('bridge.pyramid'))).toHaveLength(12);
    const { minX, maxX } = bounds(path('bridge.pyramid.2'));
    expect([minX, maxX].map((x) => Number(x.toFixed(6)))).toEqual([-66, -56]);
  });

  it('no shoulder where it is rounded away', () => {
    expect(of('waisted').marks.some(({ id }) => id.startsWith('bridge.shoulder'))).toBe(false);
    expect(of('pyramid').marks.filter(({ id }) => id.startsWith('bridge.shoulder'))).toHaveLength(2);
  });

  it('the holes of strings without pins in hidden line to the rear edge, and no pin holes', () => {
    const { path, marks } = of('rectangle');
    expect(marks.some(({ id }) => id.startsWith('pin.'))).toBe(false);
    const [bass, treble] = [bounds(path('way.E2.bass')), bounds(path('way.E2.treble'))];
    expect(treble.minX - bass.minX).toBeCloseTo(2.4, 9);
    expect(bass.maxY).toBeCloseTo(bounds(path('outline')).maxY, 9);
    expect(marks.find(({ id }) => id === 'way.E2.bass')).toMatchObject({ line: 'hidden' });
  });
});
