import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cleanName, fileName, quote } from '../../geometry/names.ts';

describe('cleanName', () => {
  it.each([
    ['Heron no. 7', 'Heron no. 7'],
    ['  two\r\nlines\tand more ', 'two lines and more'],
    ['a\u0000b\u0007c\u007fd\u009be', 'abcde'],
    ['invoice\u202egpj.exe', 'invoicegpj.exe'],
    ['\u2066a\u2069\u200e\u200f\u061cb', 'ab'],
    ['a\ud800b\udc00c', 'abc'],
    ['<script>alert(1)</script>', '<script>alert(1)</script>'],
    ['🎸 guitar', '🎸 guitar'],
    ['גיטרה', 'גיטרה'],
    ['', ''],
  ])('%j becomes %j', (text, clean) => {
    expect(cleanName(text)).toBe(clean);
  });

  it('leaves nothing that a writer may not see, and changes nothing twice', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 0xffff })), (units) => {
        const text = String.fromCharCode(...units);
        const clean = cleanName(text);
        expect(clean).not.toMatch(/\p{Cc}|[\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069]/u);
        // Throws at half of a surrogate pair.
        expect(() => encodeURIComponent(clean)).not.toThrow();
        expect(cleanName(clean)).toBe(clean);
      }),
    );
  });
});

describe('fileName', () => {
  it.each([
    ['Heron no. 7', 'Heron-no-7'],
    ['../../etc/passwd', 'etc-passwd'],
    ['Größe é', 'Gro-e-e'],
    ['<script>', 'script'],
    ['גיטרה 🎸', 'job'],
    ['', 'job'],
    ['x'.repeat(500), 'x'.repeat(60)],
  ])('%j becomes %j', (text, stem) => {
    expect(fileName(text)).toBe(stem);
  });
});

describe('quote', () => {
  it('cuts after 40 characters, never inside one', () => {
    expect(quote('abc')).toBe('“abc”');
    expect(quote('🎸'.repeat(40))).toBe(`“${'🎸'.repeat(40)}”`);
    expect(quote('🎸'.repeat(41))).toBe(`“${'🎸'.repeat(40)}…”`);
    expect(quote('x'.repeat(10_000))).toBe(`“${'x'.repeat(40)}…”`);
  });
});
