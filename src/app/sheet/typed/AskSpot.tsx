import { memo, useContext } from 'react';
import { isSame } from '../../../../geometry/changes.ts';
import type { Text } from '../../../../geometry/drawing.ts';
import { figureAt } from '../../../../geometry/figures/index.ts';
import { shortName } from '../../../../geometry/names.ts';
import { AskContext, type Asked } from '../../figures/ask.ts';
import { useBenchState } from '../../use-bench.ts';
import { words } from '../../words.ts';
import { pressed } from './press.ts';
import { useSpotBox } from './spot-box.ts';

/** A figure on the drawing that can be asked how it came about. The keyboard's way to it is its row beside the drawing. */
export const AskSpot = memo(({ text, asked, scale }: { text: Text; asked: Asked; scale: number }) => {
  const ask = useContext(AskContext);
  const figure = figureAt(asked.id);
  const name = useBenchState(({ built }) => shortName(built?.job.strings.list[asked.k]?.name ?? ''));
  const { box, under } = useSpotBox(text, scale);
  return (
    figure && (
      <>
        {/* biome-ignore lint/a11y/useSemanticElements: an SVG has no button of its own */}
        <rect
          className="spot asks"
          data-ask={text.id}
          data-of={text.id}
          role="button"
          tabIndex={-1}
          aria-label={words.figures.ask(figure.title, figure.per === 'string' ? name : '', text.text)}
          {...box}
          onClick={pressed(() => ask(asked))}
        />
        <path className="under asks" d={under} />
      </>
    )
  );
}, isSame);
