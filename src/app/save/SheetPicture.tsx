import { memo } from 'react';
import type { Primitive, Stroke } from '../../../geometry/drawing.ts';
import { digits, pathData } from '../../../geometry/path-data.ts';
import type { Sheet } from '../../../templates/sheets.ts';
import { dashes, lineWidth } from '../../../templates/style.ts';

/** Strokes black on white as they come out of the printer; all of them larger alike, width, dashes and dots, so that none is narrower than `least` (mm) and lost on a coarse screen, and one kind still tells from another. */
export const PaperStrokes = memo(({ strokes, least }: { strokes: readonly Stroke[]; least: number }) => {
  const larger = Math.max(1, least / lineWidth.thin);
  return strokes.map(({ id, path, line, matter }) =>
    matter === 'ink' ? (
      <path key={id} d={pathData(path)} className="inked" />
    ) : (
      <path
        key={id}
        d={pathData(path)}
        strokeWidth={lineWidth[line] * larger}
        strokeDasharray={
          dashes[line].length === 0 ? undefined : dashes[line].map((part) => digits(part * larger)).join(' ')
        }
      />
    ),
  );
});

const isStroke = (primitive: Primitive): primitive is Stroke => primitive.kind === 'stroke';

interface Props {
  readonly sheet: Sheet;
  readonly title: string;
  /** Px for a mm; as wide as its room where this is left out. */
  readonly pxPerMm?: number;
}

/** A sheet as it is printed. */
export const SheetPicture = memo(({ sheet: { width, height, primitives }, title, pxPerMm }: Props) => (
  <svg
    className="on-paper"
    role="img"
    aria-label={title}
    viewBox={`0 0 ${width} ${height}`}
    {...(pxPerMm !== undefined && { width: width * pxPerMm, height: height * pxPerMm })}
  >
    <rect width={width} height={height} />
    <PaperStrokes strokes={primitives.filter(isStroke)} least={pxPerMm === undefined ? 0.3 : 0} />
    {primitives.map((p) =>
      p.kind === 'text' ? (
        <text
          key={p.id}
          x={p.at.x}
          y={p.at.y}
          fontSize={p.size}
          textAnchor={p.anchor}
          fontWeight={p.bold ? 700 : 400}
          transform={p.turn === 0 ? undefined : `rotate(${p.turn} ${p.at.x} ${p.at.y})`}
        >
          {p.text}
        </text>
      ) : null,
    )}
  </svg>
));
