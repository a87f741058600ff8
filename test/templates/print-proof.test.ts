import { describe, expect, it } from 'vitest';
import { sayWith } from '../../geometry/layout.ts';
import { showLine } from '../../geometry/marks.ts';
import { type Correction, quarterTurnedCorrection, uncorrected } from '../../templates/correction.ts';
import { onPaper, papers } from '../../templates/paper.ts';
import { toPdf } from '../../templates/pdf.ts';
import { type BarReading, type PrintReading, provedPrinter, provePrint } from '../../templates/print-proof.ts';
import { laySheets } from '../../templates/sheets.ts';
import { newShop, readShop, type Shop, writeShop } from '../../templates/shop/index.ts';
import { withPrinter } from '../../templates/shop/printers.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { fonts } from '../fonts.ts';
import { readPdf } from '../read-pdf.ts';
import { seeded } from '../seeded.ts';
import { workedExample } from '../solved.ts';

const reading = (across: number, down: number, more: Partial<PrintReading> = {}): PrintReading => ({
  paper: papers.a4,
  lies: 'upright',
  printed: uncorrected,
  readings: [
    { along: 'across', bar: 100, reads: 100 * across },
    { along: 'down', bar: 100, reads: 100 * down },
  ],
  ...more,
});

const correctionOf = (asked: PrintReading): Correction => {
  const proof = provePrint(asked);
  if (proof.kind !== 'corrected') throw new Error(proof.says);
  return proof.correction;
};

const proved = (correction: Correction, shop: Shop = newShop()): Shop =>
  withPrinter(shop, { id: 'attic', name: 'Attic', ...correction, date: '2026-01-02', readings: [] });

