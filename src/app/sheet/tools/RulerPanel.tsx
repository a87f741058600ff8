import { formatQuantity } from '../../../../geometry/units.ts';
import { measured } from '../../../../geometry/views/ruler.ts';
import type { Built } from '../../store.ts';
import { useMedia } from '../../use-media.ts';
import { words } from '../../words.ts';
import { kindOf, next, type Ruled, spotOf } from './ruled.ts';

const says = words.measuring;
const keys = ['distance', 'across', 'along', 'height'] as const;

/** What the ruler reads, and what to do next. */
export const RulerPanel = ({
  built,
  ruled,
  onRuled,
}: {
  built: Built;
  ruled: Ruled;
  onRuled: (ruled: Ruled) => void;
}) => {
  const isTouch = useMedia('(pointer: coarse)');
  const { from, to, aim } = ruled;
  const length = (value: number) => formatQuantity(value, 'length', built.job.show, { unit: true });
  const second = to ?? (from && aim);
  const apart = from && second && measured(spotOf(from), spotOf(second));
  const parts = apart
    ? keys.flatMap((key) => (apart[key] === undefined ? [] : [says.apart[key](length(apart[key]))]))
    : [];
  const result = apart && parts.length === 0 ? says.noneShared : parts.join(' · ');
  const kinds = [from, second].flatMap((one) => (one ? [says.kinds[kindOf(one)]] : [])).join(' – ');
  return (
    <section className="panel" aria-label={words.sheet.ruler}>
      {/* Read out once both places are taken, and not while the second is looked for. */}
      <p role="status" className="reading" aria-live={to ? 'polite' : 'off'}>
        {from === undefined ? (isTouch ? says.rulerTap : says.rulerSays) : result || says.second}
        {from && <small>{` ${kinds}`}</small>}
      </p>
      <p role="status" className="unseen">
        {ruled.byKeys && aim && says.aimed(says.kinds[kindOf(aim)], from === undefined ? '' : result)}
      </p>
      <button type="button" disabled={!(aim ?? to ?? from)} onClick={() => onRuled(next({ ...ruled, aim: undefined }))}>
        {says.other}
      </button>
      <button type="button" disabled={from === undefined} onClick={() => onRuled({ of: built })}>
        {says.anew}
      </button>
    </section>
  );
};
