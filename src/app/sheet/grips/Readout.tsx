import { useLayoutEffect, useRef } from 'react';
import type { Point } from '../../../../geometry/shape/types.ts';
import type { Grip } from '../../../../geometry/views/grips/index.ts';
import { coarse } from '../../media.ts';
import { useMedia } from '../../use-media.ts';
import type { Fitted } from '../fit.ts';
import { standsAt } from './on-drawing.ts';
import { readBeside, size } from './read-beside.ts';

/** What a grip holds, beside it. */
export const Readout = ({ grip, lines, fitted }: { grip: Grip; lines: readonly string[]; fitted: Fitted }) => {
  const isFinger = useMedia(coarse);
  const kept = useRef<Point>(undefined);
  const { frame, rows } = readBeside(grip, lines, fitted, { isFinger, kept: kept.current });
  useLayoutEffect(() => {
    kept.current = frame;
  });
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: nothing in it takes the focus; the grip says the same
    <g className="readout" transform={standsAt(grip.at, fitted.scale)} aria-hidden="true">
      <rect {...frame} />
      {rows.map(({ text, x, y }, k) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a row is the one in its place
        <text key={k} x={x} y={y} fontSize={size}>
          {text}
        </text>
      ))}
    </g>
  );
};
