import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { jobJsonSchema, readJob } from '../../geometry/job-file.ts';
import { report } from '../../geometry/report.ts';
import { readOptions } from '../../src/command/options.ts';
import { run } from '../../src/command/run.ts';
import { starters } from '../../src/jobs/index.ts';
import { type PaperId, papers } from '../../templates/paper.ts';
import { copiesOf, drawPiece, pieces, piecesOf } from '../../templates/pieces/index.ts';
import { newShop, readShop } from '../../templates/shop/index.ts';
import { drawnPieces } from '../drawn.ts';
import { type PdfFile, readPdf } from '../read-pdf.ts';
import { readSvg } from '../read-svg.ts';
import { built } from '../solved.ts';

// Each run draws and writes everything.
vi.setConfig({ testTimeout: 60_000 });

const root = fileURLToPath(new URL('../..', import.meta.url));
const workedExample = fileURLToPath(new URL('../jobs/worked-example.json', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'sagitta-draft-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let runs = 0;
const withOut = (args: readonly string[]) => {
  const out = join(folder, `out${runs++}`);
  return { out, all: args.includes('--out') ? args : [...args, '--out', out] };
};

/** The command within this process, with an output folder of its own unless the arguments name one. */
const draft = async (...args: readonly string[]) => {
  const { out, all } = withOut(args);
  const heard = { stdout: '', stderr: '' };
  const status = await run(all, {
    say: (text) => {
      heard.stdout += text;
    },
    complain: (text) => {
      heard.stderr += text;
    },
    standing: root,
  });
  return { status, ...heard, out };
};

/** The command as a process of its own, as a person starts it. */
const draftProcess = (...args: readonly string[]) => {
  const { out, all } = withOut(args);
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    ['--import', 'tsx', join(root, 'src/command/draft.ts'), ...all],
    { cwd: root, encoding: 'utf8', env: { ...process.env, npm_lifecycle_event: '' } },
  );
  return { status, stdout, stderr, out };
};

const jobFile = (name: string, change: (job: Record<string, Record<string, unknown>>) => void) => {
  const job = JSON.parse(readFileSync(workedExample, 'utf8'));
  change(job);
  const file = join(folder, name);
  writeFileSync(file, JSON.stringify(job));
  return file;
};

const listed = (out: string) =>
  (
    readdirSync(out, { recursive: true, withFileTypes: true }) as {
      isFile(): boolean;
      name: string;
      parentPath: string;
    }[]
  )
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(out.length + 1))
    .sort();

const svgBars = (text: string) => {
  const svg = readSvg(text);
  return ['check.x100', 'check.x4in', 'check.y100', 'check.y4in'].map((id) => {
    const segments = svg.elements.find((e) => e.id === id)?.paths.flatMap((p) => p.segments) ?? [];
    const [line] = segments;
    if (segments.length !== 1 || line?.kind !== 'line') throw new Error(`${id} is not one straight line`);
    const dx = ((line.to.x - line.from.x) * svg.widthMm) / svg.viewBox.width;
    const dy = ((line.to.y - line.from.y) * svg.heightMm) / svg.viewBox.height;
    return id.startsWith('check.x') ? { along: Math.abs(dx), aside: dy } : { along: Math.abs(dy), aside: dx };
  });
};

/** The straight line whose middle is nearest to that of the check bar's label, as a person finds it on the print. */
const pdfBars = (page: PdfFile['pages'][number]) =>
  [0, -90].flatMap((turn) =>
    ['100 mm', '4 in'].map((says) => {
      const label = page.texts.find((text) => text.text === says && Math.abs(text.turn - turn) < 1);
      if (!label) throw new Error(`no label ${says} turned ${turn}`);
      const middle =
        turn === 0 ? { x: label.x + label.widthMm / 2, y: label.y } : { x: label.x, y: label.y - label.widthMm / 2 };
      const lines = page.paths.flatMap(({ segments: [line, ...rest] }) => {
        if (line?.kind !== 'line' || rest.length > 0) return [];
        const dx = line.to.x - line.from.x;
        const dy = line.to.y - line.from.y;
        const away = Math.hypot(line.from.x + dx / 2 - middle.x, line.from.y + dy / 2 - middle.y);
        return [turn === 0 ? { along: Math.abs(dx), aside: dy, away } : { along: Math.abs(dy), aside: dx, away }];
      });
      return lines.reduce((best, line) => (line.away < best.away ? line : best));
    }),
  );

