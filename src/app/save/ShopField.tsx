import { applies, fieldAt, getAt, usualText } from '../../../geometry/fields.ts';
import { unitFor } from '../../../geometry/units.ts';
import { shopSchema } from '../../../templates/shop/index.ts';
import { showAsRead } from '../decimal.ts';
import { unitOf } from '../numbers/Field.tsx';
import { keysFor } from '../numbers/use-field.ts';
import { shown } from '../typing.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { useShopState, useShopStore } from './shop-store.ts';

const says = words.shop;

interface Props {
  readonly path: string;
  /** Of which item of a list it is. */
  readonly of?: string;
}

/** One setting of the shop, with its word, its unit, what it means and what is said of it; nothing where it does not count. */
export const ShopField = ({ path, of }: Props) => {
  const store = useShopStore();
  const show = useBenchState(showAsRead);
  const draft = useShopState(({ drafts }) => drafts[path]);
  const value = useShopState(({ shop }) => getAt(shop, path));
  const field = fieldAt(path, shopSchema);
  const counts = useShopState(({ shop }) => field !== undefined && applies(field, shop, shopSchema));
  if (field === undefined || !counts) return null;
  const { label, choices, word, help, kind } = field;
  const id = `shop-${path}`;
  const unit = kind === 'word' || kind === 'text' ? 'mm' : unitFor(kind, show);
  const usual = usualText(field, show);
  const common = {
    id,
    'aria-label': of === undefined ? undefined : says.nameIn(label, of),
    'aria-invalid': draft?.says === undefined ? undefined : (true as const),
    'aria-describedby': [draft?.says && `${id}-says`, `${id}-help`].filter(Boolean).join(' '),
  };
  return (
    <div className="field" data-path={path}>
      <label htmlFor={id}>{label}</label>
      {choices ? (
        <select {...common} value={String(value)} onChange={({ target }) => store.put(path, target.value)}>
          {Object.entries(choices).map(([key, called]) => (
            <option key={key} value={key}>
              {called}
            </option>
          ))}
        </select>
      ) : (
        <>
          {word !== undefined && (
            <button
              type="button"
              className="word"
              aria-pressed={value === word}
              aria-label={`${label}: ${word}`}
              onClick={() => store.put(path, value === word ? (field.usual?.[0] ?? field.min ?? 0) : word)}
            >
              {word}
            </button>
          )}
          <span className="value">
            <input
              {...common}
              type="text"
              autoComplete="off"
              spellCheck={false}
              inputMode={keysFor(field, unit)}
              data-kind={kind}
              value={draft?.text ?? shown(field, value, show)}
              onChange={({ target }) => store.type(path, target.value, show)}
              onBlur={() => store.leave(path)}
              onKeyDown={(event) => {
                // Escape takes back what is typed here first, and closes the whole only then.
                if (event.key !== 'Escape' || draft === undefined) return;
                event.preventDefault();
                event.stopPropagation();
                store.forget(path);
              }}
            />
            <span className="unit">{value === word ? '' : unitOf(field, unit)}</span>
          </span>
        </>
      )}
      {draft?.says !== undefined && (
        <p className="says" id={`${id}-says`} role="alert">
          {draft.says}
        </p>
      )}
      <p className="small" id={`${id}-help`}>
        {help} {usual !== undefined && says.usual(usual)}
      </p>
    </div>
  );
};
