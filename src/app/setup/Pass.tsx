import { type FieldInfo, fieldAt } from '../../../geometry/fields.ts';
import type { Job } from '../../../geometry/job.ts';
import { shortName } from '../../../geometry/names.ts';
import { wantedAt } from '../../../geometry/saddle/heights.ts';
import type { PassOutcome, PassString } from '../../../geometry/saddle/setup.ts';
import { Cell, SaysRow } from '../numbers/Cell.tsx';
import { Fold } from '../numbers/Fold.tsx';
import { fieldId, saysId, useField } from '../numbers/use-field.ts';
import { fieldTitle } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { fine, passSays, tooLow } from './pass-says.ts';

const { heads, ...says } = words.setUp;
type Reading = Job['setup']['log'][number];

export const fieldAtReading = (pass: string, string: string, key: 'action' | 'cents'): FieldInfo =>
  fieldAt(`setup.log.${pass}.readings.${string}.${key}`) as FieldInfo;

/** What was done before this reading, in the person's own words. */
const Note = ({ pass }: { pass: string }) => {
  const field = fieldAt(`setup.log.${pass}.note`) as FieldInfo;
  const title = useBenchState((state) => fieldTitle(state.job, field.path));
  const { says: refused, focusProps, textProps } = useField(field);
  return (
    <p className="note">
      <label htmlFor={fieldId(field.path)}>{says.note}</label>
      <input {...focusProps} {...textProps} aria-label={title} data-kind="text" />
      {refused !== undefined && (
        <span className="says" id={saysId(field.path)} role="alert">
          {refused}
        </span>
      )}
    </p>
  );
};

interface RowProps {
  readonly pass: string;
  /** The string's place, from 0. */
  readonly k: number;
  readonly of: PassString | undefined;
  /** Whether the line through the outer strings can be cut: nothing is put on by cutting. */
  readonly isCut: boolean;
}

/** One string of a reading: what is typed, and what comes of it. */
const Row = ({ pass, k, of, isCut }: RowProps) => {
  const job = useBenchState((state) => state.job);
  const string = job.strings.list[k] as Job['strings']['list'][number];
  const fields = (['action', 'cents'] as const).map((key) => fieldAtReading(pass, string.id, key));
  const length = (value: number | undefined) => (value === undefined ? '' : fine(value, job.show));
  return (
    <>
      <tr data-reckoned={of !== undefined && !of.isMeasured}>
        <th scope="row">{shortName(string.name)}</th>
        <td>{length(wantedAt(job, k).action)}</td>
        {fields.map((field) => (
          <td key={field.path}>
            <Cell field={field} />
          </td>
        ))}
        <td className="figure">{length(of?.takeOff)}</td>
        <td className="figure">{isCut ? length(of?.afterLine) : ''}</td>
        <td className="figure">{length(of?.afterSquare)}</td>
        <td>{length(of?.fromFront)}</td>
        <td>{of?.shift === 0 ? '' : length(of?.shift)}</td>
        <td className="figure">{length(of?.life.atFret12)}</td>
        <td className="until">{of && says.limits[of.life.limit]}</td>
      </tr>
      {fields.map(({ path }) => (
        <SaysRow key={path} path={path} columns={11} />
      ))}
    </>
  );
};

interface PassProps {
  readonly pass: Reading;
  /** Its number, from 1. */
  readonly n: number;
  readonly isLast: boolean;
  /** What comes of it; undefined while nothing can be built. */
  readonly outcome: PassOutcome | undefined;
  readonly onRemove: () => void;
}

/** One reading of the strung guitar; the earlier ones are folded away. */
export const Pass = ({ pass, n, isLast, outcome, onRemove }: PassProps) => {
  const bench = useBench();
  const strings = useBenchState((state) => state.job.strings.list);
  const show = useBenchState((state) => state.job.show);
  const isHeld = useBenchState(({ drafts }) =>
    Object.entries(drafts).some(([path, draft]) => path.startsWith(`setup.log.${pass.id}.`) && draft.says),
  );
  const sentences = outcome === undefined ? [says.none] : passSays(outcome, show);
  const advice = outcome?.ok ? outcome.advice : undefined;
  const isCut = advice !== undefined && tooLow(advice).length === 0;
  const unit = words.numbers.unit[show.length];
  const columns = [
    [heads.wanted, unit],
    [heads.action, unit],
    [heads.cents, words.numbers.kindUnit.cents],
    [heads.takeOff, unit],
    [heads.afterLine, unit],
    [heads.afterSquare, unit],
    [heads.fromFront, unit],
    [heads.shift, unit],
    [heads.life, unit],
    [heads.limit, ''],
  ] as const;
  return (
    <Fold
      id={`setup.log.${pass.id}`}
      title={says.title(n)}
      about={pass.note}
      state={sentences[0] ?? ''}
      isOpenAtFirst={isLast}
      isHeld={isHeld}
    >
      <Note pass={pass.id} />
      <div className="sentences" role="status">
        {sentences.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <section
        className="scroll"
        aria-label={says.scroll(n)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
        tabIndex={0}
      >
        <table className="figures">
          <thead>
            <tr>
              <th scope="col">
                <span className="unseen">{heads.string}</span>
              </th>
              {columns.map(([head, of]) => (
                <th key={head} scope="col">
                  {head} {of && <small>{of}</small>}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {strings.map(({ id }, k) => (
              <Row key={id} pass={pass.id} k={k} of={advice?.strings.find((one) => one.id === id)} isCut={isCut} />
            ))}
          </tbody>
        </table>
      </section>
      {advice?.strings.some(({ isMeasured }) => !isMeasured) && <p className="small">{says.reckoned}</p>}
      <p className="add">
        <button
          type="button"
          onClick={() => {
            bench.removePass(pass.id);
            onRemove();
          }}
        >
          {says.remove}
        </button>
      </p>
    </Fold>
  );
};