/** 4 in = 101.6 mm: international yard and pound agreement, 1959. Each within a hundredth of a millimetre. */
const expectTrue = (bars: readonly { readonly along: number; readonly aside: number }[]) => {
  expect(bars).toHaveLength(4);
  bars.forEach(({ along, aside }, i) => {
    expect(Math.abs(along - (i % 2 === 0 ? 100 : 101.6))).toBeLessThan(0.01);
    expect(Math.abs(aside)).toBeLessThan(0.01);
  });
};

const jobs: readonly (readonly [name: string, args: readonly string[], text: string, paper: PaperId])[] = [
  ['the demo, without a word', [], starters[0]?.text ?? '', 'a4'],
  // Every starter’s templates are measured in test/outside.
  ...(
    [
      ['plover', 'letter'],
      ['starling', 'a3'],
      ['siskin', 'tabloid'],
    ] as const
  ).map(([id, paper]) => {
    const text = starters.find((starter) => starter.id === id)?.text ?? '';
    return [`the starter ${id} on ${paper}`, ['--starter', id, '--paper', paper], text, paper] as const;
  }),
  ['the worked example', [workedExample], readFileSync(workedExample, 'utf8'), 'a4'],
];

describe('the draft command', () => {
  it.each(jobs)(
    'drafts %s: check bars true in every file, every number in the report',
    async (_, args, text, paper) => {
      const { status, stdout, stderr, out } = await draft(...args);
      expect(stderr).toBe('');
      expect(status).toBe(0);
      const read = readJob(text);
      if (!read.ok) throw new Error('the job is refused');
      const { job, design } = built(read.job);
      const names = [
        'drawing.svg',
        ...drawnPieces(job, design)
          .filter(({ ownPage }) => !ownPage)
          .map(({ id }) => `pieces/${id}.svg`),
        'report.json',
        'templates.pdf',
      ].sort();
      expect(listed(out)).toEqual(names);
      for (const name of names) expect(stdout).toContain(name);

      for (const name of names.filter((n) => n.endsWith('.svg')))
        expectTrue(svgBars(readFileSync(join(out, name), 'utf8')));

      const pdf = await readPdf(new Uint8Array(readFileSync(join(out, 'templates.pdf'))));
      expect(pdf.printScaling).toBe('None');
      const sides = [papers[paper].width, papers[paper].height].sort((a, b) => a - b);
      for (const page of pdf.pages) {
        expectTrue(pdfBars(page));
        const seen = [page.widthMm, page.heightMm].sort((a, b) => a - b);
        seen.forEach((side, i) => {
          expect(side).toBeCloseTo(sides[i] ?? Number.NaN, 3);
        });
      }
      for (const piece of piecesOf(job).filter((one) => copiesOf(one, newShop()) > 0))
        expect(pdf.outline.join()).toContain(piece.title);

      const wanted = JSON.parse(JSON.stringify(report(job, design)));
      expect(JSON.parse(readFileSync(join(out, 'report.json'), 'utf8'))).toEqual(wanted);
    },
  );

  it('gives the same bytes for the same job', async () => {
    const [a, b] = [draftProcess('--starter', 'wren'), await draft('--starter', 'wren')];
    const names = listed(a.out);
    expect(names.length).toBeGreaterThan(3);
    expect(listed(b.out)).toEqual(names);
    for (const name of names)
      expect(readFileSync(join(b.out, name)).equals(readFileSync(join(a.out, name)))).toBe(true);
  });

  it('replaces files that are there, leaves others alone and nothing half-written beside them', async () => {
    const first = await draft(workedExample);
    writeFileSync(join(first.out, 'report.json'), 'old');
    writeFileSync(join(first.out, 'mine.txt'), 'mine');
    const before = listed(first.out);
    const again = await draft(workedExample, '--out', first.out);
    expect(again.status).toBe(0);
    expect(JSON.parse(readFileSync(join(first.out, 'report.json'), 'utf8')).format).toBe('sagitta-report');
    expect(readFileSync(join(first.out, 'mine.txt'), 'utf8')).toBe('mine');
    expect(listed(first.out)).toEqual(before);
  });

  it('keeps keys that it does not know, and says so', async () => {
    const file = jobFile('unknown.json', (job) => {
      job.workshop = { bench: 3 };
      Object.assign(job.bridge ?? {}, { grain: 'straight' });
    });
    const { status, stderr } = await draft(file);
    expect(status).toBe(0);
    expect(stderr).toContain('workshop');
    expect(stderr).toContain('bridge.grain');
  });
});

