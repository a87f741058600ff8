import { describe, expect, it } from 'vitest';
import { firstDifference } from './same-drawing.ts';

const kept = `<?xml version="1.0" encoding="UTF-8"?>
<svg width="40.5mm" height="20mm" viewBox="-1 -2 40.5 20">
<title>Saddle, 2 of 3</title>
<path d="M0 0L12.345678 -0.5A3 3 0 0 1 20 4.25Z" id="slot.2" stroke-width="0.35">
</path>
<circle cx="3" cy="4.000001" r="1.6" id="pin.E2">
</circle>
<text id="width.value" x="4" y="5" font-size="3.5" transform="rotate(-90 4 5)">12.3</text>
</svg>
`;

const now = (was: string, is: string): string => {
  expect(kept.split(was)).toHaveLength(2);
  return kept.replace(was, is);
};

describe('a drawing and the one that is kept', () => {
  it('are the same where every figure is', () => {
    expect(firstDifference(kept, kept)).toBeUndefined();
  });

  it.each([
    ['L12.345678 ', 'L12.3456785 '],
    ['L12.345678 ', 'L12.3456775 '],
    ['L12.345678 ', 'L12.345679 '],
    ['-0.5A', '-0.4999995A'],
    ['cy="4.000001"', 'cy="4"'],
    ['r="1.6"', 'r="1.5999995"'],
    ['width="40.5mm"', 'width="40.5000005mm"'],
    ['"-1 -2 40.5 20"', '"-1.0000005 -2 40.5 20"'],
    ['rotate(-90 4 5)', 'rotate(-90 4.0000005 5)'],
    ['0 0 1 20 4.25Z', '0 0 1 19.9999995 4.25Z'],
  ])('are the same with %s as %s', (was, is) => {
    expect(firstDifference(kept, now(was, is))).toBeUndefined();
  });

  it.each([
    ['L12.345678 ', 'L12.34568 ', 'line 4, column 15 (slot.2): 12.345678 has become 12.34568'],
    ['L12.345678 ', 'L12.345676 ', 'line 4, column 15 (slot.2): 12.345678 has become 12.345676'],
    ['cy="4.000001"', 'cy="4.000003"', 'line 6, column 20 (pin.E2): 4.000001 has become 4.000003'],
    ['0 0 1 20 4.25Z', '0 0 0 20 4.25Z', 'line 4, column 38 (slot.2): 1 has become 0'],
    [
      'id="slot.2"',
      'id="slot.3"',
      'line 4, column 59 (slot.2): “2" stroke-width="0.35">” has become “3" stroke-width="0.35">”',
    ],
    ['id="pin.E2"', 'id="pin.E2.0"', 'line 6, column 48 (pin.E2): “">” has become “.0">”'],
    ['stroke-width="0.35"', 'stroke-width="0.3500001"', 'line 4, column 80 (slot.2): “">” has become “00001">”'],
    ['>12.3<', '>12.3000001<', 'line 8, column 84 (width.value): “</text>” has become “000001</text>”'],
    ['Saddle, 2 of 3', 'Saddle, 3 of 3', 'line 3, column 16: “2 of 3</title>” has become “3 of 3</title>”'],
    [
      'L12.345678 -0.5',
      'L12.345678',
      'line 4, column 24 (slot.2): “ -0.5A3 3 0 0 1 20 4.25Z" id="slot.2" st” has become “A3 3 0 0 1 20 4.25Z" id="slot.2" stroke-”',
    ],
    [
      '4.25Z',
      '4.25',
      'line 4, column 47 (slot.2): “Z" id="slot.2" stroke-width="0.35">” has become “" id="slot.2" stroke-width="0.35">”',
    ],
  ])('differ with %s as %s, and where is said', (was, is, says) => {
    expect(firstDifference(kept, now(was, is))).toBe(says);
  });

  it('differ where one has more than the other', () => {
    expect(firstDifference(kept, `${kept}<!-- x="1" -->\n`)).toContain('has become “<!-- x="1" -->”');
    expect(firstDifference(`${kept}<!-- x="1" -->\n`, kept)).toContain('“<!-- x="1" -->” has become nothing more');
  });
});
