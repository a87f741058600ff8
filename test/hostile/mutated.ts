import fc from 'fast-check';
import { changedAt, isGroup, isList, partAt, sizeOf, type Tree, textOf, treeOf } from './tree.ts';

/*
 * Files as someone might send them who wants the program to stumble: good ones, changed value by value, then byte by byte.
 */

const nested = (open: string, close: string, count: number, inside = '') =>
  open.repeat(count) + inside + close.repeat(count);

/** What may come in a value's place, as JSON text. */
const values: readonly string[] = [
  ...[
    'null',
    'true',
    'false',
    '0',
    '-0',
    '-0.0',
    '1',
    '-1',
    '1.5',
    '3',
    '4',
    '"3"',
    '1e999',
    '-1e999',
    '1e-999',
    '5e-324',
  ],
  ...['1.7976931348623157e308', '9007199254740993', '123456789012345678901234567890', '0.1234567890123456789', '6.5e2'],
  ...[
    '""',
    '" "',
    '"NaN"',
    '"Infinity"',
    '"650"',
    '"6,5"',
    '"not taken"',
    '"flat"',
    '"same"',
    '"auto"',
    '"\\u0000"',
    '"\\ud800"',
    '"\\udc00x"',
  ],
  ...[
    '"\\u001b[2J"',
    '"\\u202eabc"',
    '"a\\nb\\r\\nc"',
    '"\\u2028"',
    '"\u2028"',
    '"<script>alert(1)</script>"',
    '"a.b"',
    '"*"',
    '"x y"',
  ],
  ...[
    '"__proto__"',
    '"constructor"',
    '"prototype"',
    '"toString"',
    '"hasOwnProperty"',
    '"E2"',
    '"A"',
    '"2026-02-30"',
    '"2026-01-01"',
    '"\\u05d0\\u0627\\ud83c\\udfb8"',
  ],
  ...[`"${'x'.repeat(50)}"`, `"${'W'.repeat(5000)}"`, `"${'\\u0301'.repeat(300)}"`],
  ...[
    '[]',
    '{}',
    '[[]]',
    '[null]',
    '[1,2,3]',
    '{"id":"x"}',
    '[{"id":"x"},{"id":"x"}]',
    '{"0":1,"length":9}',
    '{"__proto__":{"polluted":1}}',
  ],
  ...[
    '{"constructor":{"prototype":{"polluted":1}}}',
    '{"toJSON":1}',
    '{"then":1}',
    '{"":1}',
    '{"a":1,"a":2}',
    '{"\\u0061":1,"a":2}',
  ],
  nested('[', ']', 49),
  nested('[', ']', 51),
  nested('{"a":', '}', 60, '1'),
  nested('[', ']', 10_000),
  `[${'0,'.repeat(2000)}0]`,
  `[${'{"id":"a"},'.repeat(500)}{}]`,
  `{${Array.from({ length: 200 }, (_, k) => `"k${k}":${k}`).join()}}`,
];

/** What may come in a key's place, as JSON text. */
const keys: readonly string[] = [
  ...[
    '""',
    '"__proto__"',
    '"\\u005f_proto__"',
    '"constructor"',
    '"prototype"',
    '"toString"',
    '"hasOwnProperty"',
    '"valueOf"',
  ],
  ...[
    '"a.b"',
    '"."',
    '"*"',
    '" "',
    '"id"',
    '"format"',
    '"version"',
    '"0"',
    '"length"',
    '"\\u0000"',
    '"\\ud800"',
    '"\\u202e"',
    '"\\u001b[31m"',
  ],
  `"${'k'.repeat(3000)}"`,
];

/** Bytes that are put in: invalid UTF-8, byte order marks, line ends, separators, marks of JSON. */
const pieces: readonly (readonly number[])[] = [
  ...[
    [0xff],
    [0xc0, 0x80],
    [0xed, 0xa0, 0x80],
    [0xef, 0xbb, 0xbf],
    [0xff, 0xfe],
    [0xf0, 0x9f],
    [0],
    [0x0d, 0x0a],
    [0xe2, 0x80, 0xa8],
    [0xc2, 0x85],
  ],
  ...['"', '\\', '{', '}', '[', ']', ',', ':', '-', 'e9', '0', '//', '/**/', 'NaN', "'", '\\u12', '\t'].map((text) => [
    ...Buffer.from(text),
  ]),
];

const pick = <T>(from: readonly T[], share: number): T => from[Math.floor(share * from.length)] as T;

type Change = readonly [how: number, at: number, by: number];

