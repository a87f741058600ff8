import type { KeyboardEvent } from 'react';
import { unsigned } from '../../../geometry/checks/say.ts';
import { type FieldInfo, fieldAt } from '../../../geometry/fields.ts';
import { figureAt } from '../../../geometry/figures/index.ts';
import type { Job } from '../../../geometry/job.ts';
import { shortName } from '../../../geometry/names.ts';
import { wantedAt } from '../../../geometry/saddle/heights.ts';
import type { PassOutcome, PassString } from '../../../geometry/saddle/setup.ts';
import { jobAsRead, showAsRead } from '../decimal.ts';
import { Fact } from '../figures/Fact.tsx';
import { FigureValue } from '../figures/Figure.tsx';
import { Cell, SaysRow } from '../numbers/Cell.tsx';
import { Fold } from '../numbers/Fold.tsx';
import { fieldId, saysId, useField } from '../numbers/use-field.ts';
import type { Built } from '../store.ts';
import { fieldTitle } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { fine, moveNotes, moveText, passSays, tooLow } from './pass-says.ts';

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
  /** Where its numbers can be asked how they came about: the numbers that the last complete reading is of. */
  readonly asked: Built | undefined;
}

/** One string of a reading: what is typed, and what comes of it. */
const Row = ({ pass, k, of, isCut, asked }: RowProps) => {
  const job = useBenchState(jobAsRead);
  const string = job.strings.list[k] as Job['strings']['list'][number];
  const fields = (['action', 'cents'] as const).map((key) => fieldAtReading(pass, string.id, key));
  const [action, cents] = fields as [FieldInfo, FieldInfo];
  const at = asked?.design.strings.findIndex(({ id }) => id === string.id) ?? -1;
  const length = (value: number | undefined) => (value === undefined ? '' : fine(value, job.show));
  const figure = (id: string, value: number | undefined) => {
    const known = figureAt(id);
    if (asked === undefined || at < 0 || known === undefined || value === undefined) return length(value);
    return <FigureValue figure={known} built={asked} k={at} form="bare" />;
  };
  const life = () => {
    const known = figureAt('lifeAfterLine');
    const left = of?.life.atFret12;
    if (asked !== undefined && at >= 0 && known !== undefined)
      return <FigureValue figure={known} built={asked} k={at} form="life" />;
    return left !== undefined && left < 0 ? words.outcome.pastBy(unsigned(length(left))) : length(left);
  };
  return (
    <>
      <tr data-reckoned={of !== undefined && !of.isMeasured}>
        <th scope="row">{shortName(string.name)}</th>
        <td>
          <Cell field={action} />
        </td>
        <td className="figure">{figure('takeOff', of?.takeOff)}</td>
        <td>
          <Cell field={cents} />
        </td>
        <td>{figure('newBreakPoint', of?.fromFront)}</td>
        <td className="moves">{of && moveText(of, job.show)}</td>
        <td className="figure">{figure('passAction', of?.action)}</td>
        <td>{length(wantedAt(job, k).action)}</td>
        <td className="figure">{isCut ? figure('afterLine', of?.afterLine) : ''}</td>
        <td className="figure">{figure('afterSquare', of?.afterSquare)}</td>
        <td className="figure life">{of && life()}</td>
        <td className="until">{of && words.outcome.limits[of.life.limit]}</td>
      </tr>
      {fields.map(({ path }) => (
        <SaysRow key={path} path={path} columns={12} />
      ))}
    </>
  );
};

/** Enter goes on to the same reading of the next string: between them stand figures that can be pressed. */
const toNext = (event: KeyboardEvent<HTMLTableElement>) => {
  const { target, currentTarget, key } = event;
  if (key !== 'Enter' || !(target instanceof HTMLInputElement)) return;
  const kind = target.dataset.kind;
  const inputs = [...currentTarget.querySelectorAll<HTMLInputElement>(`input[data-kind="${kind}"]`)];
  const next = inputs[inputs.indexOf(target) + 1];
  next?.focus();
  next?.select();
};

interface PassProps {
  readonly pass: Reading;
  /** Its number, from 1. */
  readonly n: number;
  readonly isLast: boolean;
  /** The numbers that it is of, where it is the last complete one: its own can be asked how they came about. */
  readonly asked: Built | undefined;
  /** What comes of it; undefined while nothing can be built. */
  readonly outcome: PassOutcome | undefined;
  readonly onRemove: () => void;
}

/** One reading of the strung guitar; the earlier ones are folded away. */
export const Pass = ({ pass, n, isLast, asked, outcome, onRemove }: PassProps) => {
  const bench = useBench();
  const strings = useBenchState((state) => state.job.strings.list);
  const show = useBenchState(showAsRead);
  const isHeld = useBenchState(({ drafts }) =>
    Object.entries(drafts).some(([path, draft]) => path.startsWith(`setup.log.${pass.id}.`) && draft.says),
  );
  const sentences = outcome === undefined ? [says.none] : passSays(outcome, show);
  const advice = outcome?.ok ? outcome.advice : undefined;
  const isCut = advice !== undefined && tooLow(advice).length === 0;
  const unit = words.numbers.unit[show.length];
  const columns = [
    [heads.action, unit],
    [heads.takeOff, unit],
    [heads.cents, words.numbers.kindUnit.cents],
    [heads.fromFront, unit],
    [heads.shift, unit],
    [heads.now, unit],
    [heads.wanted, unit],
    [heads.afterLine, unit],
    [heads.afterSquare, unit],
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
      {asked !== undefined && isCut && !advice.isThere && (
        <dl>
          {['takeOffBass', 'takeOffTreble', 'takeOffSquare'].map((id) => (
            <Fact key={id} id={id} built={asked} />
          ))}
        </dl>
      )}
      <section
        className="scroll"
        aria-label={says.scroll(n)}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by the keyboard
        tabIndex={0}
      >
        <table className="figures" onKeyDown={toNext}>
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
              <Row
                key={id}
                pass={pass.id}
                k={k}
                of={advice?.strings.find((one) => one.id === id)}
                isCut={isCut}
                asked={asked}
              />
            ))}
          </tbody>
        </table>
      </section>
      {advice && moveNotes(advice).map((note) => <p key={note}>{note}</p>)}
      {advice?.strings.some(({ isMeasured }) => !isMeasured) && <p className="small">{says.reckoned}</p>}
      <p className="small">{says.enter}</p>
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
