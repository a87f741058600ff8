import { describe, expect, it } from 'vitest';
import { findings } from '../../geometry/checks/findings.ts';
import type { Text } from '../../geometry/drawing.ts';
import { fieldGroups, setAt } from '../../geometry/fields.ts';
import { figures } from '../../geometry/figures/index.ts';
import { boundsOfPrimitives, layOut, sayWith } from '../../geometry/layout.ts';
import { capHeight } from '../../geometry/text.ts';
import { ownRoom } from '../../templates/form.ts';
import { onPaper } from '../../templates/paper.ts';
import { benchTicket } from '../../templates/pieces/bench-ticket.ts';
import { drawPiece } from '../../templates/pieces/index.ts';
import { laySheets } from '../../templates/sheets.ts';
import { newShop, type Shop } from '../../templates/shop/index.ts';
import { sheetInfo } from '../../templates/title-block.ts';
import { built, workedExample } from '../solved.ts';
import { fullJob, oldTop, twelveStrings } from './full-job.ts';

type Asked = ReturnType<typeof fullJob>;

const ticket = (asked: Asked, shop: Shop = newShop()) => {
  const { job, design } = built(asked);
  const say = sayWith(job.show);
  const drawn = drawPiece(benchTicket, job, design, shop);
  const pages = drawn.map(({ marks }) => layOut(marks, { em: 3.5, say }));
  const texts = pages.flatMap((page) => page.filter((p): p is Text => p.kind === 'text'));
  return { job, design, drawn, pages, texts, words: texts.map(({ text }) => text).join(' ') };
};

const jobs: readonly (readonly [string, Asked])[] = [
  ['everything', fullJob()],
  [
    'an old top in inches',
    ['show.length', 'show.radius', 'show.gauge'].reduce((j, path) => setAt(j, path, 'fraction'), oldTop()),
  ],
  ['twelve strings', twelveStrings()],
];

describe.each(jobs)('the bench ticket of %s', (_, asked) => {
  const { job, design, texts, words, pages, drawn } = ticket(asked);

  it('says what the checks say, worst first', () => {
    const found = findings(job, design);
    const places = found.map(({ says }) => {
      // Lines may break anywhere between two words.
      const place = words.indexOf(says);
      expect(place, says).toBeGreaterThanOrEqual(0);
      return place;
    });
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    for (const { level, means, range } of found) {
      if (!range.endsWith(' none')) expect(words).toContain(`(${range}`);
      if (level !== 'right') expect(words).toContain(means);
    }
  });

  it('holds every number of the job and everything that was worked out', () => {
    for (const group of fieldGroups.filter(({ id }) => ['measured', 'action', 'bridge', 'slot', 'saddle'].includes(id)))
      expect(words).toContain(group.title);
    for (const { title, value } of figures)
      if (design.strings.some((_, k) => value(job, design, k) !== undefined)) expect(words, title).toContain(title);
    // Each string's break angle, in degrees to one decimal, rounded here from the design itself.
    const row = texts.map(({ text }) => text).slice(texts.findIndex(({ text }) => text.startsWith('Break angle,')));
    for (const { breakAngle } of design.strings.slice(0, 3)) expect(row).toContain(breakAngle.toFixed(1));
  });

  it('can be read at arm’s length: capitals of 3 mm, no word outside the page’s room', () => {
    for (const { size } of texts) expect(size * capHeight).toBeGreaterThanOrEqual(3);
    const room = ownRoom(newShop());
    for (const page of pages) {
      const { minX, minY, maxX, maxY } = boundsOfPrimitives(page);
      expect(Math.min(minX, minY)).toBeGreaterThanOrEqual(-1e-9);
      expect(maxX).toBeLessThanOrEqual(room.width + 1e-9);
      expect(maxY).toBeLessThanOrEqual(room.height + 1e-9);
    }
  });

  it('fills pages of its own, one to a sheet', () => {
    const sheets = laySheets(drawn, newShop(), sheetInfo(job, '1'), sayWith(job.show));
    expect(sheets.map(({ title }) => title)).toEqual(drawn.map(({ title }) => title));
  });
});

describe('the bench ticket', () => {
  it('has the order of work with boxes to tick and its cautions where they belong', () => {
    const { words, drawn } = ticket(workedExample());
    for (const caution of [
      'Slacken them',
      'protect your eyes',
      'solvents',
      'CITES',
      'respirator',
      'in a clamp',
      'lead',
      'local rules',
      'qualified repairer',
    ])
      expect(words).toContain(caution);
    // 15 steps and more, each with a box of four sides.
    const boxes = drawn.flatMap(({ marks }) => marks.filter(({ id }) => /\.box\.top$/.test(id)));
    expect(boxes.length).toBeGreaterThan(15);
    // The worked example's strings pull 703.95 N together (its table): at 9.80665 m/s² what 72 kg weigh.
    expect(words).toMatch(/pull 70[34]\.\d N together, as much as 72 kg/);
  });

  it('repeats a table’s head where the table goes on over the page', () => {
    const { drawn, design } = ticket(workedExample());
    const tables = drawn.filter(({ marks }) => marks.some(({ id }) => id.includes('.cell.')));
    expect(tables.length).toBeGreaterThan(1);
    for (const { marks } of tables) {
      const heads = marks.flatMap((m) => (m.kind === 'note' && m.id.includes('.head.') ? [m.label.join('')] : []));
      expect(heads).toEqual(expect.arrayContaining(design.strings.map(({ name }) => name)));
    }
  });

  it('for a saddle only has no work on the bridge', () => {
    const { words } = ticket(setAt(workedExample(), 'work', 'saddle'));
    expect(words).not.toContain('Trace the footprint');
    expect(words).not.toContain('CITES');
    expect(words).toContain('shape the crown');
  });

  it('is paged to the paper', () => {
    const pages = (shop: Shop) => ticket(workedExample(), shop).drawn.length;
    const a4 = pages(newShop());
    expect(pages(onPaper(newShop(), 'a3'))).toBeLessThan(a4);
    const small: Shop = {
      ...newShop(),
      paper: { ...newShop().paper, size: 'typed', width: 170, height: 220, margin: 6 },
    };
    expect(pages(small)).toBeGreaterThan(a4);
  });

  it('breaks a word that is wider than the page', () => {
    const { pages } = ticket({ ...workedExample(), name: 'x'.repeat(200) });
    expect(boundsOfPrimitives(pages[0] ?? []).maxX).toBeLessThanOrEqual(ownRoom(newShop()).width);
  });
});