describe('a job that cannot be drafted', () => {
  const bad: readonly (readonly [name: string, file: () => string, says: readonly (string | RegExp)[]])[] = [
    [
      'out of range and of the wrong kind',
      () =>
        jobFile('range.json', (job) => {
          Object.assign(job.bridge ?? {}, { thickness: 400 });
          Object.assign(job.slot ?? {}, { width: 'wide' });
        }),
      [/bridge\.thickness.*400 mm.*from 2 to 30 mm/, /slot\.width.*wide.*from 1 to 12 mm/],
    ],
    [
      'readable but not to be built',
      () => jobFile('build.json', (job) => Object.assign(job.slot ?? {}, { length: 160 })),
      [/slot\.length = 160: .*160\.0 mm/],
    ],
    [
      'with words that would turn or act on a terminal',
      () =>
        jobFile('turned.json', (job) => {
          Object.assign(job.bridge ?? {}, { thickness: '\u202e9 mm\u009b2J' });
          Object.assign(job, { '\u001b[2J': 1 });
        }),
      [/^(?:[^\p{Cc}\u202e]|\n)*$/u, /bridge\.thickness = "9 mm2J"/],
    ],
    ['no JSON', () => write('broken.json', '{"format": '), [/not JSON/]],
    ['empty', () => write('empty.json', ''), [/empty/]],
    ['of another program', () => write('other.json', '{"format":"other"}'), [/no Sagitta job/]],
    ['of a newer version', () => jobFile('newer.json', (job) => Object.assign(job, { version: 99 })), [/newer/]],
    ['not there', () => join(folder, 'nowhere.json'), [/nowhere\.json cannot be read: there is no such file/]],
    ['a folder', () => folder, [/cannot be read: a folder/]],
  ];
  const write = (name: string, text: string) => {
    const file = join(folder, name);
    writeFileSync(file, text);
    return file;
  };

  it.each(bad)('%s: ends with 1, says why, writes nothing', async (_, file, says) => {
    const { status, stdout, stderr, out } = await draft(file());
    expect(status).toBe(1);
    expect(stdout).toBe('');
    for (const words of says) expect(stderr).toMatch(words);
    expect(existsSync(out)).toBe(false);
  });

  it('too big for the paper: parts it over pages that join', async () => {
    const file = jobFile('long.json', (job) => Object.assign(job.bridge ?? {}, { length: 255 }));
    const { status, stderr, out } = await draft(file, '--paper', 'letter');
    expect(stderr).toBe('');
    expect(status).toBe(0);
    const { outline } = await readPdf(new Uint8Array(readFileSync(join(out, 'templates.pdf'))));
    expect(outline).toEqual(expect.arrayContaining(['Footprint, slot and pins A1', 'Footprint, slot and pins A2']));
  });

  it('into a place that is a file, or whose file is a folder: says so and changes nothing', async () => {
    const taken = write('taken', 'mine');
    const at = await draft('--out', taken);
    expect(at.status).toBe(1);
    expect(at.stderr).toMatch(/taken cannot be written: a file stands where a folder is needed/);
    expect(readFileSync(taken, 'utf8')).toBe('mine');
    const blocked = join(folder, 'blocked');
    mkdirSync(join(blocked, 'report.json'), { recursive: true });
    const over = await draft('--out', blocked);
    expect(over.status).toBe(1);
    expect(over.stderr).toMatch(/a folder stands where a file is needed/);
    expect(listed(blocked)).toEqual([]);
  });
});

