// Measures what the app asks of the machine against what the platform itself asks: ratios, as times differ from machine to machine.
import { loadavg } from 'node:os';
import { type Browser, chromium } from 'playwright-core';
import { launchFlags, provideChromium } from '../chromium.ts';
import { benchNumbers, type Pages, servePages } from './builds.ts';
import { benchSteps } from './drag.ts';
import { benchFirst } from './first-drawing.ts';
import { benchHeap } from './heap.ts';
import { benchPaper } from './paper.ts';
import type { Row } from './row.ts';
import { benchShelf } from './shelf.ts';

type InNode = () => Promise<readonly Row[]>;
type InBrowser = (browser: Browser, pages: Pages) => Promise<readonly Row[]>;

/** What can be measured, by the name that asks for it. */
const inNode: Readonly<Record<string, InNode>> = { numbers: benchNumbers, paper: benchPaper };
const inBrowser: Readonly<Record<string, InBrowser>> = {
  first: benchFirst,
  steps: benchSteps,
  heap: benchHeap,
  shelf: benchShelf,
};

const table = (rows: readonly Row[]): string => {
  const keys = ['what', 'measured', 'against', 'ratio', 'wanted'] as const;
  const all = [{ what: '', measured: 'measured', against: 'against', ratio: 'ratio', wanted: 'wanted' }, ...rows];
  const widths = keys.map((key) => Math.max(...all.map((row) => row[key].length)));
  return all.map((row) => keys.map((key, k) => row[key].padEnd(widths[k] ?? 0)).join('  ')).join('\n');
};

/** What each part measured in a browser that is started for them. */
const measureInBrowser = async (parts: readonly InBrowser[]): Promise<readonly Row[]> => {
  if (parts.length === 0) return [];
  const pages = await servePages();
  const browser = await chromium.launch({ executablePath: provideChromium(), args: [...launchFlags] });
  try {
    const rows: Row[] = [];
    for (const part of parts) rows.push(...(await part(browser, pages)));
    return rows;
  } finally {
    await browser.close();
    await pages.close();
  }
};

const names = [...Object.keys(inNode), ...Object.keys(inBrowser)];
const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !names.includes(name));
if (unknown.length > 0) {
  process.stderr.write(`Nothing is measured by the name of ${unknown.join(', ')}. There are ${names.join(', ')}.\n`);
  process.exit(1);
}
/** Those of a kind that are asked for: all where none is named. */
const chosen = <T>(parts: Readonly<Record<string, T>>): readonly T[] =>
  Object.entries(parts).flatMap(([name, part]) => (asked.length === 0 || asked.includes(name) ? [part] : []));

const rows = [...(await measureInBrowser(chosen(inBrowser)))];
for (const part of chosen(inNode)) rows.push(...(await part()));
process.stdout.write(`${table(rows)}\nOn a machine with a load of ${(loadavg()[0] ?? 0).toFixed(1)}.\n`);
