import { refusedFields } from '../store.ts';
import { useBenchState } from '../use-bench.ts';

/** Which fields hold a text that cannot be used, and what is drawn and saved instead. */
export const Refused = () => {
  const fields = useBenchState((state) => refusedFields(state).join('\n'));
  if (fields === '') return null;
  return (
    <div className="stale">
      {fields.split('\n').map((field) => (
        <p key={field}>{field}</p>
      ))}
    </div>
  );
};
