import type { ReactNode } from 'react';
import { figureAt } from '../../../geometry/figures/index.ts';
import type { Built } from '../store.ts';
import { FigureValue } from './Figure.tsx';

/** One number with its name, and what is said of it. */
export const Row = ({
  id,
  name,
  value,
  children,
}: {
  id?: string;
  name: string;
  value: ReactNode;
  children?: ReactNode;
}) => (
  <div className="fact">
    <dt>{name}</dt>
    <dd>
      <strong data-fact={id}>{value}</strong> {children && <span data-of={id}>{children}</span>}
    </dd>
  </div>
);

/** A figure of the whole job, by its id; nothing where it does not apply. */
export const Fact = ({ id, built, children }: { id: string; built: Built; children?: ReactNode }) => {
  const figure = figureAt(id);
  if (figure === undefined || figure.value(built.job, built.design, 0) === undefined) return null;
  return (
    <Row id={id} name={figure.title} value={<FigureValue figure={figure} built={built} />}>
      {children}
    </Row>
  );
};
