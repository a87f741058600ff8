import type { Browser, CDPSession, Page } from 'playwright-core';
import type { Pages } from './builds.ts';
import { type Row, times } from './row.ts';

/** One string that a step sets: on which element of which kind, where (its text, its value or an attribute), and what. */
type Put = readonly [kind: 'drawn' | 'input' | 'other', index: number, at: string, text: string | null];

const steps = 60;

/** What is done step by step: by which way, at which grip or field, and beside how many alternatives. */
interface Task {
  readonly what: string;
  readonly way: 'typed' | 'dragged';
  readonly at: string;
  readonly hasAlternatives: boolean;
  /** Against the same strings, and 95 % of the steps within, ms. */
  readonly wanted: { readonly ratio?: string; readonly within?: string };
}

const tasks: readonly Task[] = [
  {
    what: 'a step of a drag',
    way: 'dragged',
    at: 'tail.topRadius',
    hasAlternatives: false,
    wanted: { ratio: '1.5 ×', within: '8.3 ms' },
  },
  {
    what: 'the same beside four alternatives',
    way: 'dragged',
    at: 'tail.topRadius',
    hasAlternatives: true,
    wanted: { ratio: '1.5 ×' },
  },
  {
    what: 'a measurement that moves all five',
    way: 'dragged',
    at: 'tail.action.bass',
    hasAlternatives: true,
    wanted: { ratio: '1.5 ×' },
  },
  { what: 'a number typed', way: 'typed', at: 'bridge.topRadius', hasAlternatives: false, wanted: {} },
];

/** A first move of the hand, px, after which it holds the number. */
const taken = 5;
/** Where the hand is at a step, px from where it took hold: it goes to and fro over some five gauges of a radius, or else over less than a centimetre. */
const handAt = (at: string, k: number): number =>
  -taken + (/radius$/i.test(at) ? 30 * Math.sin(k / 2) : 4 * Math.sin(k / 4));

/** A step of a task, and what comes before the first one, on a page: on the app, or on the bare one. */
interface Steps {
  readonly before: (page: Page) => Promise<void>;
  readonly step: (page: Page, k: number) => Promise<void>;
}

/** The mouse by the browser's own protocol: nothing but its event reaches the page. */
const moves = (at: string, x: number, y: number): Steps => {
  const sessions = new Map<Page, Promise<CDPSession>>();
  const tell = async (page: Page, type: 'mouseMoved' | 'mousePressed', by: number) => {
    const session = sessions.get(page) ?? page.context().newCDPSession(page);
    sessions.set(page, session);
    const buttons = type === 'mousePressed' || by !== 0 ? 1 : 0;
    const mouse = { x, y: y + by, button: buttons === 1 ? 'left' : 'none', buttons, clickCount: 1 } as const;
    await (await session).send('Input.dispatchMouseEvent', { type, ...mouse });
  };
  return {
    before: async (page) => {
      await tell(page, 'mouseMoved', 0);
      await tell(page, 'mousePressed', 0);
      await tell(page, 'mouseMoved', -taken);
    },
    step: (page, k) => tell(page, 'mouseMoved', handAt(at, k)),
  };
};

/** How the steps of a task are taken, in the app and in the bare page alike. */
const stepsOf: Readonly<Record<Task['way'], (page: Page, at: string) => Promise<Steps>>> = {
  typed: async (page, at) => {
    const id = `field-${at}`;
    await page.locator(`[id="${id}"]`).focus();
    return {
      before: async () => undefined,
      step: (on, k) =>
        on.evaluate(
          ({ id, text }) => {
            const element = document.getElementById(id) ?? document.querySelector('input');
            Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set?.call(element, text);
            element?.dispatchEvent(new Event('input', { bubbles: true }));
          },
          { id, text: `${(16 + k * 0.1).toFixed(1)} in` },
        ),
    };
  },
  dragged: async (page, at) => {
    const box = await page.locator(`[data-grip="${at}"] .reach`).first().boundingBox();
    if (box === null) throw new Error(`There is no grip ${at} on the drawing.`);
    return moves(at, box.x + box.width / 2, box.y + box.height / 2);
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
    const drawings = [...document.querySelectorAll('svg.drawing, svg.chart')];
    const drawn = drawings.flatMap((drawing) => [drawing, ...drawing.querySelectorAll('*')]);
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
        markup: drawings.map(({ outerHTML }) => outerHTML).join('\n'),
        inputs: inputs.length,
        others: others.length,
      }),
    };
    Object.assign(window, { recorder });
  });

