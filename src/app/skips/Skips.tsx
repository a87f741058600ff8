import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { goToHead, heads, skipsId } from './heads.ts';

const { numbers, sheet, findings, alternatives, templates } = heads;

/** The ways past all else to where one works, first of all that the tab key goes to, and seen while it is there. */
export const Skips = () => {
  const bench = useBench();
  return (
    <nav className="skips" aria-label={words.skips.label}>
      <span aria-hidden="true">{words.skips.label}</span>
      {[numbers, sheet, findings, alternatives, templates].map(({ id, title }, k) => (
        <a
          key={id}
          id={k === 0 ? skipsId : undefined}
          href={`#${id}`}
          onClick={(event) => {
            // The address is the job's, where it came by a link.
            event.preventDefault();
            goToHead(bench, id);
          }}
        >
          {title}
        </a>
      ))}
    </nav>
  );
};
