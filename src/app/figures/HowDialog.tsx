import { useEffect, useRef, useState } from 'react';
import { fieldAt } from '../../../geometry/fields.ts';
import type { Figure, Input } from '../../../geometry/figures/figure.ts';
import { figureAt } from '../../../geometry/figures/index.ts';
import { shortName } from '../../../geometry/names.ts';
import { goToField } from '../drawer/go-to-field.ts';
import { fieldId } from '../numbers/use-field.ts';
import type { Built } from '../store.ts';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import type { Asked } from './ask.ts';
import { figureText, inputText } from './figure-text.ts';
import { Signs } from './Signs.tsx';

const says = words.figures;

const titleOf = (figure: Figure, k: number, { job }: Built): string =>
  figure.per === 'string' ? `${figure.title}, ${shortName(job.strings.list[k]?.name ?? '')}` : figure.title;

/** An input's name: a way on, where it is a field or a figure itself. */
const Name = ({
  input,
  onAsk,
  onField,
}: {
  input: Input;
  onAsk: (id: string) => void;
  onField: (path: string) => void;
}) => {
  const { figure, path, name } = input;
  if (figure !== undefined && figureAt(figure) !== undefined)
    return (
      <button type="button" className="link" aria-label={says.askOf(name)} onClick={() => onAsk(figure)}>
        {name}
      </button>
    );
  if (path !== undefined && fieldAt(path) !== undefined && document.getElementById(fieldId(path)) !== null)
    return (
      <button type="button" className="link" aria-label={says.goTo(name)} onClick={() => onField(path)}>
        {name}
      </button>
    );
  return name;
};

/** How a figure came about: its formula, what went into it, and where the formula comes from. */
export const HowDialog = ({ asked, built, onClose }: { asked: Asked; built: Built; onClose: () => void }) => {
  const bench = useBench();
  const dialog = useRef<HTMLDialogElement>(null);
  const [trail, setTrail] = useState<readonly Asked[]>([asked]);
  const { id, k } = trail.at(-1) ?? asked;
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  // What led here is gone with the figure before: the focus goes to the head of the new one.
  // biome-ignore lint/correctness/useExhaustiveDependencies: with each figure anew
  useEffect(() => head.current?.focus(), [trail]);
  const figure = figureAt(id);
  if (figure === undefined) return null;
  const { job, design } = built;
  const how = figure.how(job, design, k);
  const toField = (path: string) => {
    dialog.current?.close();
    goToField(bench, path);
  };
  return (
    <dialog className="how" ref={dialog} aria-labelledby="how-title" onClose={onClose}>
      <h2 id="how-title" ref={head} tabIndex={-1}>
        {titleOf(figure, k, built)}
      </h2>
      <p className="result">{figureText(figure, built, k)}</p>
      <p>{figure.about}</p>
      <p className="formula">
        <Signs text={how.formula} />
      </p>
      <table className="figures">
        <thead>
          <tr>
            <th scope="col">{says.symbol}</th>
            <th scope="col">{says.meaning}</th>
            <th scope="col">{says.value}</th>
          </tr>
        </thead>
        <tbody>
          {how.inputs.map((input) => (
            <tr key={`${input.symbol} ${input.name}`}>
              <th scope="row">
                <Signs text={input.symbol} />
              </th>
              <td>
                <Name input={input} onAsk={(next) => setTrail([...trail, { id: next, k }])} onField={toField} />
              </td>
              <td>{inputText(input, job.show)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="small">{says.source(how.source)}</p>
      <p className="ends">
        {trail.length > 1 && (
          <button type="button" onClick={() => setTrail(trail.slice(0, -1))}>
            {says.back}
          </button>
        )}
        <button type="button" onClick={() => dialog.current?.close()}>
          {words.templates.close}
        </button>
      </p>
    </dialog>
  );
};