describe('a print that was measured', () => {
  it('is true within 0.1 %', () => {
    expect(provePrint(reading(1.0009, 0.9991))).toMatchObject({
      kind: 'true',
      says: expect.stringContaining('100.09 %'),
    });
    expect(provePrint(reading(1.0011, 1)).kind).toBe('corrected');
  });

  it.each([
    // An A4 page between margins of 1/6 in and 1/4 in: (210 − 2 × 4.233)/210 and (210 − 2 × 6.35)/210.
    [0.9597, 'a4', 'between the printer’s margins'],
    [0.9395, 'a4', 'between the printer’s margins'],
    // Letter between margins of 1/4 in: 8/8.5.
    [8 / 8.5, 'letter', 'between the printer’s margins'],
    // ISO 216 and ANSI/ASME Y14.1: A4 on Letter is held by its height, 279.4/297; Letter on A4 by its width, 210/215.9; A3 on A4 is 1/√2.
    [279.4 / 297, 'a4', 'fit Letter'],
    [210 / 215.9, 'letter', 'fit A4'],
    [Math.SQRT1_2, 'a3', 'fit A4'],
    [Math.SQRT2, 'a4', 'fit A3'],
  ] as const)('that came out at %f of %s both ways was fitted, which is said', (share, paper, words) => {
    const proof = provePrint(reading(share, share + 0.0005, { paper: papers[paper] }));
    expect(proof).toMatchObject({ kind: 'fitted', says: expect.stringContaining(words) });
    expect(proof.says).toContain('print again at 100 %');
  });

  it('is refused where it is off by more than 3 %, with the value and the way out', () => {
    for (const [across, down] of [
      [1.031, 1],
      [1, 0.969],
      [0.5, 1],
    ] as const) {
      const proof = provePrint(reading(across, down));
      expect(proof.kind).toBe('refused');
      expect(proof.says).toContain(`${(100 * (across === 1 ? down : across)).toFixed(2)} %`);
      expect(proof.says).toMatch(/97\.00 % to 103\.00 % .*print again at 100 %/);
    }
    // A correction does not grow beyond it in two steps either.
    const twice = provePrint(reading(0.98, 0.999, { printed: { across: 1.02, down: 1 } }));
    expect(twice).toMatchObject({ kind: 'refused', says: expect.stringContaining('96.08 %') });
  });

  it('is refused where what was typed cannot be or does not agree', () => {
    expect(provePrint(reading(0, 1)).says).toContain('cannot read 0.00 mm');
    expect(provePrint(reading(Number.NaN, 1)).kind).toBe('refused');
    const [across, down] = reading(0.985, 1).readings as [BarReading, BarReading];
    expect(provePrint(reading(1, 1, { readings: [across] })).says).toContain('No bar down the page');
    const odd = { along: 'across', bar: 200, reads: 199.4 } as const;
    expect(provePrint(reading(1, 1, { readings: [across, odd, down] })).says).toContain('do not agree');
  });

  it('that lies on its side is corrected as the sheet is fed: what runs across it runs down the sheet', () => {
    const upright = correctionOf(reading(0.985, 1.01));
    expect(upright).toEqual({ across: 1 / 0.985, down: 1 / 1.01 });
    expect(correctionOf(reading(1.01, 0.985, { lies: 'lying' }))).toEqual(upright);
    // In words it is told for the page as it was measured: 1/1.01 and 1/0.985.
    expect(provePrint(reading(1.01, 0.985, { lies: 'lying' })).says).toContain(
      'across ×0.9901, down ×1.0152 on a page lying',
    );
    expect(provePrint(reading(0.985, 1.01)).says).toContain('across ×1.0152, down ×0.9901 on a page upright');
  });

  it('is not corrected twice by the very same readings, on whichever side the page lies', () => {
    const first = reading(0.99, 1);
    const printed = correctionOf(first);
    const { readings: last } = provedPrinter(first, printed, { id: 'attic', name: 'Attic', date: '2026-01-02' });
    for (const again of [reading(0.99, 1, { printed, last }), reading(1, 0.99, { lies: 'lying', printed, last })])
      expect(provePrint(again)).toMatchObject({ kind: 'refused', says: expect.stringMatching(/very readings.*anew/) });
    // The page of last time, told as it is, and another print are measured as ever.
    expect(correctionOf(reading(0.99, 1, { last }))).toEqual(printed);
    expect(correctionOf(reading(0.995, 1, { printed, last })).across).toBeCloseTo(1 / 0.99 / 0.995, 12);
    expect(provePrint(reading(1, 1, { printed, last })).kind).toBe('true');
  });

  // The longest far bar of an A4 page standing upright is 150 mm across and 200 mm down.
  it.each([
    // A caliper on printed lines [practice], and a hasty reading with a rule.
    [0.04, 0.05],
    [0.2, 0.21],
  ])(
    'by a printer of 0.985 and 1.01, skewed by 0.2 mm and read within %f mm, is right within %f mm over 150 mm after two rounds',
    (noise, within) => {
      const printer = { across: 0.985, down: 1.01 };
      for (let seed = 1; seed <= 200; seed++) {
        const { even } = seeded(seed);
        let correction = uncorrected;
        for (let round = 0; round < 2; round++) {
          const read = (along: keyof Correction, bar: number): BarReading => {
            // The page is sheared: a bar's far end is 0.2 mm aside over the page's 297 mm.
            const length = Math.hypot(printer[along] * correction[along] * bar, (0.2 / 297) * bar);
            return { along, bar, reads: length + even(-noise, noise) };
          };
          const readings = [read('across', 150), read('down', 200)];
          const proof = provePrint(reading(1, 1, { printed: correction, readings }));
          expect(['corrected', 'true']).toContain(proof.kind);
          if (proof.kind === 'corrected') correction = proof.correction;
        }
        for (const along of ['across', 'down'] as const)
          expect(Math.abs(printer[along] * correction[along] - 1) * 150).toBeLessThan(within);
      }
    },
  );
});

