import { useEffect, useId, useRef, useState } from 'react';
import { decimalText } from '../../../../geometry/units.ts';
import { useBenchState } from '../../use-bench.ts';
import { words } from '../../words.ts';
import { card, leastPx, mostPx, readTyped, referencePx } from './screen.ts';

const says = words.measuring;
/** Px per 100 mm for one step of the slider. */
const fine = 0.5;

/** How large a px is on this screen, by a bank card held to the glass: the frame is made as large as the card. */
export const CardDialog = ({
  pxPerMm,
  onMeasured,
  onClose,
}: {
  /** As it was measured before. */
  pxPerMm: number | undefined;
  onMeasured: (pxPerMm: number) => void;
  onClose: () => void;
}) => {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const { mark } = useBenchState(({ decimals }) => decimals);
  const said = (px: number): string => decimalText(px * 100, 1, mark);
  const [text, setText] = useState(said(pxPerMm ?? referencePx));
  const [last, setLast] = useState(pxPerMm ?? referencePx);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const typed = readTyped(text);
  const type = (now: string) => {
    setText(now);
    setLast(readTyped(now) ?? last);
  };
  // On a narrow screen the card stands upright.
  const isUpright = window.innerWidth < 640;
  const [across, down] = isUpright ? [card.height, card.width] : [card.width, card.height];
  return (
    <dialog ref={dialog} className="how card" aria-labelledby={`${id}t`} onClose={onClose}>
      <h2 id={`${id}t`}>{says.card}</h2>
      <p>{says.cardSays(decimalText(card.width, 2, mark), decimalText(card.height, 2, mark))}</p>
      <div className="way">
        <label>
          {says.cardSlider}
          <input
            type="range"
            min={leastPx * 100}
            max={mostPx * 50}
            step={fine}
            value={last * 100}
            aria-valuetext={said(last)}
            onChange={({ target }) => type(said(Number(target.value) / 100))}
          />
        </label>
        <label>
          {says.cardTyped}
          <input
            type="text"
            inputMode="decimal"
            value={text}
            aria-invalid={typed === undefined}
            aria-describedby={`${id}s`}
            onChange={({ target }) => type(target.value)}
          />
        </label>
      </div>
      <p id={`${id}s`} role="status" className="says">
        {typed === undefined && says.cardRange(text, leastPx * 100, mostPx * 100)}
      </p>
      <div className="scroll">
        <svg className="card-frame" aria-hidden="true" width={across * last + 2} height={down * last + 2}>
          <rect x={1} y={1} width={across * last} height={down * last} rx={card.corner * last} />
        </svg>
      </div>
      <p className="small">{says.cardTrue}</p>
      <div className="way">
        <button
          type="button"
          className="primary"
          disabled={typed === undefined}
          onClick={() => typed && onMeasured(typed)}
        >
          {says.cardTake}
        </button>
        <button type="button" onClick={onClose}>
          {says.cardClose}
        </button>
      </div>
    </dialog>
  );
};
