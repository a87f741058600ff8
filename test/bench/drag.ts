import type { Browser, CDPSession, Page } from 'playwright-core';
import type { Pages } from './builds.ts';
import { type Row, times } from './row.ts';

/** One string that a step sets: on which element of which kind, where (its text, its value or an attribute), and what. */
type Put = readonly [kind: 'drawn' | 'input' | 'other', index: number, at: string, text: string | null];

const path = 'bridge.topRadius';
const steps = 60;

/** How a number is changed, step by step. */
type Way = 'typed' | 'dragged';

/** A first move of the hand, px, after which it holds the number; how far it then goes to and fro. */
const [taken, reach] = [5, 4];

/** Begins to change the number in a way; returns what takes one step. */
const begin: Readonly<Record<Way, (page: Page) => Promise<(k: number) => Promise<void>>>> = {
  typed: async (page) => {
    const input = page.locator(`[id="field-${path}"]`);
    await input.focus();
    return (k) =>
      input.evaluate(
        (element, text) => {
          Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(element, text);
          element.dispatchEvent(new Event('input', { bubbles: true }));
        },
        `${(16 + k * 0.1).toFixed(1)} in`,
      );
  },
  dragged: async (page) => {
    const box = await page.locator('[data-grip="tail.topRadius"] .reach').first().boundingBox();
    if (box === null) throw new Error('The top radius has no grip on the drawing.');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y - taken);
    return (k) => page.mouse.move(x, y - taken + reach * Math.sin(k / 4));
  },
};

const painted = (page: Page) =>
  page.evaluate(
    () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done)))),
  );

/** What each step costs the main thread by the browser's own count, ms of its processor time. */
const costs = async (page: Page, does: (k: number) => Promise<unknown>): Promise<readonly number[]> => {
  const cdp: CDPSession = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  const spent = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000;
  };
  const all: number[] = [];
  for (let k = 0; k < steps; k += 1) {
    const before = await spent();
    await does(k);
    await painted(page);
    all.push((await spent()) - before);
  }
  return all;
};

interface Recorder {
  readonly begin: () => void;
  readonly end: () => Put[];
  readonly all: () => { readonly markup: string; readonly inputs: number; readonly others: number };
}
type Recording = Window & { readonly recorder: Recorder };

/** Has the page tell which strings a step sets. */
const record = (page: Page) =>
  page.evaluate(() => {
    const drawn = [...document.querySelectorAll('.drawing *')];
    const inputs = [...document.querySelectorAll('input')];
    const others: Node[] = [];
    const found = new Map<string, Put>();
    let before: string[] = [];
    const put = (node: Node, at: string, text: string | null) => {
      const index = drawn.indexOf(node as Element);
      if (index < 0 && !others.includes(node)) others.push(node);
      const one: Put = index < 0 ? ['other', others.indexOf(node), at, text] : ['drawn', index, at, text];
      found.set(one.slice(0, 3).join(), one);
    };
    const take = (records: MutationRecord[]) => {
      for (const { type, target, attributeName } of records) {
        if (type === 'attributes' && target instanceof Element && attributeName !== null)
          put(target, attributeName, target.getAttribute(attributeName));
        else if (type === 'characterData' && target.parentElement)
          put(target.parentElement, 'text', target.parentElement.textContent);
      }
    };
    const observer = new MutationObserver(take);
    const recorder: Recorder = {
      begin: () => {
        found.clear();
        before = inputs.map(({ value }) => value);
        observer.observe(document.body, { attributes: true, characterData: true, subtree: true });
      },
      end: () => {
        take(observer.takeRecords());
        observer.disconnect();
        const typed = inputs.flatMap(({ value }, k): Put[] =>
          value === before[k] ? [] : [['input', k, 'value', value]],
        );
        return [...found.values(), ...typed];
      },
      all: () => ({
        markup: document.querySelector('.drawing')?.outerHTML ?? '',
        inputs: inputs.length,
        others: others.length,
      }),
    };
    Object.assign(window, { recorder });
  });

/** What a change of a number costs, step by step: in the app, and the same strings set on as many bare elements; ms of the main thread's processor time. */
const stepCosts = async (browser: Browser, app: string, bare: string, way: Way) => {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' });
  try {
    // The loader that runs this wraps named functions in a call of its own, which the page has to know.
    await context.addInitScript('globalThis.__name = (named) => named');
    const page = await context.newPage();
    await page.goto(app);
    await page.locator(`[id="field-${path}"]`).waitFor();
    // Till all that comes after the first drawing is there, and at rest.
    await page.waitForTimeout(3000);
    const step = await begin[way](page);
    // The first round tells which strings there are, and warms up.
    await record(page);
    const puts: Put[][] = [];
    for (let k = 0; k < steps; k += 1) {
      await page.evaluate(() => (window as unknown as Recording).recorder.begin());
      await step(k);
      await painted(page);
      puts.push(await page.evaluate(() => (window as unknown as Recording).recorder.end()));
    }
    const all = await page.evaluate(() => (window as unknown as Recording).recorder.all());
    const here = await costs(page, step);

    const plain = await context.newPage();
    await plain.goto(bare);
    await plain.evaluate(({ markup, inputs, others }) => {
      const spans = Array.from({ length: others }, () => '<span>0</span>').join('\n');
      document.body.innerHTML = `${markup}${'<input />'.repeat(inputs)}${spans}`;
      const kinds = {
        drawn: [...document.querySelectorAll('svg.drawing *')],
        input: [...document.querySelectorAll('input')],
        other: [...document.querySelectorAll('span')],
      };
      const put = (strings: Put[]) => {
        for (const [kind, index, at, text] of strings) {
          const element = kinds[kind][index];
          if (element === undefined) continue;
          if (at === 'value') (element as HTMLInputElement).value = text ?? '';
          else if (at === 'text') element.textContent = text;
          else if (text === null) element.removeAttribute(at);
          else element.setAttribute(at, text);
        }
      };
      Object.assign(window, { put });
    }, all);
    const bareCosts = await costs(plain, (k) =>
      plain.evaluate((strings) => (window as unknown as { put: (all: Put[]) => void }).put(strings), puts[k] ?? []),
    );
    return { here, bare: bareCosts, strings: puts.reduce((sum, one) => sum + one.length, 0) / steps };
  } finally {
    await context.close();
  }
};

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** A number dragged, and one typed, step by step against the strings that a step sets. */
export const benchSteps = async (browser: Browser, pages: Pages): Promise<readonly Row[]> => {
  const rows: Row[] = [];
  const ms = (value: number) => `${value.toFixed(1)} ms`;
  for (const way of ['dragged', 'typed'] as const) {
    const { here, bare: set, strings } = await stepCosts(browser, pages.app, pages.bare, way);
    rows.push({
      what: way === 'dragged' ? 'a step of a drag' : 'a number typed',
      measured: ms(mean(here)),
      against: `${ms(mean(set))} ${strings.toFixed(0)} strings set on bare elements`,
      ratio: times(mean(here), mean(set)),
      wanted: '1.5 ×',
    });
    rows.push({
      what: '  95 % of them within',
      measured: ms(here.toSorted((a, b) => a - b)[Math.floor(here.length * 0.95)] ?? 0),
      against: '',
      ratio: '',
      wanted: '8.3 ms',
    });
  }
  return rows;
};
