// @vitest-environment jsdom
import 'fake-indexeddb/auto';
import './quick.ts';
import { cleanup, render, screen, waitFor, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { IDBFactory } from 'fake-indexeddb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { setAt } from '../../geometry/fields.ts';
import { type Database, openDatabase } from '../../src/app/keep/database.ts';
import type { Keep } from '../../src/app/keep/keep.ts';
import { recall, remember } from '../../src/app/keep/shelf.ts';
import { cutAll } from '../../src/app/save/cutter.ts';
import { type LayAsk, layAll } from '../../src/app/save/paper-work.ts';
import { createShopStore, shopKey } from '../../src/app/save/shop-store.ts';
import { type HeldShop, Templates } from '../../src/app/save/Templates.tsx';
import { createBench } from '../../src/app/store.ts';
import { BenchContext } from '../../src/app/use-bench.ts';
import { pieces, piecesOf } from '../../templates/pieces/index.ts';
import type { Piece } from '../../templates/pieces/piece.ts';
import { newShop, writeShop } from '../../templates/shop/index.ts';
import { built } from '../solved.ts';
import { starterJob } from './bench.ts';
import { labelled } from './labelled.ts';

vi.setConfig({ testTimeout: 60_000 });

/** Lays sheets as the worker does, but in this thread: jsdom has no workers. */
class Here {
  onmessage: ((event: { data: unknown }) => void) | null = null;
  addEventListener() {}
  postMessage(ask: LayAsk) {
    setTimeout(() => this.onmessage?.({ data: { kind: 'laid', turn: ask.turn, laid: layAll(ask) } }));
  }
  terminate() {}
}

let db: Database;
beforeEach(async () => {
  globalThis.indexedDB = new IDBFactory();
  db = await openDatabase();
  vi.stubGlobal('Worker', Here);
  vi.spyOn(navigator, 'languages', 'get').mockReturnValue(['en-GB', 'en']);
  // Nor does it open dialogs.
  HTMLDialogElement.prototype.showModal = function () {
    this.open = true;
  };
});
afterEach(() => {
  cleanup();
  vi.unstubAllGlobals();
  vi.restoreAllMocks();
});

const show = { length: 'mm', radius: 'mm', gauge: 'in' } as const;

describe('the shop’s settings', () => {
  // Unicode CLDR, supplemental data, paperSize: US-Letter in the Americas from Canada to Chile but for the rest of their south, and in the Philippines; A4 elsewhere [memory].
  it.each([
    [['en-US', 'en'], 'letter'],
    [['fr-CA'], 'letter'],
    [['es-MX', 'en-GB'], 'letter'],
    [['en', 'en-US'], 'letter'],
    [['en-GB', 'en-US'], 'a4'],
    [['de-DE'], 'a4'],
    [['pt-BR'], 'a4'],
    [['en'], 'a4'],
    [['no language', 'es-US'], 'letter'],
    [[], 'a4'],
  ] as const)('begin, where the browser’s languages are %j, on %s', async (languages, size) => {
    expect(createShopStore(undefined, languages).getState().shop).toEqual(setAt(newShop(), 'paper.size', size));
    // What was put in on the device stays.
    await remember(db, shopKey, setAt(newShop(), 'paper.size', 'a3'));
    const kept = createShopStore(db, languages);
    await kept.load();
    expect(kept.getState().shop.paper.size).toBe('a3');
  });

  it('are kept on the device and come back, a refused text never', async () => {
    const store = createShopStore(db);
    store.type('paper.margin', '12,5', show);
    store.type('paper.overlap', '90', show);
    store.addItem('gauges.list', 'gauge', { radius: 300 });
    expect(store.getState().drafts['paper.overlap']?.says).toBe(
      'Overlap of pages is 90.0 mm; it may be from 5.0 mm to 40.0 mm.',
    );
    await waitFor(async () => expect(await recall(db, shopKey)).toMatchObject({ gauges: { list: [{ radius: 300 }] } }));
    const later = createShopStore(db);
    await later.load();
    expect(later.getState().shop).toEqual({
      ...newShop(),
      paper: { ...newShop().paper, margin: 12.5 },
      gauges: { ...newShop().gauges, list: [{ id: 'gauge-1', radius: 300 }] },
    });
  });

  it('last while the page does where the browser keeps nothing, and where it fails that is said', async () => {
    const store = createShopStore(undefined);
    await store.load();
    store.put('paper.size', 'a3');
    expect(store.getState()).toMatchObject({ isKept: false, shop: { paper: { size: 'a3' } } });
    const broken = createShopStore(db);
    db.close();
    broken.put('paper.size', 'a3');
    await waitFor(() => expect(broken.getState().trouble).toMatch(/could not be kept in this browser/));
    expect(broken.getState().shop.paper.size).toBe('a3');
  });

  it('that cannot be read are told, and stay till the first change', async () => {
    await remember(db, shopKey, { ...newShop(), paper: { size: 'papyrus' } });
    const store = createShopStore(db);
    await store.load();
    expect(store.getState().shop).toEqual(newShop());
    expect(store.getState().unread?.says).toMatch(/Paper \(paper\.size\) is “papyrus”/);
    expect(JSON.parse(store.getState().unread?.text ?? '')).toMatchObject({ paper: { size: 'papyrus' } });
    expect(await recall(db, shopKey)).toMatchObject({ paper: { size: 'papyrus' } });
    store.put('paper.size', 'a3');
    expect(store.getState().unread).toBeUndefined();
  });

  it('are opened from a file, or refused with those that stand left as they are; and put back', () => {
    const store = createShopStore(undefined);
    store.put('paper.size', 'a3');
    expect(store.open('{"format": "sagitta-shop", "paper": {"margin": 90}}', 'bad.json')).toBe(
      '“bad.json” was not opened, and your settings stand as they were. Margin (paper.margin) is 90 mm; it may be from 3 to 30 mm.',
    );
    expect(store.getState().shop.paper.size).toBe('a3');
    const other = { ...newShop(), copies: { saddle: 4 }, lathe: 1 };
    expect(store.open(writeShop(other), 'other.json')).toContain('not known, and kept as they are: lathe.');
    expect(store.getState().shop).toEqual(other);
    store.back();
    expect(store.getState().shop.paper.size).toBe('a3');
    expect(store.getState().earlier).toBeUndefined();
  });
});

/** The dialog over a bench with a job. */
const open = async (job = starterJob('heron')) => {
  const held: HeldShop = {};
  render(
    <BenchContext value={createBench({ job })}>
      <Templates keep={{ db } as Keep} held={held} onClose={() => {}} />
    </BenchContext>,
  );
  await screen.findByRole('tablist');
  return { user: userEvent.setup(), shop: () => held.current?.getState().shop ?? newShop() };
};
const button = (name: string | RegExp) => screen.getByRole('button', { name });
const tab = (name: string) => screen.getByRole('tab', { name });

it('offers every template of the job, so many of each as wanted, and says why one is not there', async () => {
  const job = setAt(starterJob('heron'), 'work', 'saddle');
  const { user, shop } = await open(job);
  const here = piecesOf(built(job).job);
  expect(screen.getAllByRole('checkbox')).toHaveLength(here.length);
  const notHere = within(screen.getByText('Not of this job').nextElementSibling as HTMLElement).getAllByRole(
    'listitem',
  );
  expect(notHere).toHaveLength(pieces.length - here.length);
  expect(notHere[0]?.textContent).toBe('Finish mask The work is on the saddle alone: the bridge stays as it is.');

  await user.click(button('None'));
  expect(here.map(({ id }) => shop().copies[id])).toEqual(here.map(() => 0));
  await user.click(button('One fewer of Saddle, front face'));
  await user.click(button('One more of Saddle, front face'));
  await user.click(button('One more of Saddle, front face'));
  expect(shop().copies.saddle).toBe(2);
  expect(screen.getAllByRole<HTMLInputElement>('checkbox').filter(({ checked }) => checked)).toHaveLength(1);
  await user.click(button('All'));
  expect(shop().copies.saddle).toBe(2);
  expect(screen.getAllByRole<HTMLInputElement>('checkbox').every(({ checked }) => checked)).toBe(true);
  await user.click(button('Usual set'));
  expect(shop().copies).toEqual({});
});

it('shows a setting’s limits where it is typed, lists to add to, and leaves out what does not count', async () => {
  const { user, shop } = await open();
  await user.click(tab('Settings'));
  const margin = labelled('Margin');
  await user.clear(margin);
  await user.type(margin, '90');
  expect(screen.getAllByRole('alert')[0]?.textContent).toMatch(
    /^Margin is 90\.0 mm; it may be from 3\.0 mm to 30\.0 mm\./,
  );
  expect(
    screen.getByText(/^Margin: what is typed cannot be used; the templates are drawn with 10\.0 mm\.$/),
  ).toBeTruthy();
  await user.keyboard('{Escape}');
  expect(margin.value).toBe('10.0');
  expect(document.querySelector('[data-path="paper.width"]')).toBeNull();
  await user.selectOptions(document.getElementById('shop-paper.size') as HTMLElement, 'a typed size');
  expect(labelled('Paper width').value).toBe('210.0');

  await user.type(labelled('Radius, gauge to add'), 'round{Enter}');
  expect(shop().gauges.list).toEqual([]);
  expect(screen.getByRole('alert').textContent).toMatch(/“round”/);
  await user.clear(labelled('Radius, gauge to add'));
  await user.type(labelled('Radius, gauge to add'), '12 in{Enter}');
  expect(shop().gauges.list).toEqual([{ id: 'gauge-1', radius: 304.8 }]);
  await user.click(button('Remove gauge 1'));
  expect(shop().gauges.list).toEqual([]);
});

it('says by the settings’ own names which templates the tool cannot follow, and can be stopped between two', async () => {
  const of = built(starterJob('heron'));
  const cutter = { ...newShop().cutter, tool: 6, letters: 'text' } as const;
  const [footprint, saddle] = ['footprint', 'saddle'].map((id) => pieces.find((piece) => piece.id === id) as Piece);
  const some = [footprint, saddle] as readonly Piece[];
  const cut = await cutAll(of, some, { ...newShop(), cutter }, { tell: () => {}, isStopped: () => false });
  expect(cut?.files.map(({ name }) => name)).toEqual(['saddle.cutter']);
  // The slot is 3 mm wide.
  expect(cut?.problems[0]).toMatch(
    /6\.00 mm does not get through .*3\.00 mm wide.*\(“Tool or kerf”\).*\(“Where the tool runs”\)/,
  );
  let told = 0;
  const stopped = await cutAll(
    of,
    some,
    { ...newShop(), cutter },
    {
      tell: () => {
        told += 1;
      },
      isStopped: () => told > 0,
    },
  );
  expect([stopped, told]).toEqual([undefined, 1]);
});

it('proves a print by what its bars read: true, fitted, refused or corrected, and remembers it', async () => {
  const { user, shop } = await open();
  await user.click(tab('Printer'));
  await user.click(button('Add'));
  expect(screen.getByRole('alert').textContent).toBe('Type what the printer is called at the bench.');
  await user.type(labelled('Name of a printer to add'), 'Back room{Enter}');
  expect(screen.getByText(/Back room is not proved, and nothing is corrected for it\.$/)).toBeTruthy();
  expect(screen.getByText(/^It is not proved: pages are printed as they are\./)).toBeTruthy();
  // The first page of this job lies.
  await user.selectOptions(labelled('It lies'), 'upright');
  const prove = async (across: string, down: string) => {
    for (const [name, text] of [
      ['100 mm across', across],
      ['100 mm down', down],
    ] as const) {
      await user.clear(labelled(name));
      await user.type(labelled(name), text);
    }
    await user.click(button('Prove the print'));
    return document.querySelector('[data-proof]')?.textContent ?? '';
  };
  const printer = () => shop().printers.list[0];
  const known = { id: 'printer-1', name: 'Back room', across: 1, down: 1, date: '', readings: [] };
  // A4 into what printers with margins of 5 mm leave of it: 200/210.
  expect(await prove('95.2', '95.2')).toMatch(/^Fitted to the page\. .*shrunk to fit between the printer’s margins/);
  expect(await prove('95', '100')).toMatch(/^Refused\. .*97\.00 % to 103\.00 %/);
  expect(printer()).toEqual(known);
  await user.clear(labelled('100 mm down'));
  await user.type(labelled('100 mm down'), 'long');
  await user.click(button('Prove the print'));
  expect(screen.getByText('Put right first: 100 mm down.')).toBeTruthy();
  // 1/0.996 and 1/0.999 by hand.
  expect(await prove('99.6', '99.9')).toMatch(/^Corrected from now on\./);
  expect(printer()?.across).toBeCloseTo(1.004016, 6);
  expect(printer()?.down).toBeCloseTo(1.001001, 6);
  expect(printer()?.date).toMatch(/^\d{4}-\d\d-\d\d$/);
  expect(screen.getByText(/Corrected for Back room\.$/)).toBeTruthy();
  await waitFor(() =>
    expect(document.querySelector('.panel-of-tab')?.textContent).toContain('100.0 mm across read 99.6 mm'),
  );
  // The same once more is no new print.
  expect(await prove('99.6', '99.9')).toMatch(/^Refused\. These are the very readings/);
  expect(printer()?.across).toBeCloseTo(1.004016, 6);
  // A corrected print that is true keeps its correction.
  expect(await prove('100', '100')).toMatch(/^True\./);
  expect(printer()?.across).toBeCloseTo(1.004016, 6);
  // The page that lies on its side runs the other way through the printer.
  await user.selectOptions(labelled('It lies'), 'lying');
  await user.selectOptions(labelled('Under “print” its title block says'), 'not corrected');
  expect(await prove('99.5', '100')).toMatch(/^Corrected from now on\./);
  expect(printer()).toMatchObject({ across: 1, readings: [{ along: 'down', reads: 99.5 }, { along: 'across' }] });
  expect(printer()?.down).toBeCloseTo(1 / 0.995, 9);
  await user.click(button('Remove this printer'));
  expect(shop().printers).toEqual({ chosen: '', list: [] });
});

it('takes the print that is measured to lie as the page on show does, till a reading is typed', async () => {
  const { user } = await open();
  await user.click(tab('Printer'));
  await user.type(labelled('Name of a printer to add'), 'Back room{Enter}');
  const shown = () => /A[34] (upright|lying)/.exec(document.querySelector('.page-frame')?.textContent ?? '')?.[0];
  const turn = async (way: string) => {
    await user.click(tab('Pages'));
    await user.click(await screen.findByRole('button', { name: way }));
    await user.click(tab('Printer'));
  };
  const lies = () => labelled('It lies').value;
  // The demo's bridge is wider than an A4 page standing upright has room for; a whole set goes on A3.
  await turn('Next page');
  expect(lies()).toBe('lying');
  await user.selectOptions(labelled('Paper'), 'A3');
  await user.click(tab('Pages'));
  await waitFor(() => expect(shown()).toBe('A3 upright'));
  await user.click(tab('Printer'));
  expect(lies()).toBe('upright');
  // What is chosen holds till pages are turned, and what is read belongs to the page as it lay.
  await user.selectOptions(labelled('It lies'), 'lying');
  await turn('Next page');
  expect(lies()).toBe('upright');
  await user.selectOptions(labelled('It lies'), 'lying');
  await user.type(labelled('100 mm across'), '99');
  await turn('Page before');
  expect(lies()).toBe('lying');
});
