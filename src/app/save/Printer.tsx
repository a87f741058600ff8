import { useEffect, useRef, useState } from 'react';
import { type FieldInfo, fieldAt, mostItems } from '../../../geometry/fields.ts';
import { formatQuantity, type ShowUnits } from '../../../geometry/units.ts';
import { type Correction, quarterTurnedCorrection, sayCorrection, uncorrected } from '../../../templates/correction.ts';
import { paperOf } from '../../../templates/paper.ts';
import {
  type PrintProof,
  type PrintReading,
  provedPrinter,
  provePrint,
  turnedReadings,
} from '../../../templates/print-proof.ts';
import type { Sheet } from '../../../templates/sheets.ts';
import { shopSchema } from '../../../templates/shop/index.ts';
import { isProved, type Printer as Known, withPrinter } from '../../../templates/shop/printers.ts';
import { today } from '../bar/today.ts';
import { showAsRead } from '../decimal.ts';
import { unitOf } from '../numbers/Field.tsx';
import { readField } from '../typing.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { type Bar, barsOn, liesOf } from './bars.ts';
import { ShopField } from './ShopField.tsx';
import { useShopState, useShopStore } from './shop-store.ts';

const says = words.proof;
const list = 'printers.list';
const readsField = fieldAt(`${list}.*.readings.*.reads`, shopSchema) as FieldInfo;
const longestName = fieldAt(`${list}.*.name`, shopSchema)?.longest;
const mostPrinters = mostItems(list, shopSchema) ?? 0;

const choiceId = 'printer-choice';

const isCorrected = ({ across, down }: Correction): boolean => across !== 1 || down !== 1;

/** What a bar's text says: nothing yet, a reading, or why it is none. */
const readBar = (text: string, show: ShowUnits): { readonly reads?: number; readonly why?: string } => {
  if (text.trim() === '') return {};
  const read = readField(readsField, text, show, shopSchema);
  return read.ok ? { reads: Number(read.value) } : { why: read.says };
};

