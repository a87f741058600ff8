import { crc32, inflateRawSync } from 'node:zlib';
import { afterEach, expect, it } from 'vitest';
import { zipOf } from '../../src/app/save/zip.ts';

const files = [
  { name: 'Curlew 木-footprint.cutter.svg', text: '<svg>½ in</svg>'.repeat(50) },
  { name: 'Curlew 木-saddle.cutter.svg', text: '<svg/>' },
];

/** The files of a ZIP file by its own directory, and the two words that say their day, as APPNOTE 6.3.10 of the format lays them out (4.3.7, 4.3.12, 4.3.16). */
const readZip = (bytes: Uint8Array) => {
  const b = Buffer.from(bytes);
  const end = b.length - 22;
  expect(b.readUInt32LE(end)).toBe(0x06054b50);
  let at = b.readUInt32LE(end + 16);
  return Array.from({ length: b.readUInt16LE(end + 10) }, () => {
    expect(b.readUInt32LE(at)).toBe(0x02014b50);
    const [length, extra, comment] = [28, 30, 32].map((k) => b.readUInt16LE(at + k)) as [number, number, number];
    const local = b.readUInt32LE(at + 42);
    expect(b.readUInt32LE(local)).toBe(0x04034b50);
    const begin = local + 30 + b.readUInt16LE(local + 26) + b.readUInt16LE(local + 28);
    const packed = b.subarray(begin, begin + b.readUInt32LE(at + 20));
    const plain = b.readUInt16LE(at + 10) === 8 ? inflateRawSync(packed) : packed;
    expect(crc32(plain)).toBe(b.readUInt32LE(at + 16));
    // Bit 11: the name is in UTF-8.
    const isUtf8 = (b.readUInt16LE(at + 8) & 0x800) !== 0;
    const name = b.subarray(at + 46, at + 46 + length).toString(isUtf8 ? 'utf8' : 'latin1');
    const day = [b.readUInt16LE(at + 12), b.readUInt16LE(at + 14)];
    at += 46 + length + extra + comment;
    return { name, text: plain.toString('utf8'), day };
  });
};

const zone = process.env.TZ;
afterEach(() => {
  if (zone === undefined) delete process.env.TZ;
  else process.env.TZ = zone;
});

it('packs files whole under their names, in the same bytes wherever and whenever it is done', () => {
  const bytes = zipOf(files);
  // 1 January 1980, midnight: year 0, month 1, day 1.
  expect(readZip(bytes)).toEqual(files.map((file) => ({ ...file, day: [0, (1 << 5) | 1] })));
  for (const there of ['Pacific/Auckland', 'America/Los_Angeles']) {
    process.env.TZ = there;
    expect(zipOf(files)).toEqual(bytes);
  }
});
