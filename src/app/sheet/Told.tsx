import { useEffect, useEffectEvent, useState } from 'react';
import type { Level } from '../../../geometry/checks/check.ts';
import { fieldAt, getAt } from '../../../geometry/fields.ts';
import { formatQuantity } from '../../../geometry/units.ts';
import { showAsRead } from '../decimal.ts';
import { findingsOf } from '../findings/findings-of.ts';
import type { Built, State } from '../state.ts';
import { barOf } from '../store.ts';
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

/** The checks that the change brought to another level, worst first: those of each level by their titles. */
const turned = (before: Built | undefined, now: Built): Readonly<Record<Level, readonly string[]>> => {
  const was = new Map(before && findingsOf(before).map(({ check, level }) => [check, level]));
  const others = findingsOf(now).filter(({ check, level }) => level !== (was.get(check) ?? 'right'));
  const of = (wanted: Level) => others.filter(({ level }) => level === wanted).map(({ title }) => title);
  return { wrong: of('wrong'), doubtful: of('doubtful'), right: of('right') };
};

/** What the last step did: its number as it is now, or its name; then what came of it, the exposure and the checks that it brought to another level. Empty where nothing is to be said. */
export const tellStep = (before: Pick<State, 'id' | 'job' | 'built' | 'past'>, now: State): string => {
  const { job, built, solved, past, future } = now;
  if (job === before.job) return '';
  const isBack = past.length < before.past.length;
  const step = isBack ? future.at(-1) : past.at(-1);
  if (step === undefined) return '';
  const field = fieldAt(step.path);
  const value = field && getAt(job, step.path);
  const said =
    field && value !== undefined
      ? words.hands.now(fieldTitle(job, step.path), stands(field, value, showAsRead(now)))
      : isBack
        ? words.hands.takenBack(step.name)
        : step.name;
  // Another job is not what became of this one; names and units move nothing.
  if (now.id !== before.id || field?.kind === 'text' || step.path.startsWith('show.')) return said;
  if (!solved.ok || built === undefined) return words.hands.toldNotBuilt(said);
  return words.hands.told(said, moved(before.built, built), turned(before.built, built));
};

/** What keeps the number that was dragged or stepped last from going on, behind what its step said of it, or behind the number itself. */
const tellBar = (said: string, before: State, now: State): string => {
  const { barred, job } = now;
  const why = barred === before.barred ? undefined : barOf(now, barred?.path);
  if (barred === undefined || why === undefined) return said;
  const field = fieldAt(barred.path);
  const value = field && stands(field, getAt(job, barred.path), showAsRead(now));
  const number = said || `${words.hands.now(fieldTitle(job, barred.path), value ?? '')}.`;
  return `${number} ${words.hands.barred(why)}`;
};

/** Says what a change did once it rests, for who does not see the drawing; nothing on the way, and nothing while a text is refused. */
export const Told = () => {
  const bench = useBench();
  const job = useStill((state) => state.job);
  const barred = useStill((state) => state.barred);
  const isHeld = useBenchState(({ held }) => held !== undefined);
  const [before, setBefore] = useState(() => bench.getState());
  const [says, setSays] = useState('');
  const tell = useEffectEvent(() => {
    const now = bench.getState();
    setSays(tellBar(tellStep(before, now), before, now));
    setBefore(now);
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: each change puts it off
  useEffect(() => {
    if (isHeld) return;
    const timer = setTimeout(tell, rest);
    return () => clearTimeout(timer);
  }, [job, barred, isHeld]);
  return (
    <p className="unseen" role="status" data-told>
      {says}
    </p>
  );
};
