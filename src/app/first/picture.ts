import type { Primitive } from '../../../geometry/drawing.ts';
import { pathData } from '../../../geometry/path-data.ts';
import { firstWords as words } from '../first-words.ts';
import type { Fitted } from '../sheet/fit.ts';
import type { PictureName } from '../sheet/laying.ts';
import { classOf, dashOf, edge, round, turnAbout, widthOf } from '../sheet/pen.ts';
import { element, text } from './markup.ts';

const primitive = (p: Primitive): string => {
  if (p.kind === 'stroke')
    return element('path', {
      'data-mark': p.id,
      d: pathData(p.path),
      class: classOf(p, false),
      'stroke-width': widthOf(p),
      'stroke-dasharray': dashOf(p),
    });
  const [x, y, size] = [round(p.at.x), round(p.at.y), round(p.size)];
  return element(
    'text',
    {
      'data-mark': p.id,
      x,
      y,
      'font-size': size,
      'text-anchor': p.anchor,
      'font-weight': p.bold ? 700 : 400,
      'stroke-width': size * edge,
      transform: p.turn === 0 ? undefined : turnAbout(p.turn, x, y),
    },
    text(p.text),
  );
};

interface Shown {
  readonly name: PictureName;
  readonly title: string;
  /** Its equivalent in words. */
  readonly says: string;
  /** As it is looked at. */
  readonly fitted: Fitted;
  /** Whether it is the one in sight. */
  readonly isShown: boolean;
}

/** A drawing that can be looked at more closely, as `Glass` puts it up. */
export const glass = ({ name, title, says, fitted, isShown }: Shown): string => {
  const { view, width, height, scale, primitives } = fitted;
  const [titleId, saysId] = [`${name}-title`, `${name}-says`];
  return element(
    'div',
    {
      class: 'glass',
      role: 'application',
      'aria-label': words.sheet.keys(title),
      tabindex: isShown ? 0 : -1,
      'data-scale': scale,
    },
    element(
      'svg',
      {
        role: 'group',
        class: 'drawing',
        'data-view': name,
        'aria-label': words.sheet.hands(title),
        width,
        height,
        viewBox: `${view.left} ${view.top} ${view.width} ${view.height}`,
      },
      element(
        'g',
        { role: 'img', 'aria-labelledby': `${titleId} ${saysId}` },
        element('title', { id: titleId }, text(title)),
        element('desc', { id: saysId }, text(says)),
        ...primitives.map(primitive),
      ),
    ),
  );
};