describe('a shop of its own', () => {
  const printer = { id: 'desk', name: 'By the door', across: 1.01, down: 0.99, date: '2024-02-29', readings: [] };
  const settings = (name: string, more: object) => {
    const file = join(folder, name);
    writeFileSync(file, JSON.stringify({ format: 'sagitta-shop', version: 1, ...more }));
    return file;
  };
  const shop = () =>
    settings('shop.json', {
      copies: { caul: 3 },
      paper: { size: 'a3' },
      printers: { chosen: '', list: [printer] },
      cutter: { files: 'each', tool: 1 },
      bench: 'oak',
    });
  const titlesOf = (pdf: PdfFile) => pdf.outline.toSorted();

  it('prints the pieces asked for on the paper asked for, corrected, in a font of its own, and cuts them', async () => {
    const file = jobFile('named.json', (job) => Object.assign(job, { name: 'Bridge ⤀ 木' }));
    // DejaVu Serif has this arrow, DejaVu Sans has not.
    const font = join(root, 'node_modules/dejavu-fonts-ttf/ttf/DejaVuSerif.ttf');
    const asked = ['--settings', shop(), '--pieces', 'saddle,footprint:2', '--paper', '12x18in', '--cut'];
    const { status, stderr, out } = await draft(file, ...asked, '--printer', 'by the door', '--font', font);
    expect(stderr).toMatch(/not known to Sagitta: bench\.\n/);
    expect(stderr).toMatch(/nor in yours.*: 木 as \[U\+6728\]\. Name a font/);
    expect(stderr).not.toContain('⤀');
    expect(status).toBe(0);
    expect(listed(out)).toEqual([
      'cut/footprint.cut.svg',
      'cut/footprint.drill.svg',
      'cut/footprint.show.svg',
      'cut/saddle.cut.svg',
      'cut/saddle.show.svg',
      'drawing.svg',
      'pieces/footprint.svg',
      'pieces/saddle.svg',
      'report.json',
      'templates.pdf',
    ]);
    const pdf = await readPdf(new Uint8Array(readFileSync(join(out, 'templates.pdf'))));
    const title = 'Footprint, slot and pins';
    expect(titlesOf(pdf)).toEqual([title, title, 'Saddle, front face']);
    const [page] = pdf.pages;
    if (!page) throw new Error('no page');
    expect([page.widthMm, page.heightMm].toSorted((a, b) => a - b)).toEqual([
      expect.closeTo(304.8, 3),
      expect.closeTo(457.2, 3),
    ]);
    const words = page.texts.map(({ text }) => text).join(' ');
    expect(words).toContain('corrected for By the door');
    expect(words).toContain('⤀');
    // 100 mm are printed as 101 across an upright sheet and as 99 down it.
    const bars = pdfBars(page).map(({ along }) => along);
    const [wide, high] = page.widthMm < page.heightMm ? [1.01, 0.99] : [0.99, 1.01];
    [100 * wide, 101.6 * wide, 100 * high, 101.6 * high].forEach((length, i) => {
      expect(bars[i]).toBeCloseTo(length, 2);
    });
  });

  it('makes everything of a job, and keeps the settings that it was made with', async () => {
    const { status, stderr, out } = await draft(
      '--starter',
      'siskin',
      '--settings',
      shop(),
      '--all',
      '--printer',
      'desk',
    );
    expect(stderr).toMatch(/bench/);
    expect(status).toBe(0);
    const read = readShop(readFileSync(join(out, 'settings.json'), 'utf8'));
    if (!read.ok) throw new Error('the settings are refused');
    expect(read.shop).toMatchObject({ paper: { size: 'a3' }, printers: { chosen: 'desk' }, bench: 'oak' });
    const job = readJob(starters.find(({ id }) => id === 'siskin')?.text ?? '');
    if (!job.ok) throw new Error('the job is refused');
    const { job: settled, design } = built(job.job);
    const all = piecesOf(settled).flatMap((piece) => drawPiece(piece, settled, design, read.shop));
    const pdf = await readPdf(new Uint8Array(readFileSync(join(out, 'templates.pdf'))));
    // What is larger than the paper has a page for each part.
    const whole = new Set(titlesOf(pdf).map((title) => title.replace(/ [A-Z]\d$/, '')));
    expect([...whole].toSorted()).toEqual(all.map(({ title }) => title).toSorted());
    expect(listed(out)).toEqual(expect.arrayContaining(['cut/saddle.cut.svg', 'drawing.svg', 'report.json']));
  });

  const refusedWith: readonly (readonly [name: string, args: () => readonly string[], status: 1 | 2, says: RegExp])[] =
    [
      [
        'a printer that it has not',
        () => ['--settings', shop(), '--printer', 'attic'],
        2,
        /“attic”.*“By the door” \(desk\), or none/,
      ],
      [
        'settings out of range',
        () => ['--settings', settings('bad.json', { paper: { margin: 90 } })],
        1,
        /settings cannot be read[\s\S]*paper\.margin.*90.*30 mm/,
      ],
      ['settings that are none', () => ['--settings', workedExample], 1, /no settings/],
      [
        'settings that are not there',
        () => ['--settings', 'nowhere.json'],
        1,
        /nowhere\.json cannot be read: there is no such/,
      ],
      [
        'a font that is none',
        () => ['--font', workedExample],
        1,
        /worked-example\.json cannot be read: it is no font.*TrueType/,
      ],
      ['a font that is not there', () => ['--font', 'nowhere.ttf'], 1, /nowhere\.ttf cannot be read: there is no such/],
      [
        'a piece that the job has not',
        () => ['--starter', 'siskin', '--pieces', 'caul'],
        1,
        /no caul\. The work is on the saddle alone.*\n.*--pieces/,
      ],
      [
        'no copies at all',
        () => ['--settings', settings('none.json', { copies: Object.fromEntries(pieces.map(({ id }) => [id, 0])) })],
        1,
        /copies.*--pieces/,
      ],
      [
        'a tool too wide',
        () => ['--settings', settings('wide.json', { cutter: { tool: 6 } }), '--cut', '--pieces', 'footprint'],
        1,
        /In “Footprint.*a tool of 6.*\n[\s\S]*--pieces/,
      ],
    ];

  it.each(refusedWith)('%s: says why, writes nothing', async (_, args, code, says) => {
    const { status, stdout, stderr, out } = await draft(...args());
    expect(stderr).toMatch(says);
    expect(status).toBe(code);
    expect(stdout).toBe('');
    expect(existsSync(out)).toBe(false);
  });
});

