// Measures what the app asks of the machine against what the platform itself asks: ratios, as times differ from machine to machine.
import { loadavg } from 'node:os';
import { chromium } from 'playwright-core';
import { launchFlags, provideChromium } from '../chromium.ts';
import { runNumbers, servePages } from './builds.ts';
import { stepCosts } from './drag.ts';
import { type Beginning, beginningOf } from './first-drawing.ts';
import { benchPaper } from './paper.ts';
import type { Row } from './row.ts';
import { benchShelf } from './shelf.ts';

const middle = (values: readonly number[]): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] as number;
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const times = (a: number, b: number): string => `${(a / b).toFixed(2)} ×`;

const table = (rows: readonly Row[]): string => {
  const keys = ['what', 'measured', 'against', 'ratio', 'wanted'] as const;
  const all = [{ what: '', measured: 'measured', against: 'against', ratio: 'ratio', wanted: 'wanted' }, ...rows];
  const widths = keys.map((key) => Math.max(...all.map((row) => row[key].length)));
  return all.map((row) => keys.map((key, k) => row[key].padEnd(widths[k] ?? 0)).join('  ')).join('\n');
};

const rows: Row[] = [];

const { clone, solve, build } = await runNumbers();
const us = (value: number) => `${value.toFixed(0)} µs`;
const cloned = `${us(clone)} structuredClone(job)`;
rows.push({ what: 'numbers: solve', measured: us(solve), against: cloned, ratio: times(solve, clone), wanted: '3 ×' });
rows.push({
  what: 'numbers that can be made: build',
  measured: us(build),
  against: cloned,
  ratio: times(build, clone),
  wanted: '',
});

const pages = await servePages();
const browser = await chromium.launch({ executablePath: provideChromium(), args: [...launchFlags] });
try {
  const [ours, theirs]: [Beginning[], Beginning[]] = [[], []];
  // By turns, so that what else the machine does weighs on both alike; the first of each only warms up.
  for (let k = 0; k < 8; k += 1) {
    ours.push(await beginningOf(browser, pages.app, '.drawing path', k === 0));
    theirs.push(await beginningOf(browser, pages.bare, '#app > p', false));
  }
  const [painted, bare] = [ours, theirs].map((all) => middle(all.slice(1).map((one) => one.painted))) as [
    number,
    number,
  ];
  const [script, bareScript] = [ours[0]?.script ?? 0, theirs[0]?.script ?? 0];
  const ms = (value: number) => `${value.toFixed(0)} ms`;
  const kB = (bytes: number) => `${(bytes / 1000).toFixed(1)} kB`;
  rows.push({
    what: 'first drawing painted',
    measured: ms(painted),
    against: `${ms(bare)} an empty React page`,
    ratio: times(painted, bare),
    wanted: '1.5 ×',
  });
  rows.push({
    what: 'JavaScript for it, gzip',
    measured: kB(script),
    against: `${kB(bareScript)} bare react and react-dom`,
    ratio: times(script, bareScript),
    wanted: '1.8 ×',
  });
  rows.push({
    what: 'longest task after it',
    measured: ours[0]?.longest === 0 ? 'under 50 ms' : ms(ours[0]?.longest ?? 0),
    against: '',
    ratio: '',
    wanted: 'under 50 ms',
  });

  rows.push({
    what: 'moved by what comes after it',
    measured: (ours[0]?.moved ?? 0).toFixed(3),
    against: '',
    ratio: '',
    wanted: '0',
  });

  const fine = (value: number) => `${value.toFixed(1)} ms`;
  for (const way of ['dragged', 'typed'] as const) {
    const { here, bare: set, strings } = await stepCosts(browser, pages.app, pages.bare, way);
    rows.push({
      what: way === 'dragged' ? 'a step of a drag' : 'a number typed',
      measured: fine(mean(here)),
      against: `${fine(mean(set))} ${strings.toFixed(0)} strings set on bare elements`,
      ratio: times(mean(here), mean(set)),
      wanted: '1.5 ×',
    });
    rows.push({
      what: '  95 % of them within',
      measured: fine(here.toSorted((a, b) => a - b)[Math.floor(here.length * 0.95)] ?? 0),
      against: '',
      ratio: '',
      wanted: '8.3 ms',
    });
  }
  rows.push(...(await benchShelf(browser, pages.app)));
} finally {
  await browser.close();
  await pages.close();
}
rows.push(...(await benchPaper()));
process.stdout.write(`${table(rows)}\nOn a machine with a load of ${(loadavg()[0] ?? 0).toFixed(1)}.\n`);
