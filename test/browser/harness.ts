import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, expect, inject, onTestFinished } from 'vitest';
import { launchFlags } from '../chromium.ts';

/** The window in which a page is opened, CSS px. */
export interface Window {
  readonly width: number;
  readonly height: number;
  /** A touch screen, as of a phone. */
  readonly touch?: boolean;
  /** The system asks for dark colours. */
  readonly dark?: boolean;
  /** The system has colours of its own for all that is shown. */
  readonly forced?: boolean;
  /** The browser's language; US English where none is named. */
  readonly locale?: string;
  /** The system asks that nothing moves by itself. */
  readonly still?: boolean;
}

let browser: Promise<Browser> | undefined;

afterAll(async () => {
  await (await browser)?.close();
  browser = undefined;
});

/** The browser of this test file: started when first asked for, closed after its last test. */
export function launch(): Promise<Browser> {
  browser ??= chromium.launch({ executablePath: inject('chromium'), args: [...launchFlags] });
  return browser;
}

/** How the app is opened otherwise than usual. */
export interface Opened {
  /** Where it is served, with a slash at its end, or the file that it is; usually where the build of this run is. */
  readonly url?: string;
  /** Whether it may put itself where it needs no network. Not usually, as each test's page would fetch all of it. */
  readonly serviceWorkers?: 'allow' | 'block';
}

/**
 * A fresh page with the app loaded, in a context of its own (no storage from elsewhere). To be called inside a test, which fails at its
 * end if the page wrote an error to the console, threw one, did what its content security policy forbids, or asked for anything outside
 * the app's own origin.
 */
export async function openPage(window: Window, opened: Opened = {}): Promise<Page> {
  const { width, height, touch = false, dark = false, forced = false, still = false, locale = 'en-US' } = window;
  const { url = inject('url'), serviceWorkers = 'block' } = opened;
  const context = await (await launch()).newContext({
    viewport: { width, height },
    hasTouch: touch,
    isMobile: touch,
    locale,
    colorScheme: dark ? 'dark' : 'light',
    forcedColors: forced ? 'active' : 'none',
    reducedMotion: still ? 'reduce' : 'no-preference',
    serviceWorkers,
  });
  const complaints: string[] = [];
  onTestFinished(async () => {
    await context.close();
    expect(complaints, 'what the page did wrong').toEqual([]);
  });

  const { origin, protocol } = new URL(url);
  const stays = (address: string) =>
    /^(data|blob|about):/.test(address) ||
    (protocol === 'file:' ? address === url : new URL(address).origin === origin);
  context.on('request', (request) => {
    if (!stays(request.url())) complaints.push(`asked for ${request.url()}, outside its own origin`);
  });
  // What a service worker lets through is not seen here; what it asks for itself is told above.
  if (serviceWorkers === 'block')
    await context.route('**/*', (route) => (stays(route.request().url()) ? route.continue() : route.abort()));
  context.on('page', (page) => {
    page.on('websocket', (socket) => complaints.push(`opened the socket ${socket.url()}`));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(`wrote to the console: ${message.text()}`);
    });
    page.on('pageerror', (error) => complaints.push(`threw ${error.stack ?? error.message}`));
  });
  await context.exposeFunction('tellViolation', (what: string) => complaints.push(what));
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI, sourceFile }) => {
      const { tellViolation } = globalThis as unknown as { tellViolation: (what: string) => void };
      tellViolation(`did what the policy's ${effectiveDirective} forbids: ${blockedURI} in ${sourceFile}`);
    });
  });

  const page = await context.newPage();
  await page.goto(url);
  // The drawing comes first, the rest of the page right after it.
  await page.getByRole('navigation', { name: 'Files' }).waitFor();
  return page;
}

/** Another page of the same browser profile, as when a window is opened again; the first is closed unless it is to stay. */
export async function reopen(page: Page, { keepOpen = false } = {}): Promise<Page> {
  const context = page.context();
  const address = new URL('.', page.url() === 'about:blank' ? inject('url') : page.url()).href;
  if (!keepOpen) await page.close();
  const next = await context.newPage();
  await next.goto(address);
  await next.getByRole('navigation', { name: 'Files' }).waitFor();
  return next;
}
