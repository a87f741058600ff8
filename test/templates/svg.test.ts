import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import type { Primitive, Stroke, Text } from '../../geometry/drawing.ts';
import { circle } from '../../geometry/shape/arc.ts';
import { pen, polyline } from '../../geometry/shape/path.ts';
import { mirrorX } from '../../geometry/shape/transform.ts';
import { dashes, lineWidth } from '../../templates/style.ts';
import { toSvg } from '../../templates/svg.ts';
import { svgWindow } from '../../templates/svg-window.ts';
import { readSvg, renderSvg } from '../read-svg.ts';

const stroke = (id: string, more: Partial<Stroke> = {}): Stroke => ({
  kind: 'stroke',
  id,
  path: polyline(
    [
      { x: 20, y: 30 },
      { x: 120, y: 30 },
    ],
    false,
  ),
  line: 'outline',
  purpose: 'cut',
  ...more,
});
const text = (id: string, words: string, more: Partial<Text> = {}): Text => ({
  kind: 'text',
  id,
  at: { x: 50, y: 60 },
  text: words,
  size: 3.5,
  anchor: 'start',
  turn: 0,
  bold: false,
  ...more,
});
const outline = pen({ x: 10, y: 10 })
  .line({ x: 90, y: 10 })
  .arc({ x: 90, y: 26 }, 8, 1)
  .cubic({ x: 60, y: 40 }, { x: 40, y: 40 }, { x: 10, y: 26 })
  .close();
const hostile = '</text><script>alert("1")</script> & ]]> \u0001\ud800 é\u00a0\'';

