import { useBench, useBenchState } from './use-bench.ts';
import { words } from './words.ts';

/** What is to be said to the person, until they put it away. */
export const Notices = () => {
  const bench = useBench();
  const notices = useBenchState((state) => state.notices);
  return (
    <div className="notices" role="status" aria-label={words.notices.label}>
      {notices.map(({ id, says, details, fine }) => (
        <div className="notice" key={id} data-fine={fine}>
          <div>
            <p>{says}</p>
            {details.length > 0 && (
              <ul>
                {details.map((detail) => (
                  <li key={detail}>{detail}</li>
                ))}
              </ul>
            )}
          </div>
          <button type="button" onClick={() => bench.dismiss(id)}>
            {words.notices.close}
          </button>
        </div>
      ))}
    </div>
  );
};
