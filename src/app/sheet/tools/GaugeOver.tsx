import { useMemo } from 'react';
import { layOut, sayWith } from '../../../../geometry/layout.ts';
import { moved } from '../../../../geometry/marks.ts';
import { gaugeLaid } from '../../../../geometry/views/gauge-laid.ts';
import { stretched } from '../../../../geometry/views/stretch.ts';
import type { Built } from '../../store.ts';
import type { Fitted } from '../fit.ts';
import { Primitives } from '../Primitives.tsx';
import type { GaugeLaid } from './gauge.ts';

/** How far apart the light is hatched, px for an em: closely, as it is narrow. */
const em = 5;

/** A gauge laid over the view from the tail, where the drawing has one. */
export const GaugeOver = ({ shown, built, laid }: { shown: Fitted; built: Built; laid: GaugeLaid }) => {
  const { view, scale, width, height } = shown;
  const place = shown.places.tail;
  const primitives = useMemo(() => {
    if (!laid.ok || place === undefined) return [];
    const marks = gaugeLaid(laid.surface, laid.rest, built.job.hand);
    const up = stretched({ id: 'gauge', title: '', marks }, place.heights).marks;
    return layOut(moved(up, place.x, place.y), { em: em / scale, say: sayWith(built.job.show) });
  }, [laid, place, built, scale]);
  return (
    <svg
      className="tool gauge"
      aria-hidden="true"
      width={width}
      height={height}
      viewBox={`${view.left} ${view.top} ${view.width} ${view.height}`}
    >
      <Primitives primitives={primitives} />
    </svg>
  );
};
