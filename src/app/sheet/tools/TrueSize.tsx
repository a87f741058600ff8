import { words } from '../../words.ts';
import type { Screen } from './screen.ts';

/** That the bridge is as large as it is, by which measurement of the screen, and the way to another. */
export const TrueSize = ({ screen, onAgain }: { screen: Screen; onAgain: () => void }) => (
  <div className="panel">
    <p className="reading">{words.measuring.isTrue((screen.pxPerMm * 100).toFixed(1))}</p>
    <button type="button" onClick={onAgain}>
      {words.measuring.again}
    </button>
  </div>
);