/** The parts of a group or list with those between two places done to. */
const spliced = (
  tree: Tree,
  at: number,
  out: number,
  put: (part: readonly [string, Tree]) => readonly (readonly [string, Tree])[],
): Tree => {
  if (typeof tree === 'string') return tree;
  const pairs = isGroup(tree) ? tree.pairs : tree.map((part): readonly [string, Tree] => ['', part]);
  if (pairs.length === 0) return tree;
  const k = Math.floor(at * pairs.length);
  const made = [...pairs.slice(0, k), ...put(pairs[k] ?? ['""', 'null']), ...pairs.slice(k + out)];
  return isGroup(tree) ? { pairs: made } : made.map(([, part]) => part);
};

const nudged = (text: string, by: number): string => {
  const number = Number(text);
  return Number.isFinite(number) && text !== '' && !text.startsWith('"') ? String(number * (0.9 + 0.2 * by)) : text;
};

const repeated = (list: readonly Tree[], times: number): readonly Tree[] => {
  const all: Tree[] = [];
  for (let k = 0; k < times; k += 1) all.push(...list);
  return all;
};

/** How a tree may be changed at one place. */
const ways: readonly ((tree: Tree, place: number, by: number) => Tree)[] = [
  (tree, place, by) => changedAt(tree, place, () => pick(values, by)),
  (tree, place, by) => changedAt(tree, place, (part) => (typeof part === 'string' ? nudged(part, by) : part)),
  (tree, place, by) => changedAt(tree, place, (part) => spliced(part, by, 1, () => [])),
  (tree, place, by) => changedAt(tree, place, (part) => spliced(part, by, 1, (one) => [one, one])),
  (tree, place, by) =>
    changedAt(tree, place, (part) => spliced(part, by, 1, ([, one]) => [[pick(keys, (by * 97) % 1), one]])),
  (tree, place, by) =>
    changedAt(tree, place, (part) =>
      spliced(part, by, 0, () => [[pick(keys, (by * 97) % 1), pick(values, (by * 89) % 1)]]),
    ),
  // What stands elsewhere in the file: another type, or a group in itself.
  (tree, place, by) => changedAt(tree, place, () => partAt(tree, Math.floor(by * sizeOf(tree)))),
  (tree, place) => changedAt(tree, place, (part) => [part]),
  (tree, place, by) =>
    changedAt(tree, place, (part) =>
      isList(part) ? repeated(part, Math.ceil(by * 100)) : `"${textOf(part).replace(/[\\"]/g, '')}"`,
    ),
];

const byWay: readonly ((bytes: Buffer, at: number, by: number) => Buffer)[] = [
  (bytes, at) => bytes.subarray(0, at),
  (bytes, at, by) =>
    Buffer.concat([bytes.subarray(0, at), Buffer.from([Math.floor(by * 256)]), bytes.subarray(at + 1)]),
  (bytes, at, by) => Buffer.concat([bytes.subarray(0, at), Buffer.from(pick(pieces, by)), bytes.subarray(at)]),
  (bytes, at, by) => Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + Math.ceil(by * by * 300))]),
  (bytes, at, by) => Buffer.concat([bytes.subarray(0, at + Math.ceil(by * by * 300)), bytes.subarray(at)]),
  (bytes, _, by) => Buffer.concat([Buffer.from(pick(pieces, by)), bytes]),
  (bytes) => Buffer.from(bytes.toString('utf8').replace(/([,{])/g, '$1\r\n')),
];

const change: fc.Arbitrary<Change> = fc.tuple(
  fc.nat(1000),
  fc.double({ min: 0, max: 0.999999, noNaN: true }),
  fc.double({ min: 0, max: 0.999999, noNaN: true }),
);

const changedTree = (tree: Tree, [how, at, by]: Change): Tree =>
  ways[how % ways.length]?.(tree, Math.floor(at * sizeOf(tree)), by) ?? tree;
const changedBytes = (bytes: Buffer, [how, at, by]: Change): Buffer =>
  byWay[how % byWay.length]?.(bytes, Math.floor(at * bytes.length), by) ?? bytes;

/** One of these files' texts, changed in up to four places of its values, and of four files one in its bytes too. */
export const mutated = (files: readonly string[]): fc.Arbitrary<string> => {
  const trees = files.map((text) => treeOf(JSON.parse(text)));
  return fc
    .record({
      file: fc.nat(files.length - 1),
      changes: fc.array(change, { maxLength: 4 }),
      bytes: fc.oneof(
        { weight: 3, arbitrary: fc.constant<Change[]>([]) },
        { weight: 1, arbitrary: fc.array(change, { minLength: 1, maxLength: 3 }) },
      ),
    })
    .map(({ file, changes, bytes }) => {
      const text = textOf(changes.reduce<Tree>(changedTree, trees[file] ?? 'null'));
      if (bytes.length === 0) return text;
      // As a browser reads a file: what is no UTF-8 is replaced, a mark at its beginning left out.
      return new TextDecoder().decode(bytes.reduce<Buffer>(changedBytes, Buffer.from(text)));
    });
};
