import { describe, expect, it } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { start } from '../../geometry/shape/index.ts';
import { pieces } from '../../templates/pieces/index.ts';
import { built, solved, workedExample } from '../solved.ts';

const right = workedExample();
const left = built(setAt(right, 'hand', 'left')).job;

/** Where the bass word, and the bass string or pin, stand across the paper: −1 left, +1 right. */
const bassSide = (id: string, job: typeof right) => {
  const piece = pieces.find((one) => one.id === id);
  const marks = piece?.draw(job, solved(job)).marks ?? [];
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
  });
});

it('every piece says what it is for and which face lies up, and has something to cut', () => {
  for (const piece of pieces) {
    expect(piece.use).toMatch(/\.$/);
    expect(piece.faceUp).not.toBe('');
    const { marks } = piece.draw(right, solved(right));
    expect(marks.some((mark) => mark.kind === 'path' && mark.purpose === 'cut')).toBe(true);
  }
});