describe('a sheet for a printer that was proved', () => {
  const job = workedExample();
  const correction = { across: 1 / 0.985, down: 1 / 1.01 };
  // One piece only fits the sheet standing upright, the other only the sheet on its side.
  const tall = { id: 'tall', title: 'Tall', marks: [showLine('line', { x: 0, y: 0 }, { x: 0, y: 170 })] };
  const wide = {
    id: 'wide',
    title: 'Wide',
    marks: [showLine('line', { x: 0, y: 0 }, { x: 230, y: 0 }), showLine('deep', { x: 0, y: 0 }, { x: 0, y: 75 })],
  };

  it('is stretched exactly, each way as the sheet is fed, inside the margins, and says so', async () => {
    for (const [one, lying] of [
      [[tall], false],
      [[wide], true],
    ] as const) {
      const sheets = laySheets(one, proved(correction), sheetInfo(job, '1'), sayWith(job.show));
      const sheet = sheets[0];
      if (!sheet || sheets.length > 1) throw new Error('not one sheet');
      expect(sheet.width > sheet.height).toBe(lying);
      const { pages } = await readPdf(await toPdf(sheets, { title: 'x', date: new Date(0), fonts }));
      const paths = pages[0]?.paths ?? [];
      const onPage = lying ? quarterTurnedCorrection(correction) : correction;
      // Each straight stroke of the sheet, in its order, and what a PDF reader finds of it.
      const lengths = (across: boolean) =>
        paths.flatMap(({ segments: [s], segments }) => {
          if (segments.length !== 1 || s?.kind !== 'line') return [];
          const [dx, dy] = [Math.abs(s.to.x - s.from.x), Math.abs(s.to.y - s.from.y)];
          return across && dy < 1e-6 ? [dx] : !across && dx < 1e-6 ? [dy] : [];
        });
      for (const bar of [100, 101.6, 150]) {
        expect(Math.min(...lengths(true).map((l) => Math.abs(l - bar * onPage.across)))).toBeLessThan(1e-4);
        expect(Math.min(...lengths(false).map((l) => Math.abs(l - bar * onPage.down)))).toBeLessThan(1e-4);
      }
      const ends = paths.flatMap(({ segments }) => segments.flatMap((s) => (s.kind === 'arc' ? [] : [s.from, s.to])));
      for (const { x, y } of ends) {
        expect(Math.min(x, sheet.width - x, y, sheet.height - y)).toBeGreaterThan(newShop().paper.margin - 0.001);
      }
      const words = sheet.primitives.flatMap((p) => (p.kind === 'text' ? [p.text] : []));
      const said = lying ? 'across ×0.9901, down ×1.0152' : 'across ×1.0152, down ×0.9901';
      expect(words).toContain(`corrected for Attic: ${said}`);
    }
  });

  it('says that it is not proved till its bars were measured, and is left as it is', () => {
    const said = (date: string) => {
      const shop = withPrinter(newShop(), { id: 'a', name: 'Attic', ...uncorrected, date, readings: [] });
      const [sheet] = laySheets([tall], shop, sheetInfo(job, '1'), sayWith(job.show));
      return sheet?.primitives.flatMap((p) => (p.kind === 'text' && p.id === 'title.print' ? [p.text] : []));
    };
    expect(said('')).toEqual(['for Attic: not proved, not corrected']);
    expect(said('2026-01-02')).toEqual(['corrected for Attic: across ×1.0000, down ×1.0000']);
  });

  it('says its correction whole, however long the printer’s name', () => {
    const shop = withPrinter(newShop(), { id: 'a', name: 'm'.repeat(40), ...correction, date: '', readings: [] });
    const [sheet] = laySheets([tall], shop, sheetInfo(job, '1'), sayWith(job.show));
    const words = sheet?.primitives.flatMap((p) => (p.kind === 'text' && p.id === 'title.print' ? [p.text] : []));
    expect(words).toEqual([expect.stringMatching(/^corrected for m+…: across ×1\.0152, down ×0\.9901$/)]);
  });

  it('belongs to the shop: kept in its file, and left out where no printer is chosen', () => {
    const shop = proved(correction, onPaper(newShop(), 'letter'));
    expect(readShop(writeShop(shop))).toEqual({ ok: true, shop, unknown: [] });
    // Measured on a page that lies on its side: across it is down the sheet.
    const measured = reading(1.01, 0.985, { lies: 'lying' });
    const kept = provedPrinter(measured, correction, { id: 'attic', name: 'Attic', date: '2026-01-02' });
    expect(kept.readings.map(({ along, reads }) => [along, reads])).toEqual([
      ['down', 101],
      ['across', 98.5],
    ]);
    const known = withPrinter(shop, kept);
    expect(readShop(writeShop(known))).toEqual({ ok: true, shop: known, unknown: [] });
    const again = proved({ across: 1, down: 1 }, shop);
    expect(again.printers.list).toHaveLength(1);
    const none = { ...shop, printers: { ...shop.printers, chosen: '' } };
    const [sheet] = laySheets([tall], none, sheetInfo(job, '1'), sayWith(job.show));
    expect(sheet?.correction).toBeUndefined();
    const off = readShop(
      JSON.stringify({ ...shop, printers: { chosen: 'a', list: [{ id: 'a', name: 'A', across: 1.2 }] } }),
    );
    expect(off.ok ? '' : off.problems[0]?.says).toMatch(/Correction across .*printers\.list\.a\.across/);
  });
});