/** Makes the bare page put the strings of one step after another, each time it is asked to by the same event as the app. */
const answer = (page: Page, all: ReturnType<Recording['recorder']['all']>, puts: readonly Put[][]) =>
  page.evaluate(
    ({ all: { markup, inputs, others }, puts }) => {
      const spans = Array.from({ length: others }, () => '<span>0</span>').join('\n');
      document.body.innerHTML = `${markup}${'<input />'.repeat(inputs)}${spans}`;
      const kinds = {
        drawn: [...document.querySelectorAll('svg.drawing, svg.chart')].flatMap((one) => [
          one,
          ...one.querySelectorAll('*'),
        ]),
        input: [...document.querySelectorAll('input')],
        other: [...document.querySelectorAll('span')],
      };
      let step = 0;
      const put = () => {
        for (const [kind, index, at, text] of puts[step % puts.length] ?? []) {
          const element = kinds[kind][index];
          if (element === undefined) continue;
          if (at === 'value') (element as HTMLInputElement).value = text ?? '';
          else if (at === 'text') element.textContent = text;
          else if (text === null) element.removeAttribute(at);
          else element.setAttribute(at, text);
        }
        step += 1;
      };
      document.addEventListener('input', put);
      document.addEventListener('pointermove', () => requestAnimationFrame(put));
    },
    { all, puts },
  );

/** What a change of a number costs, step by step: in the app, and the same strings set on as many bare elements; ms of the main thread's processor time. */
const stepCosts = async (browser: Browser, { app, bare }: Pages, { way, at, hasAlternatives }: Task) => {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' });
  try {
    // The loader that runs this wraps named functions in a call of its own, which the page has to know.
    await context.addInitScript('globalThis.__name = (named) => named');
    const page = await context.newPage();
    await page.goto(app);
    // Till all that comes after the first drawing is there, and at rest.
    await page.locator('.outcome').waitFor();
    if (hasAlternatives) await page.locator('.radii button').click();
    await page.waitForTimeout(3000);
    const { before, step } = await stepsOf[way](page, at);
    await before(page);
    // The first round tells which strings there are, and warms up.
    await record(page);
    const puts: Put[][] = [];
    for (let k = 0; k < steps; k += 1) {
      await page.evaluate(() => (window as unknown as Recording).recorder.begin());
      await step(page, k);
      await painted(page);
      // What a worker works out may come a frame later.
      await page.waitForTimeout(60);
      puts.push(await page.evaluate(() => (window as unknown as Recording).recorder.end()));
    }
    const strings = puts.reduce((sum, one) => sum + one.length, 0) / steps;
    if (strings < 10) throw new Error(`${strings} strings a step: nothing moved.`);
    const all = await page.evaluate(() => (window as unknown as Recording).recorder.all());
    const here = await costs(page, (k) => step(page, k));

    const plain = await context.newPage();
    await plain.goto(bare);
    await answer(plain, all, puts);
    await before(plain);
    await costs(plain, (k) => step(plain, k));
    return { here, bare: await costs(plain, (k) => step(plain, k)), strings };
  } finally {
    await context.close();
  }
};

const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

/** Numbers dragged, and one typed, step by step against the strings that a step sets. */
export const benchSteps = async (browser: Browser, pages: Pages): Promise<readonly Row[]> => {
  const rows: Row[] = [];
  const ms = (value: number) => `${value.toFixed(1)} ms`;
  for (const task of tasks) {
    const { here, bare, strings } = await stepCosts(browser, pages, task);
    rows.push({
      what: task.what,
      measured: ms(mean(here)),
      against: `${ms(mean(bare))} ${strings.toFixed(0)} strings set on bare elements`,
      ratio: times(mean(here), mean(bare)),
      wanted: task.wanted.ratio ?? '',
    });
    rows.push({
      what: '  95 % of the steps within',
      measured: ms(here.toSorted((a, b) => a - b)[Math.floor(here.length * 0.95)] ?? 0),
      against: '',
      ratio: '',
      wanted: task.wanted.within ?? '',
    });
  }
  return rows;
};
