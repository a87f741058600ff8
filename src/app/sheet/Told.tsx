import { useEffect, useEffectEvent, useState } from 'react';
import { fieldAt, getAt } from '../../../geometry/fields.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { showAsRead } from '../decimal.ts';
import type { Built, State } from '../state.ts';
import { fieldTitle } from '../strings.ts';
import { stands } from '../typing.ts';
import { useBench, useBenchState } from '../use-bench.ts';
import { words } from '../words.ts';
import { useStill } from './use-still.ts';

/** A change has come to rest after this long, ms. */
const rest = 900;

/** The exposure at both outer strings, as far as the change moved it. */
const moved = (before: Built | undefined, { job, design }: Built): readonly string[] => {
  const outer = [design.strings[0], design.strings.at(-1)];
  return outer.flatMap((string) => {
    const was = before?.design.strings.find(({ id }) => id === string?.id);
    if (string === undefined || was === undefined) return [];
    const say = (value: number) => formatQuantity(value, 'length', job.show, { unit: true });
    return say(was.exposure) === say(string.exposure) ? [] : [`${string.name} ${say(string.exposure)}`];
  });
};

/** What the last step did, in a sentence: its number as it is now, and what came of it. Empty where nothing is to be said. */
export const tellStep = (before: Pick<State, 'job' | 'built' | 'past'>, now: State): string => {
  const { job, built, solved, past, future } = now;
  if (job === before.job) return '';
  const step = past.length >= before.past.length ? past.at(-1) : future.at(-1);
  const field = step && fieldAt(step.path);
  if (step === undefined || field === undefined) return step?.name ?? '';
  const number = words.hands.now(fieldTitle(job, step.path), stands(field, getAt(job, step.path), showAsRead(now)));
  if (!solved.ok || built === undefined) return words.hands.toldNotBuilt(number);
  return words.hands.told(number, moved(before.built, built));
};

/** Says what a change did once it rests, for who does not see the drawing; nothing on the way, and nothing while a text is refused. */
export const Told = () => {
  const bench = useBench();
  const job = useStill((state) => state.job);
  const isHeld = useBenchState(({ held }) => held !== undefined);
  const [before, setBefore] = useState(() => bench.getState());
  const [says, setSays] = useState('');
  const tell = useEffectEvent(() => {
    const now = bench.getState();
    setSays(tellStep(before, now));
    setBefore(now);
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change puts it off
  useEffect(() => {
    if (isHeld) return;
    const timer = setTimeout(tell, rest);
    return () => clearTimeout(timer);
  }, [job, isHeld]);
  return (
    <p className="unseen" role="status" data-told>
      {says}
    </p>
  );
};
