import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';

/** The names under which a Chromium stands on PATH: first the one without a window, which asks a third less of the machine and draws the same. */
const names = ['chromium-headless-shell', 'chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

const isRoot = process.getuid?.() === 0;

/**
 * How the browser is started. Root has no sandbox; and nothing of the browser's own (updates, sync, first-run pages) may ask the network,
 * so that every request that a test sees is the app's.
 */
export const launchFlags: readonly string[] = [
  ...(isRoot ? ['--no-sandbox'] : []),
  '--disable-gpu',
  // Pictures are alike wherever they are made: colours as they are named, letters fitted to the pixels as little without a window as with one.
  '--force-color-profile=srgb',
  '--font-render-hinting=slight',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Path of a Chromium that runs: SAGITTA_CHROMIUM, then PATH, then what playwright-core has fetched before; undefined if there is none.
 * Throws if SAGITTA_CHROMIUM is set to something that does not run.
 */
export function findChromium(env: NodeJS.ProcessEnv = process.env): string | undefined {
  const chosen = env.SAGITTA_CHROMIUM;
  if (chosen) {
    if (runs(chosen)) return chosen;
    throw new Error(
      `SAGITTA_CHROMIUM is ${chosen}, which does not run. Set it to a Chromium's program file, or unset it.`,
    );
  }
  const folders = (env.PATH ?? '').split(delimiter).filter((folder) => folder !== '');
  const onPath = folders.flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, chromium.executablePath()].find(runs);
}

/**
 * Path of a Chromium, installed first if there is none: with apt-get as root where there is one, else with playwright-core's own
 * installer. Throws, saying what is missing and what to do, if that does not give one either.
 */
export function provideChromium(): string {
  const found = findChromium();
  if (found) return found;
  console.log('No Chromium found for the browser tests: installing one.');
  if (isRoot && does('apt-get', '--version')) {
    const gets = (name: string) => does('apt-get', 'install', '-y', '--no-install-recommends', name);
    // Not every system has it without a window.
    const done = does('apt-get', 'update') && (gets('chromium-headless-shell') || gets('chromium'));
    const installed = done ? findChromium() : undefined;
    if (installed) return installed;
  }
  does(process.execPath, fileURLToPath(import.meta.resolve('playwright-core/cli.js')), 'install', 'chromium');
  const fetched = findChromium();
  if (fetched) return fetched;
  throw new Error(
    'The browser tests need a Chromium, and none was found or could be installed. Install Chromium or Chrome (on Debian and ' +
      'Ubuntu: apt-get install chromium), or set SAGITTA_CHROMIUM to its program file, and run the tests again.',
  );
}

/** Whether a file is a program that can say its version: a stub that only points to an installer cannot. */
function runs(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    if (!statSync(file).isFile()) return false;
  } catch {
    return false;
  }
  return spawnSync(file, ['--version'], { stdio: 'ignore', timeout: 30_000 }).status === 0;
}

function does(tool: string, ...args: string[]): boolean {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync(tool, args, { stdio: ['ignore', 'inherit', 'inherit'], env }).status === 0;
}
