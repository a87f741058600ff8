import type { Label, Mark, Quantity } from '../../geometry/drawing.ts';
import { note, showLine } from '../../geometry/marks.ts';
import { shortName } from '../../geometry/names.ts';

/** Height of the numbers over the strings, of those in the second row, and of a piece's notes, in ems. */
const first = 0.8;
const second = 0.65;
const small = 0.8;

/** From the strings' marks up to the first row of numbers, the second and the names, in ems: a row is as high as its longest number is wide. */
const rows = { first: 0.5, second: 3.6, names: 6.4 } as const;
/** How much higher all else goes where the first row is doubled, in ems. */
const doubled = rows.second - rows.first;
/** Numbers of the first row whose strings stand nearer to each other than this, mm, would run into each other at a template's text height. */
const crowded = 3;

/** From one line of notes to the next, in ems. */
const leading = 1.15;

/** A string with what stands over it. */
export interface OverString {
  readonly id: string;
  readonly name: string;
  /** Its place on the page, mm. */
  readonly x: number;
  readonly value: Quantity;
  /** A number in a second row, where any string has one. */
  readonly more?: Quantity | undefined;
}

/** The strings whose number is raised into a row of its own, as the one to its left stands too near: of a pair the right one. */
const raisedOf = (strings: readonly OverString[]): ReadonlySet<string> => {
  const raised = new Set<string>();
  let last = Number.NEGATIVE_INFINITY;
  for (const { id, x } of strings.toSorted((a, b) => a.x - b.x)) {
    if (x - last < crowded) raised.add(id);
    else last = x;
  }
  return raised;
};

/**
 * Numbers over the strings, each in line with its string's mark and read from the right, as ISO 129-1 has running dimensions; over them the names. They stand on the page as it is read: apply it to marks that
 * are mirrored already. The ids are `string.<id>.value`, `.more` and `.name`.
 */
export const overStrings = (strings: readonly OverString[], y: number, words: readonly Mark[]): readonly Mark[] => {
  const raised = raisedOf(strings);
  const up = raised.size > 0 ? doubled : 0;
  const names = up + (strings.some(({ more }) => more !== undefined) ? rows.names : rows.second);
  const turned = (id: string, x: number, value: Quantity, dy: number, scale: number): Mark =>
    note(id, { x, y }, [value], { anchor: 'start', turn: -90, scale, shift: { dx: 0.36 * scale, dy: -dy } });
  return [
    ...strings.flatMap(({ id, name, x, value, more }): Mark[] => [
      turned(`string.${id}.value`, x, value, rows.first + (raised.has(id) ? doubled : 0), first),
      ...(more === undefined ? [] : [turned(`string.${id}.more`, x, more, rows.second + up, second)]),
      note(`string.${id}.name`, { x, y }, [shortName(name)], {
        bold: true,
        shift: { dx: 0, dy: -names },
        stagger: 'names',
      }),
    ]),
    ...words.map(
      (word): Mark =>
        word.kind === 'note'
          ? { ...word, at: { ...word.at, y }, shift: { dx: 0, dy: -names }, stagger: 'names' }
          : word,
    ),
  ];
};

/** A string's mark: from the numbers over it down to where it ends, mm. */
export const stringMark = (id: string, x: number, from: number, to: number): Mark =>
  showLine(`string.${id}`, { x, y: from }, { x, y: to });

/** Lines of notes under a piece, the first so many ems below y; each with its own id. */
export const notesUnder = (y: number, ems: number, lines: readonly (readonly [string, Label])[]): readonly Mark[] =>
  lines.map(([id, label], k) =>
    note(id, { x: 0, y }, label, { scale: small, shift: { dx: 0, dy: ems + k * leading } }),
  );
