import { unsigned } from '../../../geometry/checks/say.ts';
import type { Figure } from '../../../geometry/figures/figure.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import { FigureValue } from './Figure.tsx';
import { bareText, figureText } from './figure-text.ts';

const { pastBy } = words.outcome;

/** How far a string can still be lowered; by how much its limit is passed, where it is. */
export const LifeValue = ({ figure, built, k }: { figure: Figure; built: Built; k: number }) => {
  const value = figure.value(built.job, built.design, k);
  if (typeof value !== 'number' || value >= 0) return <FigureValue figure={figure} built={built} k={k} isBare />;
  return (
    <FigureValue
      figure={figure}
      built={built}
      k={k}
      text={pastBy(unsigned(figureText(figure, built, k)))}
      shown={pastBy(unsigned(bareText(figure, built, k)))}
    />
  );
};
