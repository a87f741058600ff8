import { type Container, SVG, type Svg, withWindow } from '@svgdotjs/svg.js';
import type { Primitive, Purpose, Stroke, Text } from '../geometry/drawing.ts';
import { digits, pathData } from '../geometry/path-data.ts';
import type { Letters } from './letters.ts';
import { dashes, ink, lineWidth, purposes } from './style.ts';

export interface SvgOptions {
  /** The page, mm. */
  readonly width: number;
  readonly height: number;
  /** Where the page's top left corner lies on the drawing, mm; 0 0 if not given. */
  readonly left?: number;
  readonly top?: number;
  readonly title: string;
  /** The DOM to write with: the browser's own, or one made for Node. */
  readonly window: Window;
}

/** What all strokes of a layer are drawn with. */
export interface Pen {
  /** As `#rrggbb`. */
  readonly colour: string;
  /** mm. */
  readonly width: number;
}

/** A group of the file, in the order in which it is drawn. */
export interface SvgLayer {
  /** An XML name; also what the group says it is for. */
  readonly id: string;
  readonly drawn: readonly (Primitive | Letters)[];
  /** Black, and as wide as each stroke's line type says, where this is left out. */
  readonly pen?: Pen;
}

/** Characters that XML 1.0 (2.2) does not allow, among them lone surrogates, become U+FFFD. */
const allowed = (text: string): string =>
  text.replace(/[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '\ufffd');

/** Gives each id once, as an XML name: other characters become hyphens, a second one of a name gets a number. */
const idMaker = (taken: readonly string[]) => {
  const given = new Set<string>(taken);
  return (wanted: string): string => {
    const plain = wanted.replace(/[^A-Za-z0-9_.-]/g, '-');
    const name = /^[A-Za-z_]/.test(plain) ? plain : `_${plain}`;
    let id = name;
    for (let n = 2; given.has(id); n++) id = `${name}-${n}`;
    given.add(id);
    return id;
  };
};

/**
 * The circle's centre and radius where the stroke is one whole circle. A `circle` begins at its right and turns from +x towards +y (SVG 2, 10.3), so dashes that
 * begin elsewhere, or run the other way, are left to a path.
 */
const wholeCircle = ({ path, line }: Stroke) => {
  const [only, ...rest] = path.segments;
  if (!path.closed || rest.length > 0 || only?.kind !== 'arc' || Math.abs(only.sweep) < 2 * Math.PI - 1e-9) return;
  const { centre, radius, start, sweep } = only;
  if (dashes[line].length > 0 && (sweep < 0 || Math.abs(Math.sin(start / 2)) > 1e-9)) return;
  return { cx: digits(centre.x), cy: digits(centre.y), r: digits(radius) };
};

const drawStroke = (group: Container, stroke: Stroke, id: string, pen?: Pen): void => {
  const circle = wholeCircle(stroke);
  const drawn = circle ? group.circle().attr(circle) : group.path().attr({ d: pathData(stroke.path) });
  drawn.attr({ id });
  if (stroke.matter === 'ink') {
    // Filled to its outline and no farther, so that an arrow's tip stays where it points.
    drawn.attr({ fill: pen?.colour ?? ink, stroke: 'none' });
    return;
  }
  drawn.attr({ 'stroke-width': pen?.width ?? lineWidth[stroke.line] });
  const dash = dashes[stroke.line];
  if (dash.length > 0) drawn.attr({ 'stroke-dasharray': dash.map(digits).join(' ') });
};

/** Letters that may be read from right to left. */
const toLeft = /[\p{Script=Hebrew}\p{Script=Arabic}]/u;

const drawText = (group: Container, text: Text, id: string, pen?: Pen): void => {
  const x = digits(text.at.x);
  const y = digits(text.at.y);
  const drawn = group.plain(allowed(text.text)).attr({
    id,
    x,
    y,
    'font-family': 'DejaVu Sans, sans-serif',
    'font-size': digits(text.size),
    'text-anchor': text.anchor,
    fill: pen?.colour ?? ink,
    stroke: 'none',
  });
  // As measured, and as the PDF is written: each character by its own advance. Set as properties, since a content security policy
  // minds a style attribute even on an element that is never shown.
  drawn.css({
    'font-kerning': 'none',
    'font-variant-ligatures': 'none',
    // The way of its first letter (UAX 9, P2), as in the PDF; where the text stands is not changed by it.
    ...(toLeft.test(text.text) && { 'unicode-bidi': 'plaintext' }),
  } as Partial<CSSStyleDeclaration>);
  if (text.bold) drawn.attr({ 'font-weight': 'bold' });
  if (text.turn !== 0) drawn.attr({ transform: `rotate(${digits(text.turn)} ${x} ${y})` });
};

/** One path for the whole line, filled by the nonzero rule as fonts are, so that the hollows of letters stay open. */
const drawLetters = (group: Container, { text, paths }: Letters, id: string, pen?: Pen): void => {
  if (paths.length === 0) return;
  group.path().attr({
    d: paths.map(pathData).join(''),
    id,
    'aria-label': allowed(text),
    fill: pen?.colour ?? ink,
    stroke: 'none',
  });
};

const purposeOf = (primitive: Primitive): Purpose => (primitive.kind === 'stroke' ? primitive.purpose : 'show');

type Host = Window & { readonly XMLSerializer?: typeof XMLSerializer };

/**
 * The root as XML. In a browser by its XML serialiser, as svg.js's own writes `&nbsp;`, which is not XML; the serialiser names the
 * namespace itself, so the attribute that svg.js sets, which is in no namespace, would come a second time.
 */
const serialise = (root: Svg, { XMLSerializer: Serializer }: Host): string => {
  if (!Serializer) return root.svg();
  root.node.removeAttribute('xmlns');
  return new Serializer().serializeToString(root.node);
};

/** One page as an SVG file at true size: width and height in mm, user units that are mm, arcs as arcs, a group for each layer. */
export const layersToSvg = (layers: readonly SvgLayer[], options: SvgOptions): string =>
  withWindow(options.window, () => {
    const { width, height, left = 0, top = 0, title } = options;
    const root = SVG()
      .size(`${digits(width)}mm`, `${digits(height)}mm`)
      .attr({ viewBox: [left, top, width, height].map(digits).join(' ') });
    root.element('title').words(allowed(title));
    const makeId = idMaker(layers.map(({ id }) => id));
    for (const { id: name, drawn, pen } of layers) {
      const group = root.group().attr({ id: name, 'data-purpose': name, fill: 'none', stroke: pen?.colour ?? ink });
      for (const one of drawn) {
        const id = makeId(one.id);
        if (one.kind === 'stroke') drawStroke(group, one, id, pen);
        else if (one.kind === 'text') drawText(group, one, id, pen);
        else drawLetters(group, one, id, pen);
      }
    }
    const body = serialise(root, options.window);
    return `<?xml version="1.0" encoding="UTF-8"?>\n${body}\n`;
  });

/** One page as an SVG file, as `layersToSvg` writes it: a group for each purpose, in black, lines as wide as their type says. */
export const toSvg = (primitives: readonly Primitive[], options: SvgOptions): string =>
  layersToSvg(
    purposes.map((id) => ({ id, drawn: primitives.filter((one) => purposeOf(one) === id) })),
    options,
  );
