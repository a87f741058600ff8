import { useContext } from 'react';
import type { Figure } from '../../../geometry/figures/figure.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import { AskContext } from './ask.ts';
import { type Form, figureSays } from './figure-text.ts';

/** A figure's value, which can be asked “how?”. */
export const FigureValue = ({
  figure,
  built,
  k = 0,
  form = 'whole',
}: {
  figure: Figure;
  built: Built;
  k?: number;
  form?: Form;
}) => {
  const ask = useContext(AskContext);
  const { seen, label } = figureSays(figure, built, k, form);
  return (
    <button
      type="button"
      className="ask"
      data-figure={`${figure.id} ${k} ${form}`}
      title={words.figures.how}
      aria-label={label}
      onClick={() => ask({ id: figure.id, k })}
    >
      {seen}
    </button>
  );
};
