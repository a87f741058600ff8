import { openPage, type Window } from './harness.ts';
import { desk, inRoom, openStarter, phone, tablet } from './page.ts';

/*
 * The drawing as it is seen: of the demo and of a starter with much on it, in windows of three widths, in light and in dark. `npm run pictures` keeps these pictures, the tests hold the app to them.
 */

export interface Shot extends Window {
  readonly name: string;
  readonly starter?: string;
}

const windows: readonly Window[] = [desk, tablet, phone];

export const shots: readonly Shot[] = [undefined, 'lapwing'].flatMap((starter) =>
  windows.map((window) => ({
    ...window,
    still: true,
    name: `${starter ?? 'demo'}-${window.width}`,
    ...(starter !== undefined && { starter }),
  })),
);

/** The colours that a system asks for, each with what it adds to a picture's name. */
const colours = { light: '', dark: '-dark' } as const;

/** The room of the drawing in the widest window, px: fixed, so that what stands round it may change. */
const room = 480;

/** Pictures of the drawing, as PNG, by their names; with `typed`, after a number was typed into the field of that name. */
export const take = async ({ name, starter, ...opened }: Shot, typed?: readonly [field: string, text: string]) => {
  const page = await openPage(opened);
  if (starter !== undefined) await openStarter(page, starter);
  if (typed) await page.getByRole('textbox', { name: typed[0], exact: true }).fill(typed[1]);
  // What is pointed at is lit on the drawing.
  await page.mouse.move(0, 0);
  await page.evaluate((height) => {
    // So is what has the focus.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    const paper = document.querySelector<HTMLElement>('.paper');
    if (paper && window.innerWidth > 1000) Object.assign(paper.style, { height: `${height}px`, flex: 'none' });
    return document.fonts.ready.then(
      () => new Promise<void>((done) => requestAnimationFrame(() => requestAnimationFrame(() => done()))),
    );
  }, room);
  await inRoom(page);
  const pictures: Record<string, Uint8Array> = {};
  // All of the sheet: three views on one, or in the narrow window one beside the other.
  for (const [n, glass] of (await page.locator('.glass').all()).entries()) {
    const view = await glass.evaluate((one) => {
      one.scrollIntoView({ behavior: 'instant', block: 'nearest', inline: 'start' });
      return new Promise<string | undefined>((done) =>
        requestAnimationFrame(() =>
          requestAnimationFrame(() => done(one.querySelector<SVGElement>('.drawing')?.dataset.view)),
        ),
      );
    });
    const box = await glass.boundingBox();
    if (box === null) throw new Error('The drawing is not in sight.');
    // It is drawn from a whole px on, wherever it stands; its last row may be no whole one.
    const clip = {
      x: Math.round(box.x),
      y: Math.round(box.y),
      width: Math.floor(box.width),
      height: Math.floor(box.height) - 1,
    };
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      pictures[`${name}${n === 0 ? '' : `-${view}`}${colours[colorScheme]}`] = await page.screenshot({
        clip,
        animations: 'disabled',
        scale: 'css',
      });
    }
  }
  return pictures;
};
