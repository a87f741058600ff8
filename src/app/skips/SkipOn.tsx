import type { MouseEvent } from 'react';
import { useBench } from '../use-bench.ts';
import { words } from '../words.ts';
import { goToHead, type Head, skipsId } from './heads.ts';

/** At the head of what has many stops for the tab key: the way past it to what comes next, and back to the ways to all parts of the page. Seen while it has the focus. */
export const SkipOn = ({ next }: { next?: Head | undefined }) => {
  const bench = useBench();
  const onElsewhere = (event: MouseEvent) => {
    event.preventDefault();
    document.getElementById(skipsId)?.focus();
  };
  return (
    <p className="skip-on">
      {next && (
        <a
          href={`#${next.id}`}
          onClick={(event) => {
            event.preventDefault();
            goToHead(bench, next.id);
          }}
        >
          {words.skips.on(next.title)}
        </a>
      )}
      <a href={`#${skipsId}`} onClick={onElsewhere}>
        {words.skips.elsewhere}
      </a>
    </p>
  );
};
