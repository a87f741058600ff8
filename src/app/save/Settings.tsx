import { type ReactNode, useRef, useState } from 'react';
import { fieldsOf } from '../../../geometry/fields.ts';
import { shopSchema, writeShop } from '../../../templates/shop/index.ts';
import { words } from '../words.ts';
import { saveText } from './files.ts';
import { ShopField } from './ShopField.tsx';
import { ShopList } from './ShopList.tsx';
import { useShopState, useShopStore } from './shop-store.ts';

const says = words.shop;
/** No file of settings is longer, UTF-16 units or bytes. */
const longest = 1_000_000;
/** What has a place of its own in the dialog. */
const elsewhere: ReadonlySet<string> = new Set(['format', 'version', 'copies', 'printers', 'cutter']);

const paths = fieldsOf(shopSchema).map(({ path }) => path);
/** The schema's groups in its order, so that a new one stands here without a word. */
const groups = Object.keys(shopSchema._zod.def.shape).filter((key) => !elsewhere.has(key));

/** All settings of one group of the shop: its fields, then its lists. */
export const ShopGroup = ({ group }: { group: string }) => {
  const own = paths.filter((path) => path.startsWith(`${group}.`));
  const lists = new Set(own.filter((path) => path.includes('.*.')).map((path) => path.slice(0, path.indexOf('.*.'))));
  const plain = own.filter((path) => !path.includes('*'));
  const subs = new Set(plain.flatMap((path) => (path.split('.').length > 2 ? [path.split('.')[1] as string] : [])));
  return (
    <>
      <div className="shop-fields">
        {plain.flatMap((path) => (path.split('.').length === 2 ? [<ShopField key={path} path={path} />] : []))}
      </div>
      {[...subs].map((sub) => (
        <fieldset key={sub}>
          <legend>{says.groups[sub] ?? sub}</legend>
          <div className="shop-fields">
            {plain.flatMap((path) =>
              path.startsWith(`${group}.${sub}.`) ? [<ShopField key={path} path={path} />] : [],
            )}
          </div>
        </fieldset>
      ))}
      {[...lists].map((list) => (
        <ShopList key={list} list={list} />
      ))}
    </>
  );
};

const Fold = ({ title, isOpen, children }: { title: string; isOpen: boolean; children: ReactNode }) => (
  <details className="fold" open={isOpen}>
    <summary>
      <strong>{title}</strong>
    </summary>
    {children}
  </details>
);

/** What is said of how the settings are kept. */
export const ShopTrouble = () => {
  const trouble = useShopState((state) => state.trouble);
  const unread = useShopState((state) => state.unread);
  return (
    <>
      {trouble !== undefined && (
        <p className="stale" role="alert">
          {trouble}
        </p>
      )}
      {unread !== undefined && (
        <div className="stale" role="alert">
          <p>{unread.says}</p>
          <button type="button" onClick={() => saveText(unread.text, 'application/json', says.file)}>
            {says.saveUnread}
          </button>
        </div>
      )}
    </>
  );
};

/** The shop's own settings, as fields and as a file. */
export const Settings = () => {
  const store = useShopStore();
  const isKept = useShopState((state) => state.isKept);
  const hasEarlier = useShopState(({ earlier }) => earlier !== undefined);
  const picker = useRef<HTMLInputElement>(null);
  const [told, setTold] = useState('');
  const open = async (file: File) =>
    setTold(
      file.size > longest ? says.notOpened(file.name, [says.tooLarge]) : store.open(await file.text(), file.name),
    );
  return (
    <>
      <p>{isKept ? says.about : says.aboutUnkept}</p>
      <div className="acts">
        <button
          type="button"
          onClick={() => {
            saveText(writeShop(store.getState().shop), 'application/json', says.file);
            setTold(says.saved(says.file));
          }}
        >
          {says.save}
        </button>
        <button type="button" onClick={() => picker.current?.click()}>
          {says.open}
        </button>
        <input
          ref={picker}
          type="file"
          accept=".json,application/json"
          hidden
          onChange={({ target }) => {
            const [file] = target.files ?? [];
            // So that the same file can be chosen again.
            target.value = '';
            if (file) void open(file);
          }}
        />
        {hasEarlier && (
          <button
            type="button"
            onClick={() => {
              store.back();
              setTold(says.isBack);
            }}
          >
            {says.back}
          </button>
        )}
      </div>
      <p className="status" role="status">
        {told}
      </p>
      {groups.map((group, k) => (
        <Fold key={group} title={says.groups[group] ?? group} isOpen={k === 0}>
          <ShopGroup group={group} />
        </Fold>
      ))}
    </>
  );
};
