import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { run } from '../../src/command/run.ts';
import { readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';

// Each run draws and writes everything.
vi.setConfig({ testTimeout: 120_000 });

const folder = mkdtempSync(join(tmpdir(), 'sagitta-decimal-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let runs = 0;
const draft = async (...args: readonly string[]) => {
  const out = join(folder, `out${runs++}`);
  let complaint = '';
  const complain = (text: string) => {
    complaint += text;
  };
  const status = await run([...args, '--out', out], { say: () => {}, complain, standing: folder });
  return { status, complaint, out };
};

/** The program's own version is no number. */
const points = (texts: readonly string[]) => texts.filter((text) => /\d\.\d/.test(text.replace(/Sagitta [\d.]+/, '')));
const commas = (texts: readonly string[]) => texts.filter((text) => /\d,\d/.test(text));

describe('--decimal comma', () => {
  // The demo, and a starter in inches.
  it.each(['heron', 'plover'])('writes %s’s numbers with a comma, and what machines read as it was', async (id) => {
    const [point, comma] = [
      await draft('--starter', id, '--all'),
      await draft('--starter', id, '--all', '--decimal', 'comma'),
    ];
    expect([point.status, comma.status]).toEqual([0, 0]);
    const names = (readdirSync(point.out, { recursive: true }) as string[]).filter((name) => name.includes('.')).sort();
    const read = (out: string, name: string) => readFileSync(join(out, name), 'utf8');
    expect(
      (readdirSync(comma.out, { recursive: true }) as string[]).filter((name) => name.includes('.')).sort(),
    ).toEqual(names);

    for (const name of names.filter((one) => one.endsWith('.svg'))) {
      const [before, after] = [readSvg(read(point.out, name)), readSvg(read(comma.out, name))];
      expect([after.widthMm, after.heightMm, after.viewBox]).toEqual([before.widthMm, before.heightMm, before.viewBox]);
      // Letters that are drawn are other letters.
      const cut = (file: typeof before) =>
        file.elements.filter(({ tag, purpose }) => tag !== 'text' && (!name.startsWith('cut/') || purpose !== 'show'));
      expect(cut(after)).toEqual(cut(before));
      const texts = after.elements.filter(({ tag }) => tag === 'text').map(({ text }) => text);
      expect(points(texts)).toEqual([]);
      const was = before.elements.filter(({ tag }) => tag === 'text').map(({ text }) => text);
      expect(commas(texts)).toHaveLength(points(was).length);
    }
    for (const name of ['report.json', 'settings.json']) expect(read(comma.out, name)).toBe(read(point.out, name));

    const pdf = async (out: string) => readPdf(new Uint8Array(readFileSync(join(out, 'templates.pdf'))));
    const [before, after] = [await pdf(point.out), await pdf(comma.out)];
    expect(after.pages.map(({ paths }) => paths)).toEqual(before.pages.map(({ paths }) => paths));
    const lines = (file: typeof after) => file.pages.flatMap(({ texts }) => texts.map(({ text }) => text));
    expect(points(lines(after))).toEqual([]);
    expect(commas(lines(after)).length).toBeGreaterThan(100);
    const plain = (text: string) => text.replace(/(?<=\d),(?=\d)/g, '.').replaceAll(';', ',');
    expect(lines(after).map(plain)).toEqual(lines(before).map(plain));
  });

  it('says what keeps it from its work with a comma too', async () => {
    const { status, complaint } = await draft('--paper', '100.5x100mm', '--decimal', 'comma');
    expect(status).toBe(1);
    expect(complaint).toMatch(/100,0 × 100,5 mm with a margin of 10,0 mm has no room/);
  });

  it('takes no other mark', async () => {
    const { status, complaint } = await draft('--decimal', 'dot');
    expect(status).toBe(2);
    expect(complaint).toMatch(/The decimal mark is point or comma, not dot\./);
  });
});
