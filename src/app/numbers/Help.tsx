import { useEffect } from 'react';
import { fieldAt, usualText } from '../../../geometry/fields.ts';
import { jobAsRead } from '../decimal.ts';
import { WhatIf } from '../figures/WhatIf.tsx';
import { isDemo } from '../first-look.ts';
import { roomy } from '../media.ts';
import { neckOf } from '../outcome/neck-of.ts';
import { useStill } from '../sheet/use-still.ts';
import { fieldTitle } from '../strings.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { SketchOf } from './SketchOf.tsx';
import { helpId } from './use-field.ts';

/** Fields that no string hangs on: the ranges of the checks, and the set-up's readings. */
const movesNothing = /^(limits|setup)\./;

/** What the field in focus means and where it is taken; while none is, what this page is. Its height stays, so that it never moves anything. */
export const Help = () => {
  const path = useBenchState((state) => state.lastFocus);
  const job = useStill(jobAsRead);
  const isExample = useBenchState(isDemo);
  const field = path === undefined ? undefined : fieldAt(path);
  const bench = useBench();
  // There it has a height of its own, and scrolls.
  const isRoomy = useMedia(roomy);
  // Back to what this page is, once the focus has left the numbers and this; a window that is left for another one keeps what it said.
  useEffect(() => {
    const onOut = ({ relatedTarget: to }: FocusEvent) => {
      const stays = to instanceof Element && to.closest('.numbers, .strings, .setup, .help') !== null;
      if (!stays && document.hasFocus()) bench.rest();
    };
    document.addEventListener('focusout', onOut);
    return () => document.removeEventListener('focusout', onOut);
  }, [bench]);
  const usual = field && usualText(field, job.show);
  return (
    <div className="help" id={helpId} tabIndex={isRoomy ? 0 : undefined}>
      {field && path ? (
        <>
          <SketchOf path={path} job={job} />
          <strong>{fieldTitle(job, path)}</strong> <span>{field.help}</span>{' '}
          {usual && <span className="usual">{words.numbers.usual(usual)}</span>}{' '}
          {path === 'bridge.thickness' && <span>{neckOf(job)?.says}</span>}{' '}
          {!movesNothing.test(path) && <WhatIf path={path} job={job} />}
        </>
      ) : (
        [...(isExample ? [words.introDemo] : []), ...words.intro].map((sentence) => (
          <span key={sentence}>{sentence} </span>
        ))
      )}
    </div>
  );
};
