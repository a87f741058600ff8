import { fewestFrets, fitScale } from '../../../geometry/instrument/scale.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { jobAsRead } from '../decimal.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { Fold } from './Fold.tsx';
import { List } from './List.tsx';
import { nextFret } from './measured.ts';

const says = words.numbers.frets;

/** The frets that were measured, the scale that they give and how sure it is. */
export const Frets = () => {
  const bench = useBench();
  const job = useBenchState(jobAsRead);
  const isHeld = useBenchState(({ drafts }) =>
    Object.entries(drafts).some(([path, draft]) => path.startsWith('guitar.measured.') && draft.says !== undefined),
  );
  const { guitar, show } = job;
  const { measured } = guitar;
  const fitted = fitScale(measured);
  const say = (value: number) => formatQuantity(value, 'length', show, { unit: true });
  const missOf = (miss: number | undefined) =>
    miss === undefined ? '' : formatQuantity(miss, 'length', show, { digits: show.length === 'mm' ? 2 : 3 });
  return (
    <Fold
      id="frets"
      title={says.label}
      heading="h4"
      about={says.about}
      state={measured.length === 0 ? says.none : says.count(measured.length)}
      isOpenAtFirst={measured.length > 0}
      isHeld={isHeld}
    >
      <List
        list="guitar.measured"
        proposed={{ fret: String(nextFret(job)) }}
        extra={{ head: fitted ? says.miss : '', cells: measured.map((_, k) => missOf(fitted?.misses[k])) }}
      />
      {fitted ? (
        <p className="fitted" role="status">
          {says.fitted(measured.length, say(fitted.scale), say(fitted.error))}
        </p>
      ) : (
        measured.length > 0 && <p className="fitted">{says.more(fewestFrets - measured.length)}</p>
      )}
      {fitted && guitar.scale !== 'frets' && (
        <button type="button" onClick={() => bench.put('guitar.scale', 'frets')}>
          {says.take}
        </button>
      )}
    </Fold>
  );
};
