/// <reference path="./fontkit.d.ts" />
import * as fontkit from 'fontkit';
import { once } from '../geometry/once.ts';
import { textWidth } from '../geometry/text.ts';
import { inGroups, inSight, mirrored, textOf } from './reading-order.ts';
import type { TextPicture } from './text-picture.ts';

/*
 * A line of text as glyphs at their places. What is written from left to right, a letter a glyph, is neither kerned nor joined, as it is measured and as the
 * screen and SVG show it; Arabic and its like are shaped by the font's own rules.
 */

/** A font, and the characters that it can draw. */
export interface Face {
  readonly font: fontkit.FontFace;
  readonly characters: ReadonlySet<number>;
}

/** A glyph of a line. Lengths in ems, y up. */
export interface SetGlyph {
  readonly glyph: fontkit.FontGlyph;
  /** The characters that it stands for, in reading order. */
  readonly text: string;
  /** From the pen's place to where the glyph is drawn. */
  readonly dx: number;
  readonly dy: number;
  /** How far the pen goes on. */
  readonly advance: number;
}

interface Part {
  /** What is written here, in reading order. */
  readonly text: string;
  readonly toLeft: boolean;
  /** Where it begins at its left, and how wide it is, ems. */
  readonly x: number;
  readonly ems: number;
}

/** A stretch of a line in one face and direction; its glyphs from left to right. */
export interface GlyphPart extends Part {
  readonly kind: 'glyphs';
  readonly face: Face;
  readonly glyphs: readonly SetGlyph[];
}

/** A stretch of a line as a picture, drawn at `scale` times its size. */
export interface PicturePart extends Part {
  readonly kind: 'picture';
  readonly picture: TextPicture;
  readonly scale: number;
}

/** Parts of a line that are read together. */
export interface PartGroup {
  /** What was typed. */
  readonly text: string;
  /** From left to right as they are seen; so written, they read as they were typed. */
  readonly parts: readonly (GlyphPart | PicturePart)[];
}

export interface SetLine {
  /** In reading order. */
  readonly groups: readonly PartGroup[];
  readonly ems: number;
  /** What the line's em size is multiplied by, so that it stays within the room that was measured for it where codes stand in for characters. */
  readonly scale: number;
  /** The characters that nothing at hand can draw: they are written as their codes. */
  readonly lacking: readonly string[];
}

/** What a line is set with. */
export interface Setting {
  /** The first that has a character draws it. */
  readonly faces: readonly Face[];
  /** Draws what no face has, if it can. */
  readonly picture?: ((text: string, toLeft: boolean) => TextPicture | undefined) | undefined;
}

/** A font file's face; of a collection the first. Read once: its tables take longer than most drawings. Throws when the bytes are no font. */
export const readFace = once((bytes: Uint8Array): Face => {
  const read = fontkit.create(bytes);
  const font = 'fonts' in read ? (read.fonts[0] as fontkit.FontFace) : read;
  return { font, characters: new Set(font.characterSet) };
});

const features = { kern: false, liga: false, clig: false, dlig: false, calt: false };

/** Letters whose glyphs stand one after the other as they are: no marks, nothing that joins. */
const plain = /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Common}]*$/u;
/** What steers text and is not seen itself. */
const unseen = /^\p{Default_Ignorable_Code_Point}$/u;
/** Of these, what bidirectional text is steered by: it has done its work before a line is set. */
const steering = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069\u00ad\ufeff]/g;

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** A character as its code in brackets, `[U+6728]`. */
export const codeOf = (character: string): string =>
  `[U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}]`;

/** Characters that stand together, and what draws them. */
interface Cluster {
  readonly text: string;
  readonly by: Face | 'picture';
}

const clustersOf = (text: string, { faces, picture }: Setting): { clusters: Cluster[]; lacking: string[] } => {
  const clusters: Cluster[] = [];
  const lacking: string[] = [];
  const [first] = faces;
  if (!first) throw new RangeError('A line of text is set in at least one face; none was given.');
  const whole = text.normalize('NFC');
  const has = ({ characters }: Face, character: string) => characters.has(character.codePointAt(0) ?? 0);
  // Most lines: nothing in them stands together with anything else.
  if (plain.test(whole) && [...whole].every((character) => has(first, character) && !unseen.test(character)))
    return { clusters: [{ text: whole, by: first }], lacking };
  for (const { segment } of graphemes.segment(whole)) {
    const seen = [...segment].filter((character) => !unseen.test(character));
    const face = faces.find((one) => seen.every((character) => has(one, character)));
    if (face) clusters.push({ text: segment, by: face });
    else if (!/[\p{Control}\p{Surrogate}]/u.test(segment) && picture?.(segment, false))
      clusters.push({ text: segment, by: 'picture' });
    else
      for (const character of seen) {
        const by = faces.find((one) => has(one, character));
        if (by) clusters.push({ text: character, by });
        else {
          lacking.push(character);
          clusters.push(...[...codeOf(character)].map((letter) => ({ text: letter, by: first })));
        }
      }
  }
  return { clusters, lacking };
};