// The two hosts in which files are written: the terminal's DOM, and one that serialises XML as a browser does.
describe.each([
  ['svgdom', () => svgWindow()],
  ['a DOM with XMLSerializer', () => new JSDOM().window as Window],
])('toSvg with %s', (_, host) => {
  const page = { width: 210, height: 297, title: 'A bridge', window: host() };
  const write = (primitives: readonly Primitive[]) => readSvg(toSvg(primitives, page));

  it('is true to size: the page in mm, and a user unit that is a mm', () => {
    // ISO 216: A4 is 210 mm × 297 mm.
    expect(write([])).toMatchObject({
      widthMm: 210,
      heightMm: 297,
      viewBox: { x: 0, y: 0, width: 210, height: 297 },
      title: 'A bridge',
    });
  });

  it('shows a part of the drawing where its left top corner is given', () => {
    const file = readSvg(toSvg([stroke('bar')], { ...page, width: 120, height: 20, left: 10, top: -5.5 }));
    expect(file.viewBox).toEqual({ x: 10, y: -5.5, width: 120, height: 20 });
    expect(file.widthMm).toBe(120);
  });

  it('keeps lines, arcs and cubics as such', () => {
    const [element] = write([stroke('outline', { path: outline })]).elements;
    expect(element?.attributes.d).toMatch(/^M10 10L90 10A8 8 0 0 1 /);
    expect(element?.paths[0]?.closed).toBe(true);
    const arcs = element?.paths[0]?.segments.filter((s) => s.kind === 'arc') ?? [];
    for (const arc of arcs) expect(arc.radius).toBeCloseTo(8, 6);
    expect(arcs.reduce((sum, a) => sum + a.sweep, 0)).toBeCloseTo(Math.PI, 5);
    expect(element?.paths[0]?.segments.at(-2)).toEqual({
      kind: 'cubic',
      from: { x: 90, y: 26 },
      c1: { x: 60, y: 40 },
      c2: { x: 40, y: 40 },
      to: { x: 10, y: 26 },
    });
  });

  it('keeps a drill hole as a circle', () => {
    const [hole] = write([stroke('pin', { purpose: 'drill', path: circle({ x: 33.25, y: 12 }, 2.5) })]).elements;
    expect(hole).toMatchObject({ tag: 'circle', id: 'pin', purpose: 'drill' });
    expect(hole?.attributes).toMatchObject({ cx: '33.25', cy: '12', r: '2.5' });
  });

  it('begins the dashes of a circle where it begins', () => {
    const mirrored = mirrorX(circle({ x: -33.25, y: 12 }, 2.5));
    const [plain, turned, solid] = write([
      stroke('plain', { line: 'hidden', path: circle({ x: 33.25, y: 12 }, 2.5) }),
      stroke('turned', { line: 'hidden', path: mirrored }),
      stroke('solid', { path: mirrored }),
    ]).elements;
    expect([plain?.tag, turned?.tag, solid?.tag]).toEqual(['circle', 'path', 'circle']);
    expect(turned?.attributes.d).toMatch(/^M30\.75 12A/);
  });

  it('groups strokes by what they are for, each with its id, width and dashes', () => {
    const lines = ['outline', 'thin', 'hidden', 'centre', 'phantom'] as const;
    const { elements } = write(
      lines.map((line) => stroke(line, { line, purpose: line === 'hidden' ? 'fold' : 'cut' })),
    );
    for (const line of lines) {
      const element = elements.find((e) => e.id === line);
      expect(element?.purpose).toBe(line === 'hidden' ? 'fold' : 'cut');
      expect(element?.attributes['stroke-width']).toBe(String(lineWidth[line]));
      const written = (element?.attributes['stroke-dasharray'] ?? '').split(' ').filter(Boolean).map(Number);
      expect(written).toEqual(dashes[line].map((length) => expect.closeTo(length, 6)));
    }
  });

  it('fills an arrowhead and leaves every other area empty', () => {
    const { elements } = write([
      stroke('wood', { path: outline, matter: 'wood' }),
      stroke('tip', { path: outline, matter: 'ink' }),
    ]);
    expect(elements.find((e) => e.id === 'wood')?.attributes.fill).toBeUndefined();
    expect(elements.find((e) => e.id === 'tip')?.attributes).toMatchObject({ fill: '#000000', stroke: 'none' });
  });

  it('writes texts at their place, size, anchor and turn, without kerning and ligatures', () => {
    const [note] = write([text('note', 'Ærø ½ → ≤', { turn: -90, anchor: 'end', bold: true })]).elements;
    expect(note).toMatchObject({ tag: 'text', id: 'note', purpose: 'show', text: 'Ærø ½ → ≤' });
    expect(note?.attributes).toMatchObject({
      x: '50',
      y: '60',
      'font-size': '3.5',
      'font-weight': 'bold',
      'text-anchor': 'end',
      transform: 'rotate(-90 50 60)',
      style: 'font-kerning: none; font-variant-ligatures: none;',
    });
    expect(note?.attributes['font-family']).toContain('DejaVu Sans');
  });

  it('lets a name run the way of its first letter', () => {
    const [name] = write([text('name', 'שלום bridge 12')]).elements;
    expect(name?.text).toBe('שלום bridge 12');
    expect(name?.attributes.style).toContain('unicode-bidi: plaintext;');
  });

  it('leaves a hostile name inert and the file well-formed', () => {
    const source = toSvg([text('a', hostile)], { ...page, title: hostile });
    const file = readSvg(source);
    expect(source).not.toContain('<script');
    expect(source).not.toContain('&nbsp;');
    expect(file.elements.map((e) => e.tag)).toEqual(['text']);
    expect(file.elements[0]?.text).toBe(hostile.replace('\u0001\ud800', '\ufffd\ufffd'));
    expect(file.title).toBe(file.elements[0]?.text);
    expect(renderSvg(source, 25.4).width).toBe(210);
  });

  it.each([
    ['a script and a comment', '</text></svg><script>alert(1)</script><!-- <![CDATA[ ]]> -->', undefined],
    ['entities and a doctype', '&lt;&amp;&#0;&evil; <!DOCTYPE svg [<!ENTITY x "y">]> <?xml?>', undefined],
    ['a PDF’s first bytes', '%PDF-1.7 (endobj) >> %%EOF', undefined],
    // XML 1.0, 2.2: no control characters but tab and line ends, no surrogate by itself, neither U+FFFE nor U+FFFF.
    ['control characters', 'a\u0000b\u0007c\u001bd\ufffee\uffff', 'a\ufffdb\ufffdc\ufffdd\ufffde\ufffd'],
    ['surrogates by themselves', '\udc00\ud83c and \ud83c\udfb8', '\ufffd\ufffd and \ud83c\udfb8'],
    ['a quote for each attribute', '" onload="alert(1)" x=\'', undefined],
    ['5,000 letters', 'W'.repeat(5000), undefined],
  ])('leaves %s in names and ids inert: one text, drawn', (_, name, read = name) => {
    const source = toSvg([text(name, name), stroke(name)], { ...page, title: name });
    const file = readSvg(source);
    expect(file.elements.map(({ tag }) => tag)).toEqual(['path', 'text']);
    expect(file.elements.map(({ text: words }) => words)).toEqual(['', read]);
    expect(file.title).toBe(read);
    expect(source).not.toMatch(/<script|<!DOCTYPE|<!ENTITY|<!\[CDATA/);
    for (const { attributes } of file.elements) expect(Object.keys(attributes)).not.toContain('onload');
    expect(renderSvg(source, 25.4).width).toBe(210);
  });

  it('gives every id once, as an XML name', () => {
    const ids = write(['a b"<', 'a b"<', 'a-b--', 'cut', '1st', 'é'].map((id) => stroke(id))).elements.map((e) => e.id);
    expect(new Set(ids).size).toBe(6);
    // XML 1.0, 2.3: a name begins with a letter or an underscore.
    for (const id of ids) expect(id).toMatch(/^[A-Za-z_][\w.-]*$/);
    expect(ids).not.toContain('cut');
  });

  it('is the same for the same drawing', () => {
    const drawing = [stroke('bar', { line: 'centre' }), text('note', 'once')];
    expect(toSvg(drawing, page)).toBe(toSvg(drawing, { ...page, window: host() }));
  });
});
