import { firstWords as words } from '../first-words.ts';
import { answersTo, drawer, roomy, three } from '../media.ts';
import { fitRoom, leastHeight } from '../sheet/fit.ts';
import { layingOf, usualHeights, viewNames } from '../sheet/laying.ts';
import { lookAt } from '../sheet/look.ts';
import { roomOn, seenHeight, textHeight } from '../sheet/room.ts';
import { sayViews } from '../sheet/says.ts';
import type { Built } from '../state.ts';
import { page, strip } from './page.ts';
import { glass } from './picture.ts';

/** The sheet's paper, px, and the least height that the three views on it need. */
export interface Paper {
  readonly width: number;
  readonly height: number;
  readonly least: number;
}

/**
 * Puts up the page with the drawing of a design and nothing else yet, just as `Room` would, which takes it over: markup alone, so that a drawing is there before all that works with it. Returns the
 * paper that it was drawn on.
 */
export const drawFirst = (app: HTMLElement, built: Built): Paper => {
  const [isRoomy, hasThree] = [answersTo(roomy), answersTo(three)];
  const text = textHeight(isRoomy);
  app.innerHTML = page(built, { three: hasThree, drawer: answersTo(drawer) });
  const paper = app.querySelector('.paper') as HTMLElement;
  const laid = layingOf('three', built, usualHeights, text);
  const least = hasThree ? leastHeight(laid) : 0;
  paper.style.setProperty('--least', `${least}px`);
  const { clientWidth: width, clientHeight: height } = paper;
  const room = roomOn({ width, height }, isRoomy, seenHeight());
  const says = sayViews(built);
  const draw = (laying: typeof laid, high: number) =>
    lookAt(fitRoom({ ...laying, room }), undefined, { ...laying, high });
  paper.innerHTML = hasThree
    ? glass({
        name: 'three',
        title: words.sheet.drawing,
        says: Object.values(says).join(' '),
        fitted: draw(laid, isRoomy ? height : 0),
        isShown: true,
      })
    : strip(
        viewNames.map((name, index) =>
          glass({
            name,
            title: words.sheet[name],
            says: says[name],
            fitted: draw(layingOf(name, built, usualHeights, text), 0),
            isShown: index === 0,
          }),
        ),
      );
  return { width, height, least };
};