describe('what it is asked', () => {
  it.each([
    [['--frob'], /--frob/],
    [['--paper', 'b5'], /b5.*a4, letter, a3, tabloid.*300x400mm/],
    [['--paper', '300x400'], /“300x400” has no unit.*300x400mm/],
    [['--paper', '30x400mm'], /Paper width .*30 mm.*100.* 2000 mm/],
    [['--paper', '12x180in'], /Paper height .*4572 mm.*2000 mm/],
    [['--paper', '1..2x3in'], /1\.\.2.*decimal/],
    [['--pieces', 'footprint,brigde'], /“brigde”.*footprint, finish-mask/],
    [['--pieces', 'footprint:0'], /footprint.*“0”.*1 to 99/],
    [['--pieces', 'footprint:2.5'], /“2\.5”.*whole number/],
    [['--pieces', 'saddle,saddle:2'], /saddle is named twice/],
    [['--pieces', ''], /There is no piece/],
    [['--all', '--pieces', 'saddle'], /not both/],
    [['--printer', 'desk'], /desk.*--settings/],
    [['--printer', ' '], /without a name/],
    [['--font', ''], /without a name/],
    [['--starter', 'nix'], /nix.*heron/],
    [['a.json', 'b.json'], /One job at a time/],
    [['a.json', '--starter', 'heron'], /not both/],
    [['--out'], /--out/],
    [['--out', ''], /without a name/],
  ] as const)('%j is wrong', (args, says) => {
    expect(readOptions(args)).toEqual({ kind: 'wrong', says: expect.stringMatching(says) });
  });

  it.each([
    ['A3', { size: 'a3' }],
    ['300x400mm', { size: 'typed', width: 300, height: 400 }],
    // The inch is 25.4 mm exactly (international yard and pound agreement, 1959).
    ['18 × 12 in', { size: 'typed', width: 304.8, height: 457.2 }],
    ['8 1/2"x14in', { size: 'typed', width: 215.9, height: 355.6 }],
    ['29,7cmx420mm', { size: 'typed', width: 297, height: 420 }],
  ])('takes the paper %s', (typed, paper) => {
    expect(readOptions(['--paper', typed])).toMatchObject({ kind: 'draft', paper: { ...paper } });
  });

  it('what is wrong ends with 2 and a hint at --help', async () => {
    const { status, stdout, stderr, out } = draftProcess('--frob');
    expect(status).toBe(2);
    expect(stdout).toBe('');
    expect(stderr).toMatch(/--frob[\s\S]*--help/);
    expect(existsSync(out)).toBe(false);
  });

  it('--help tells of every option and starter, --schema prints the schema', async () => {
    const help = await draft('--help');
    expect(help.status).toBe(0);
    const options = ['out', 'paper', 'starter', 'pieces', 'cut', 'all', 'settings', 'printer', 'font', 'schema'];
    for (const word of [
      ...[...options, 'settings-schema', 'help'].map((option) => `--${option} `),
      ...[...starters, ...pieces].map(({ id }) => ` ${id} `),
    ])
      expect(help.stdout).toContain(word);
    const schema = await draft('--schema');
    expect(schema.status).toBe(0);
    expect(JSON.parse(schema.stdout)).toEqual(JSON.parse(JSON.stringify(jobJsonSchema())));
    const ofSettings = await draft('--settings-schema');
    expect(ofSettings.status).toBe(0);
    expect(JSON.parse(ofSettings.stdout)).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      properties: { paper: { properties: { margin: { minimum: 3, maximum: 30, default: 10, title: 'Margin' } } } },
    });
    for (const { out } of [help, schema, ofSettings]) expect(existsSync(out)).toBe(false);
  });
});
