import { applies, fieldAt, getAt } from '../../../geometry/fields.ts';
import type { ShowUnits } from '../../../geometry/units.ts';
import { shopSchema } from '../../../templates/shop/index.ts';
import { stands } from '../typing.ts';
import { words } from '../words.ts';
import type { ShopState } from './shop-store.ts';

/** The settings that hold a text which cannot be used, each with the value that stands in its place. */
export const refusedSettings = ({ drafts, shop }: ShopState, show: ShowUnits): readonly string[] =>
  Object.entries(drafts).flatMap(([path, { says }]) => {
    const field = fieldAt(path, shopSchema);
    if (says === undefined || field === undefined || !applies(field, shop, shopSchema)) return [];
    return [words.shop.refused(field.label, stands(field, getAt(shop, path), show))];
  });