/** A lam and an alef with a sign are one letter with that sign (Unicode, 9.2); written apart, so that the font's rules find the two that they join. */
const withSignApart = (text: string): string =>
  text.replace(/(?<=\u0644\p{Mn}*)[\u0622\u0623\u0625]/gu, (alef) => alef.normalize('NFD'));

/** The glyphs of a stretch, from left to right. */
const glyphsOf = (written: string, toLeft: boolean, { font }: Face): readonly SetGlyph[] => {
  const text = written.replace(steering, '');
  if (!toLeft && plain.test(text))
    return [...text].map((character) => {
      const glyph = font.glyphForCodePoint(character.codePointAt(0) ?? 0);
      const advance = unseen.test(character) ? 0 : glyph.advanceWidth / font.unitsPerEm;
      return { glyph, text: character, dx: 0, dy: 0, advance };
    });
  const { glyphs, positions } = font.layout(
    toLeft ? withSignApart(mirrored(text)) : text,
    features,
    undefined,
    undefined,
    toLeft ? 'rtl' : 'ltr',
  );
  return glyphs.map((glyph, k) => {
    const { xAdvance = 0, xOffset = 0, yOffset = 0 } = positions[k] ?? {};
    const characters = String.fromCodePoint(...glyph.codePoints);
    return {
      glyph,
      text: toLeft ? mirrored(characters) : characters,
      dx: xOffset / font.unitsPerEm,
      dy: yOffset / font.unitsPerEm,
      advance: xAdvance / font.unitsPerEm,
    };
  });
};

/** Neighbours that the same thing draws, as one. */
const joined = (clusters: readonly Cluster[]): readonly Cluster[] => {
  const runs: { text: string; by: Cluster['by'] }[] = [];
  for (const { text, by } of clusters) {
    const last = runs.at(-1);
    if (last?.by === by) last.text += text;
    else runs.push({ text, by });
  }
  return runs;
};

/** A run as it is drawn, its left end at x; nothing where there is nothing to be seen. */
const partOf = (
  { text, by }: Cluster,
  toLeft: boolean,
  x: number,
  bold: boolean,
  { picture: draw }: Setting,
): GlyphPart | PicturePart | undefined => {
  if (by !== 'picture') {
    const glyphs = glyphsOf(text, toLeft, by);
    const ems = glyphs.reduce((sum, { advance }) => sum + advance, 0);
    return glyphs.length > 0 ? { kind: 'glyphs', text, toLeft, x, ems, face: by, glyphs } : undefined;
  }
  const picture = draw?.(text, toLeft);
  if (!picture) return undefined;
  const drawn = picture.advance / picture.perEm;
  const scale = Math.min(1, textWidth(text, 1, bold) / drawn);
  return { kind: 'picture', text, toLeft, x, ems: drawn * scale, picture, scale };
};

/** A line of text set from left to right as it is to be seen; measured in ems. Throws RangeError where no face is given. */
export const setLine = (text: string, bold: boolean, setting: Setting): SetLine => {
  const { clusters, lacking } = clustersOf(text, setting);
  const set = new Map<unknown, readonly (GlyphPart | PicturePart)[]>();
  const stretches = inSight(clusters);
  let x = 0;
  for (const stretch of stretches) {
    const { parts, toLeft } = stretch;
    const runs = joined(parts);
    const placed = (toLeft ? runs.toReversed() : runs).flatMap((run) => {
      const part = partOf(run, toLeft, x, bold, setting);
      x += part?.ems ?? 0;
      return part ? [part] : [];
    });
    set.set(stretch, placed);
  }
  const groups = inGroups(stretches).map((group) => ({
    text: textOf(group),
    parts: group.flatMap((stretch) => set.get(stretch) ?? []),
  }));
  const scale = lacking.length > 0 && x > 0 ? Math.min(1, textWidth(text, 1, bold) / x) : 1;
  return { groups, ems: x, scale, lacking };
};
