import { refusedFields } from '../store.ts';
import { useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';

/** Which fields hold a text that cannot be used: what is drawn, and saved, is of the values before it. */
export const Refused = () => {
  const fields = useBenchState((state) => refusedFields(state).join('\n'));
  if (fields === '') return null;
  return <p className="stale">{words.sheet.refused(fields.split('\n'))}</p>;
};
