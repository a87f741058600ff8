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

/**
 * A fresh page with the app loaded, in a context of its own (no storage from elsewhere). To be called inside a test, which fails at its
 * end if the page wrote an error to the console, threw one, or asked for anything outside the app's own origin.
 */
export async function openPage(window: Window): Promise<Page> {
  const { width, height, touch = false, dark = false } = window;
  const url = inject('url');
  const context = await (await launch()).newContext({
    viewport: { width, height },
    hasTouch: touch,
    isMobile: touch,
    colorScheme: dark ? 'dark' : 'light',
  });
  const complaints: string[] = [];
  onTestFinished(async () => {
    await context.close();
    expect(complaints, 'what the page did wrong').toEqual([]);
  });

  const origin = new URL(url).origin;
  const stays = (address: string) => /^(data|blob|about):/.test(address) || new URL(address).origin === origin;
  context.on('request', (request) => {
    if (!stays(request.url())) complaints.push(`asked for ${request.url()}, outside its own origin`);
  });
  await context.route('**/*', (route) => (stays(route.request().url()) ? route.continue() : route.abort()));
  context.on('page', (page) => {
    page.on('websocket', (socket) => complaints.push(`opened the socket ${socket.url()}`));
    page.on('console', (message) => {
      if (message.type() === 'error') complaints.push(`wrote to the console: ${message.text()}`);
    });
    page.on('pageerror', (error) => complaints.push(`threw ${error.stack ?? error.message}`));
  });

  const page = await context.newPage();
  await page.goto(url);
  // The drawing comes first, the rest of the page right after it.
  await page.getByRole('navigation', { name: 'Files' }).waitFor();
  return page;
}
