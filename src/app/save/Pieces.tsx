import type { Stroke } from '../../../geometry/drawing.ts';
import { boundsOfPrimitives } from '../../../geometry/layout.ts';
import { copiesOf, pieces, piecesOf } from '../../../templates/pieces/index.ts';
import type { Piece } from '../../../templates/pieces/piece.ts';
import type { Shop } from '../../../templates/shop/index.ts';
import type { Built } from '../store.ts';
import { words } from '../words.ts';
import { PaperStrokes } from './SheetPicture.tsx';
import { useShopState, useShopStore } from './shop-store.ts';

const says = words.templates;
const mostCopies = 99;

/** How wide a small picture is drawn, mm on the drawing's own scale for a mm of the picture's lines. */
const pictureWidth = 40;

const Small = ({ strokes, title }: { strokes: readonly Stroke[] | undefined; title: string }) => {
  if (strokes === undefined || strokes.length === 0) return <span className="small-piece" />;
  const { minX, minY, maxX, maxY } = boundsOfPrimitives(strokes);
  const [width, height] = [Math.max(1, maxX - minX), Math.max(1, maxY - minY)];
  const pad = Math.max(width, height) / 40;
  return (
    <svg
      className="small-piece on-paper"
      role="img"
      aria-label={says.picture(title)}
      viewBox={`${minX - pad} ${minY - pad} ${width + 2 * pad} ${height + 2 * pad}`}
    >
      <PaperStrokes strokes={strokes} least={Math.max(width, height) / pictureWidth / 3} />
    </svg>
  );
};

interface RowProps {
  readonly piece: Piece;
  readonly copies: number;
  readonly strokes: readonly Stroke[] | undefined;
  readonly isBusy: boolean;
  readonly onCopies: (copies: number) => void;
  readonly onSvg: () => void;
  readonly onCut: () => void;
}

const Row = ({ piece, copies, strokes, isBusy, onCopies, onSvg, onCut }: RowProps) => {
  const { title, use, faceUp, ownPage } = piece;
  return (
    <li data-off={copies === 0}>
      <Small strokes={strokes} title={title} />
      <div className="what">
        <label className="tick">
          <input type="checkbox" checked={copies > 0} onChange={({ target }) => onCopies(target.checked ? 1 : 0)} />
          <strong>{title}</strong>
        </label>
        <p>
          {use} {ownPage !== true && <span className="small">{says.faceUp(faceUp)}</span>}
        </p>
      </div>
      <div className="acts">
        {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would be told of as a form of its own in each row. */}
        <span className="copies together" role="group" aria-label={says.copies(title)}>
          <button
            type="button"
            aria-label={says.fewer(title)}
            aria-disabled={copies === 0}
            onClick={() => copies > 0 && onCopies(copies - 1)}
          >
            −
          </button>
          <output>{copies}</output>
          <button
            type="button"
            aria-label={says.more(title)}
            aria-disabled={copies >= mostCopies}
            onClick={() => copies < mostCopies && onCopies(copies + 1)}
          >
            +
          </button>
        </span>
        {ownPage !== true && (
          <>
            <button type="button" disabled={isBusy} aria-label={says.svgPieceOf(title)} onClick={onSvg}>
              {says.svgPiece}
            </button>
            <button type="button" disabled={isBusy} aria-label={says.cutPieceOf(title)} onClick={onCut}>
              {says.cutPiece}
            </button>
          </>
        )}
      </div>
    </li>
  );
};

interface Props {
  readonly built: Built;
  readonly pictures: Readonly<Record<string, readonly Stroke[]>>;
  readonly isBusy: boolean;
  readonly onSvg: (piece: Piece) => void;
  readonly onCut: (piece: Piece) => void;
  readonly onViews: () => void;
}

/** Every template, which are printed and how often, and each as a file of its own. */
export const Pieces = ({ built, pictures, isBusy, onSvg, onCut, onViews }: Props) => {
  const store = useShopStore();
  const shop = useShopState((state) => state.shop);
  const here = piecesOf(built.job);
  const put = (copies: Shop['copies']) => store.putCopies({ ...shop.copies, ...copies });
  const all = (count: (piece: Piece) => number) =>
    put(Object.fromEntries(here.map((piece) => [piece.id, count(piece)] as const)));
  const ticked = here.filter((piece) => copiesOf(piece, shop) > 0).length;
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: three buttons, no form. */}
      <div className="acts" role="group" aria-label={says.set}>
        <button type="button" onClick={() => store.putCopies({})}>
          {says.usualSet}
        </button>
        <button type="button" onClick={() => all((piece) => Math.max(1, copiesOf(piece, shop)))}>
          {says.all}
        </button>
        <button type="button" onClick={() => all(() => 0)}>
          {says.none}
        </button>
        <span>{says.ticked(ticked, here.length)}</span>
      </div>
      <ul className="pieces">
        {here.map((piece) => (
          <Row
            key={piece.id}
            piece={piece}
            copies={copiesOf(piece, shop)}
            strokes={pictures[piece.id]}
            isBusy={isBusy}
            onCopies={(copies) => put({ [piece.id]: copies })}
            onSvg={() => onSvg(piece)}
            onCut={() => onCut(piece)}
          />
        ))}
        <li>
          <div className="what">
            <p>{says.svgViewsSays}</p>
          </div>
          <button type="button" disabled={isBusy} onClick={onViews}>
            {says.svgViews}
          </button>
        </li>
      </ul>
      {here.length < pieces.length && (
        <>
          <h3>{says.notHere}</h3>
          <ul className="not-here">
            {pieces.flatMap(({ id, title, whyNot }) => {
              const why = whyNot?.(built.job);
              return why === undefined
                ? []
                : [
                    <li key={id}>
                      <strong>{title}</strong> {why}
                    </li>,
                  ];
            })}
          </ul>
        </>
      )}
    </>
  );
};