/** The printers that the shop knows, which one is printed on, and one to be added. */
const Choice = ({ printer }: { printer: Known | undefined }) => {
  const store = useShopStore();
  const { chosen, list: printers } = useShopState(({ shop }) => shop.printers);
  const [name, setName] = useState('');
  const [refused, setRefused] = useState('');
  const add = () => {
    const called = name.trim();
    const why =
      called === ''
        ? says.noName
        : printers.some((one) => one.name === called)
          ? says.nameTaken(called)
          : printers.length >= mostPrinters
            ? says.full(mostPrinters)
            : '';
    setRefused(why);
    if (why !== '') return;
    const id = store.addItem(list, 'printer', { name: called, ...uncorrected, date: '', readings: [] });
    store.put('printers.chosen', id);
    setName('');
  };
  return (
    <>
      <div className="way">
        <label>
          <span>{says.printer}</span>
          <select
            id={choiceId}
            value={printer === undefined ? '' : chosen}
            onChange={({ target }) => store.put('printers.chosen', target.value)}
          >
            <option value="">{says.notProved}</option>
            {printers.map((one) => (
              <option key={one.id} value={one.id}>
                {one.name || says.unnamed}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span>{says.name}</span>
          <input
            type="text"
            autoComplete="off"
            value={name}
            maxLength={longestName}
            aria-invalid={refused === '' ? undefined : true}
            aria-describedby={refused === '' ? undefined : 'printer-refused'}
            onChange={({ target }) => setName(target.value)}
            onKeyDown={({ key }) => key === 'Enter' && add()}
          />
        </label>
        <button type="button" onClick={add}>
          {says.add}
        </button>
      </div>
      {refused !== '' && (
        <p className="says" id="printer-refused" role="alert">
          {refused}
        </p>
      )}
    </>
  );
};

type Lies = 'upright' | 'lying';

/** When it was proved, and what pages that lie so are corrected by since. */
const sayProved = (printer: Known, lies: Lies, { decimal }: ShowUnits): string => {
  const { date } = printer;
  if (!isProved(printer)) return says.notYet;
  if (isCorrected(printer)) {
    const correction = sayCorrection(lies === 'lying' ? quarterTurnedCorrection(printer) : printer, decimal);
    return date === '' ? says.corrected(correction, lies) : says.proved(date, correction, lies);
  }
  return says.provedTrue(date);
};

/** What is known of the printer: its name, when it was proved, by what, and what came of it. */
const About = ({ printer, lies }: { printer: Known; lies: Lies }) => {
  const store = useShopStore();
  const show = useBenchState(showAsRead);
  const mm = (value: number) => formatQuantity(value, 'length', show, { unit: true });
  const { id, readings } = printer;
  const remove = () => {
    store.put('printers.chosen', '');
    store.removeItem(list, id);
    // The button goes with its printer.
    document.getElementById(choiceId)?.focus();
  };
  return (
    <>
      <p>
        {sayProved(printer, lies, show)}{' '}
        {readings.length > 0 &&
          says.measured(
            turnedReadings(lies, readings).map(
              ({ along, bar, reads }) => [says.along[along], mm(bar), mm(reads)] as const,
            ),
            lies,
          )}
      </p>
      <div className="shop-fields">
        <ShopField path={`${list}.${id}.name`} />
      </div>
      <button type="button" onClick={remove}>
        {says.remove}
      </button>
    </>
  );
};

const BarField = ({ bar, lies }: { bar: Bar; lies: Lies }) => {
  const store = useShopStore();
  const show = useBenchState(showAsRead);
  const text = useShopState(({ proof }) => proof.texts[bar.key] ?? '');
  const { why } = readBar(text, show);
  const id = `proof-${bar.key}`;
  return (
    <div className="field">
      <label htmlFor={id}>{says.bar(bar.says, says.along[bar.along])}</label>
      <span className="value">
        <input
          id={id}
          type="text"
          autoComplete="off"
          spellCheck={false}
          inputMode={show.length === 'mm' ? 'decimal' : 'text'}
          data-kind="length"
          aria-invalid={why === undefined ? undefined : true}
          aria-describedby={why === undefined ? undefined : `${id}-says`}
          value={text}
          onChange={({ target }) =>
            // What is read belongs to the page as it lies here, whichever is looked at next.
            store.typeProof({ lies, texts: { ...store.getState().proof.texts, [bar.key]: target.value } })
          }
        />
        <span className="unit">{unitOf(readsField, show.length)}</span>
      </span>
      {why !== undefined && (
        <p className="says" id={`${id}-says`} role="alert">
          {why}
        </p>
      )}
    </div>
  );
};

/** What the bars of a print read, and what comes of it. */
const Proof = ({ printer, sheets, lies }: { printer: Known; sheets: readonly Sheet[]; lies: Lies }) => {
  const store = useShopStore();
  const show = useBenchState(showAsRead);
  const typed = useShopState(({ proof }) => proof);
  const [proved, setProved] = useState<Pick<PrintProof, 'kind' | 'says'> | undefined>();
  const [wrong, setWrong] = useState<readonly string[]>([]);
  const bars = barsOn(sheets, lies);
  const answer = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // It stands below the fold of a small screen.
    if (proved || wrong.length > 0) answer.current?.scrollIntoView?.({ block: 'nearest' });
  }, [proved, wrong]);
  const mm = (value: number) =>
    formatQuantity(value, 'length', show, { unit: true, digits: show.length === 'mm' ? 2 : 4 });

  const prove = () => {
    const read = bars.map((bar) => ({ bar, ...readBar(typed.texts[bar.key] ?? '', show) }));
    const bad = read.flatMap(({ bar, why }) => (why === undefined ? [] : [says.bar(bar.says, says.along[bar.along])]));
    setWrong(bad);
    setProved(undefined);
    if (bad.length > 0) return;
    const { shop } = store.getState();
    const printed = typed.isCorrected ? { across: printer.across, down: printer.down } : uncorrected;
    const reading: PrintReading = {
      paper: paperOf(shop, show.decimal),
      lies,
      printed,
      last: printer.readings,
      readings: read.flatMap(({ bar: { along, length }, reads }) =>
        reads === undefined ? [] : [{ along, bar: length, reads }],
      ),
    };
    const proof = provePrint(reading, mm, show.decimal);
    setProved(proof);
    if (proof.kind !== 'true' && proof.kind !== 'corrected') return;
    const correction = proof.kind === 'corrected' ? proof.correction : printed;
    const { id, name } = printer;
    store.change(withPrinter(shop, provedPrinter(reading, correction, { id, name, date: today(new Date()) })));
    store.typeProof({ texts: {}, isCorrected: true, lies });
  };

  return (
    <section aria-labelledby="proof-title">
      <h3 id="proof-title">{says.page}</h3>
      <div className="way">
        <label>
          <span>{says.lies}</span>
          <select
            value={lies}
            onChange={({ target }) => store.typeProof({ lies: target.value === 'lying' ? 'lying' : 'upright' })}
          >
            <option value="upright">{says.lying.upright}</option>
            <option value="lying">{says.lying.lying}</option>
          </select>
        </label>
        {isCorrected(printer) && (
          <label>
            <span>{says.printed}</span>
            <select
              value={typed.isCorrected ? 'corrected' : 'not'}
              onChange={({ target }) => store.typeProof({ isCorrected: target.value === 'corrected' })}
            >
              <option value="corrected">{says.printedAs.corrected(printer.name || says.unnamed)}</option>
              <option value="not">{says.printedAs.not}</option>
            </select>
          </label>
        )}
      </div>
      <h3>{says.bars}</h3>
      <p className="small">{says.barsSay}</p>
      <div className="shop-fields">
        {bars.map((bar) => (
          <BarField key={bar.key} bar={bar} lies={lies} />
        ))}
      </div>
      <button type="button" className="primary" onClick={prove}>
        {says.prove}
      </button>
      <div ref={answer} className="status" role="status" data-proof={proved?.kind}>
        {wrong.length > 0 && says.wrong(wrong)}
        {proved && (
          <p>
            <strong>{says.kinds[proved.kind]}</strong> {proved.says}
          </p>
        )}
      </div>
    </section>
  );
};

/** The printer: which one, what is known of it, and how its print is proved. */
export const Printer = ({ sheets, shown }: { sheets: readonly Sheet[]; shown: Sheet | undefined }) => {
  const printer = useShopState(({ shop: { printers } }) => printers.list.find(({ id }) => id === printers.chosen));
  const chosen = useShopState(({ proof }) => proof.lies);
  const lies = chosen ?? (shown === undefined ? 'upright' : liesOf(shown));
  return (
    <>
      <p>{says.about}</p>
      <Choice printer={printer} />
      {printer === undefined ? (
        <p>{says.first}</p>
      ) : (
        <>
          <About printer={printer} lies={lies} />
          <Proof key={printer.id} printer={printer} sheets={sheets} lies={lies} />
        </>
      )}
    </>
  );
};
