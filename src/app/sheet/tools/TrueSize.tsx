import { decimalText } from '../../../../geometry/units.ts';
import { useBenchState } from '../../use-bench.ts';
import { words } from '../../words.ts';
import type { Screen } from './screen.ts';

/** That the bridge is as large as it is, by which measurement of the screen, and the way to another. */
export const TrueSize = ({ screen, onAgain }: { screen: Screen; onAgain: () => void }) => {
  const { mark } = useBenchState(({ decimals }) => decimals);
  return (
    <div className="panel">
      <p className="reading">{words.measuring.isTrue(decimalText(screen.pxPerMm * 100, 1, mark))}</p>
      <button type="button" onClick={onAgain}>
        {words.measuring.again}
      </button>
    </div>
  );
};
