import { useContext } from 'react';
import type { Figure } from '../../../geometry/figures/figure.ts';
import { shortName } from '../../../geometry/names.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import { AskContext } from './ask.ts';
import { bareText, figureText } from './figure-text.ts';

/** A figure's value, which can be asked “how?”. */
export const FigureValue = ({
  figure,
  built,
  k = 0,
  isBare = false,
  text: own,
  shown,
}: {
  figure: Figure;
  built: Built;
  k?: number;
  isBare?: boolean;
  /** What stands there in place of the plain value. */
  text?: string;
  /** What is seen of it, where that is less than what is read out. */
  shown?: string;
}) => {
  const ask = useContext(AskContext);
  const of = figure.per === 'string' ? shortName(built.job.strings.list[k]?.name ?? '') : '';
  const text = own ?? figureText(figure, built, k);
  return (
    <button
      type="button"
      className="ask"
      title={words.figures.how}
      aria-label={words.figures.ask(figure.title, of, text)}
      onClick={() => ask({ id: figure.id, k })}
    >
      {shown ?? (isBare ? bareText(figure, built, k) : text)}
    </button>
  );
};
