import type { Browser, CDPSession, Page } from 'playwright-core';

/** One string that a step sets: on which element of which kind, where (its text, its value or an attribute), and what. */
type Put = readonly [kind: 'drawn' | 'input' | 'other', index: number, at: string, text: string | null];

interface Recorder {
  steps: Put[][];
  step: (value: string) => Promise<void>;
}

const pathOfField = 'bridge.topRadius';

/** What one step cost the main thread by the browser's own count, ms of its processor time. */
const costs = async (
  cdp: CDPSession,
  does: (k: number) => Promise<unknown>,
  count: number,
): Promise<readonly number[]> => {
  const spent = async () => {
    const { metrics } = await cdp.send('Performance.getMetrics');
    return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? 0) * 1000;
  };
  const all: number[] = [];
  for (let k = 0; k < count; k += 1) {
    const before = await spent();
    await does(k);
    all.push((await spent()) - before);
  }
  return all;
};

const counted = async (page: Page) => {
  const cdp = await page.context().newCDPSession(page);
  await cdp.send('Performance.enable', { timeDomain: 'threadTicks' });
  return cdp;
};

/** Sets the field as a key does, and waits till that is painted. */
const prepare = (page: Page) =>
  page.evaluate((path) => {
    const input = document.getElementById(`field-${path}`) as HTMLInputElement;
    const set = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
    const painted = () => new Promise<void>((done) => requestAnimationFrame(() => setTimeout(done)));
    input.focus();
    (window as unknown as { recorder: Recorder }).recorder = {
      steps: [],
      step: async (value) => {
        set?.call(input, value);
        input.dispatchEvent(new Event('input', { bubbles: true }));
        await painted();
      },
    };
  }, pathOfField);

/** The strings that each step changes on the page, told by the page itself. */
const record = (page: Page, values: readonly string[]) =>
  page.evaluate(async (all) => {
    const { recorder } = window as unknown as { recorder: Recorder };
    const drawn = [...document.querySelectorAll('.drawing *')];
    const inputs = [...document.querySelectorAll('input')];
    const others: Node[] = [];
    const indexOf = (list: Node[], node: Node) => (list.includes(node) ? list.indexOf(node) : list.push(node) - 1);
    const steps: Put[][] = [];
    for (const value of all) {
      const before = inputs.map((input) => input.value);
      const found = new Map<string, Put>();
      const put = (node: Node, at: string, text: string | null) => {
        const index = drawn.indexOf(node as Element);
        const one: Put = index < 0 ? ['other', indexOf(others, node), at, text] : ['drawn', index, at, text];
        found.set(one.slice(0, 3).join(), one);
      };
      const observer = new MutationObserver((records) => {
        for (const { type, target, attributeName } of records) {
          if (type === 'attributes' && target instanceof Element && attributeName !== null)
            put(target, attributeName, target.getAttribute(attributeName));
          else if (type === 'characterData' && target.parentElement)
            put(target.parentElement, 'text', target.parentElement.textContent);
        }
      });
      observer.observe(document.body, { attributes: true, characterData: true, subtree: true });
      await recorder.step(value);
      observer.disconnect();
      const typed = inputs.flatMap((input, k): Put[] =>
        input.value === before[k] ? [] : [['input', k, 'value', input.value]],
      );
      steps.push([...found.values(), ...typed]);
    }
    const markup = document.querySelector('.drawing')?.outerHTML ?? '';
    return { steps, markup, inputs: inputs.length, others: others.length };
  }, values);

/** What a drag costs: each step of the app, and the same strings set on as many bare elements; ms of the main thread's processor time. */
export const dragCosts = async (browser: Browser, app: string, bare: string) => {
  const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
  try {
    // The loader that runs this wraps named functions in a call of its own, which the page has to know.
    await context.addInitScript('globalThis.__name = (named) => named');
    const page = await context.newPage();
    await page.goto(app);
    await page.locator(`[id="field-${pathOfField}"]`).waitFor();
    // Till all that comes after the first drawing is there, and at rest.
    await page.waitForTimeout(3000);
    await prepare(page);
    const values = Array.from({ length: 60 }, (_, k) => `${(16 + k * 0.1).toFixed(1)} in`);
    const { steps, markup, inputs, others } = await record(page, values);
    const cdp = await counted(page);
    const step = (value: string) =>
      page.evaluate((text) => (window as unknown as { recorder: Recorder }).recorder.step(text), value);
    const dragged = await costs(cdp, (k) => step(values[k] as string), values.length);

    const plain = await context.newPage();
    await plain.goto(bare);
    await plain.evaluate(
      ({ markup, inputs, others }) => {
        document.body.innerHTML =
          markup + '<input />'.repeat(inputs) + Array.from({ length: others }, () => '<span>0</span>').join('\n');
      },
      { markup, inputs, others },
    );
    const plainCdp = await counted(plain);
    await plain.evaluate(() => {
      const kinds = {
        drawn: [...document.querySelectorAll('svg *')],
        input: [...document.querySelectorAll('input')],
        other: [...document.querySelectorAll('span')],
      };
      const painted = () => new Promise<void>((done) => requestAnimationFrame(() => setTimeout(done)));
      Object.assign(window, {
        puts: async (all: Put[]) => {
          for (const [kind, index, at, text] of all) {
            const element = kinds[kind][index] as Element;
            if (at === 'value') (element as HTMLInputElement).value = text ?? '';
            else if (at === 'text') element.textContent = text;
            else if (text === null) element.removeAttribute(at);
            else element.setAttribute(at, text);
          }
          await painted();
        },
      });
    });
    const put = (k: number) =>
      plain.evaluate((all) => (window as unknown as { puts: (all: Put[]) => Promise<void> }).puts(all), steps[k] ?? []);
    const set = await costs(plainCdp, put, values.length);
    return { dragged, set, strings: steps.reduce((sum, one) => sum + one.length, 0) / steps.length };
  } finally {
    await context.close();
  }
};
