import { quote } from '../../geometry/names.ts';
import { pieces } from '../../templates/pieces/index.ts';
import type { Shop } from '../../templates/shop/index.ts';
import type { Draft } from './options.ts';

export type AskedShop = { readonly ok: true; readonly shop: Shop } | { readonly ok: false; readonly says: string };

const copiesFor = (asked: NonNullable<Draft['pieces']>): Shop['copies'] =>
  Object.fromEntries(
    pieces.map(({ id }) => [id, asked === 'all' ? 1 : Object.hasOwn(asked, id) ? (asked[id] ?? 0) : 0]),
  );

/** The shop's printers by what a person calls them, or by their keys. */
const printersCalled = (name: string, { printers: { list } }: Shop) => {
  const wanted = name.toLowerCase();
  const byKey = list.filter(({ id }) => id.toLowerCase() === wanted);
  return byKey.length > 0 ? byKey : list.filter((one) => one.name.trim().toLowerCase() === wanted);
};

/** A shop with what is asked of this draft in the place of what its settings say; not ok, in words, where it has no such printer. */
export const askedShop = (shop: Shop, { paper, pieces: asked, printer }: Draft): AskedShop => {
  const { list } = shop.printers;
  const isNone = printer?.toLowerCase() === 'none';
  const [found, another] = printer === undefined || isNone ? [] : printersCalled(printer, shop);
  if (printer !== undefined && !isNone && (!found || another)) {
    const known = list.map(({ id, name }) => (name ? `${quote(name)} (${id})` : id)).join(', ');
    return {
      ok: false,
      says: another
        ? `The settings have more than one printer ${quote(printer)}: choose it by its key, of ${known}.`
        : `The settings have no printer ${quote(printer)}: ${list.length > 0 ? `choose one of ${known}, or none` : 'they have none that was proved; leave it out'}.`,
    };
  }
  return {
    ok: true,
    shop: {
      ...shop,
      ...(asked && { copies: copiesFor(asked) }),
      paper: { ...shop.paper, ...paper },
      printers: {
        ...shop.printers,
        chosen: isNone ? '' : (found?.id ?? shop.printers.chosen),
      },
    },
  };
};
