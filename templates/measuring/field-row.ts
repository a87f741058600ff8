import { type FieldInfo, fieldAt } from '../../geometry/fields.ts';
import { type Job, notTaken } from '../../geometry/job.ts';
import { sketchOf } from '../../geometry/sketches/index.ts';
import { textWidth } from '../../geometry/text.ts';
import { type QuantityKind, type ShowUnits, unitFor } from '../../geometry/units.ts';
import type { Row } from '../text-pages.ts';
import { wrap } from '../wrap.ts';
import { sketchMarks, sketchSize } from './sketch-marks.ts';
import { frame, helpLeading, helpSize, nameLeading, nameSize, put, tick, tickGap, tickSide } from './words.ts';

/** The box that a number is written into, and from one column of a row to the next, mm. */
const boxWidth = 32;
const boxHeight = 8;
const between = 3;
/** Over and under what stands in a row, mm. */
const over = 1.2;
const under = 1.6;
/** From one word to tick to the next, mm. */
const apart = 4;

/** Words that stand for where a number comes from, not for what is seen on the guitar. */
const notSeen: readonly string[] = [notTaken, 'frets', 'strung', 'readings', 'pins', 'saddle'];

/** The unit that a number of this kind is written down in, as its box says it; none for a count. */
export const unitWord = (kind: QuantityKind, show: ShowUnits): string => {
  switch (kind) {
    case 'length':
    case 'radius':
    case 'gauge':
      return unitFor(kind, show) === 'mm' ? 'mm' : 'in';
    case 'slope':
      return 'mm in 100';
    case 'cents':
      return 'cents';
    default:
      return '';
  }
};

/** The first sentence: where the rule is held. */
const short = (help: string): string => /^.*?\.(?=\s|$)/.exec(help)?.[0] ?? help;

/** Words to tick, laid in lines of a width: each with its place from the first one's. */
const laid = (words: readonly string[], width: number) => {
  let [x, line] = [0, 0];
  return words.map((word) => {
    const wide = tickSide + tickGap + textWidth(word, helpSize);
    if (x > 0 && x + wide > width) [x, line] = [0, line + 1];
    const place = { word, x, line };
    x += wide + apart;
    return place;
  });
};

/** A field of the sheet: where it is measured, its name and help, and a box for its number, or its choices to tick. The job tells which guitar the sketch is of. */
export const fieldRow = (field: FieldInfo, job: Job, width: number): Row => {
  const { path, kind, label, help, choices } = field;
  const words = Object.values(choices ?? {}).filter((word) => word !== 'not measured');
  const isNumber = kind !== 'word' && kind !== 'text';
  const left = sketchSize.width + between;
  const column = width - left - (isNumber ? boxWidth + between : 0);
  const names = wrap(label, column, nameSize, true);
  const says = wrap(short(help), column, helpSize);
  const options = laid(words, column);
  const shown = sketchOf(path, job);
  const word = field.word !== undefined && !notSeen.includes(field.word) ? field.word : undefined;
  const text = names.length * nameLeading + says.length * helpLeading;
  const ticks = options.length > 0 ? 1 + ((options.at(-1)?.line ?? 0) + 1) * (helpLeading + 0.7) : 0;
  const boxed = isNumber ? boxHeight + (word === undefined ? 0 : helpLeading + 1.5) : 0;
  return {
    height: over + Math.max(shown ? sketchSize.height : 0, text + ticks, boxed) + under,
    draw: (y, id) => {
      const top = y + over;
      const right = width - boxWidth;
      const helpFrom = top + names.length * nameLeading;
      return [
        ...(shown ? sketchMarks(shown, `${id}.sketch`, { x: 0, y: top }) : []),
        ...names.map((line, k) =>
          put(`${id}.label.${k}`, { x: left, y: top + nameSize * 0.85 + k * nameLeading }, line, nameSize, {
            bold: true,
          }),
        ),
        ...says.map((line, k) =>
          put(`${id}.help.${k}`, { x: left, y: helpFrom + helpSize + k * helpLeading }, line, helpSize),
        ),
        ...options.flatMap(({ word: says, x, line }, k) =>
          tick(`${id}.choice.${k}`, { x: left + x, y: top + text + 1 + helpSize + line * (helpLeading + 0.7) }, says),
        ),
        ...(isNumber
          ? [
              frame(`${id}.box`, { x: right, y: top }, boxWidth, boxHeight),
              put(`${id}.unit`, { x: width - 1, y: top + boxHeight - 1.6 }, unitWord(kind, job.show), helpSize, {
                end: true,
              }),
              ...(word === undefined
                ? []
                : tick(`${id}.word`, { x: right, y: top + boxHeight + 1.2 + helpSize }, word)),
            ]
          : []),
      ];
    },
  };
};

/** The field at a path that the schema has. Throws a RangeError where it has none. */
export const knownField = (path: string): FieldInfo => {
  const field = fieldAt(path);
  if (field === undefined) throw new RangeError(`A job has no field ${path} to be measured.`);
  return field;
};
