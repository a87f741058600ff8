import { memo } from 'react';
import type { Primitive, Text } from '../../../geometry/drawing.ts';
import { pathData } from '../../../geometry/path-data.ts';
import { classOf, dashOf, edge, round, turnAbout, widthOf } from './pen.ts';

interface Drawn {
  readonly lit: boolean;
}

interface StrokeProps {
  readonly id: string;
  readonly d: string;
  readonly className: string;
  readonly width: number;
  readonly dash?: string;
  readonly alternative: string | undefined;
}

const StrokeLine = memo(({ id, d, className, width, dash, alternative }: StrokeProps) => (
  <>
    {/* An edge of ink under the alternative's colour, which alone would be too pale on the paper. */}
    {alternative !== undefined && <path data-casing={id} d={d} className="casing" data-alternative={alternative} />}
    <path
      data-mark={id}
      d={d}
      className={className}
      strokeWidth={width}
      strokeDasharray={dash}
      data-alternative={alternative}
    />
  </>
));

const TextLine = memo(
  ({
    id,
    x,
    y,
    size,
    anchor,
    turn,
    bold,
    text,
    lit,
    alternative,
  }: Omit<Text, 'kind' | 'at'> & { x: number; y: number } & Drawn) => (
    <text
      data-mark={id}
      x={x}
      y={y}
      fontSize={size}
      textAnchor={anchor}
      fontWeight={bold ? 700 : 400}
      strokeWidth={size * edge}
      transform={turn === 0 ? undefined : turnAbout(turn, x, y)}
      className={lit ? 'lit' : undefined}
      data-alternative={alternative}
    >
      {text}
    </text>
  ),
);

/** A drawing's strokes and texts as SVG elements; only those that changed are rendered anew. */
export const Primitives = memo(
  ({ primitives, isLit = () => false }: { primitives: readonly Primitive[]; isLit?: (p: Primitive) => boolean }) =>
    primitives.map((p) => {
      const lit = isLit(p);
      if (p.kind === 'stroke') {
        const dash = dashOf(p);
        return (
          <StrokeLine
            key={p.id}
            id={p.id}
            d={pathData(p.path)}
            className={classOf(p, lit)}
            width={widthOf(p)}
            alternative={p.alternative}
            {...(dash === undefined ? {} : { dash })}
          />
        );
      }
      return (
        <TextLine
          key={p.id}
          id={p.id}
          x={round(p.at.x)}
          y={round(p.at.y)}
          size={round(p.size)}
          anchor={p.anchor}
          turn={p.turn}
          bold={p.bold}
          text={p.text}
          lit={lit}
          {...(p.alternative !== undefined && { alternative: p.alternative })}
        />
      );
    }),
);
