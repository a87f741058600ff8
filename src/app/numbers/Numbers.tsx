import { Fragment } from 'react';
import { applies, type FieldGroup, fieldGroups } from '../../../geometry/fields.ts';
import { useBenchState } from '../use-bench.ts';
import { three, useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { Back } from './Back.tsx';
import { Field } from './Field.tsx';
import { Fold } from './Fold.tsx';
import { Frets } from './Frets.tsx';
import { usageOf } from './optional.ts';
import { Steps } from './Steps.tsx';

/** The bar shows the job's name, its date and the units; strings, set-up and ranges have places of their own, and the measured frets a list. */
const elsewhere = /^(name$|date$|show\.|strings\.(list|setbacks|finger)|setup\.|limits\.|guitar\.measured\.)/;

const groups: readonly FieldGroup[] = fieldGroups
  .map((group) => ({ ...group, fields: group.fields.filter(({ path }) => !elsewhere.test(path)) }))
  .filter(({ fields }) => fields.length > 0);

/** The fields of a group that count in this job. */
const Fields = ({ group }: { group: FieldGroup }) => {
  const job = useBenchState((state) => state.job);
  return group.fields
    .filter((field) => applies(field, job))
    .map((field) => (
      <Fragment key={field.path}>
        <Field field={field} />
        {field.path === 'guitar.scale' && <Frets />}
      </Fragment>
    ));
};

/** One group; folded away while not needed, where not every job needs it. */
const Group = ({ group }: { group: FieldGroup }) => {
  const { id, title } = group;
  const job = useBenchState((state) => state.job);
  const isHeld = useBenchState(({ drafts, solved }) => {
    const isHere = (path: string) => group.fields.some((field) => field.path === path);
    const refused = Object.entries(drafts).some(([path, { says }]) => says !== undefined && isHere(path));
    return refused || (!solved.ok && solved.problems.some(({ path }) => isHere(path)));
  });
  const usage = usageOf(job, group);
  if (usage === undefined) {
    return (
      <fieldset>
        <legend>{title}</legend>
        <Fields group={group} />
      </fieldset>
    );
  }
  return (
    <Fold
      id={id}
      title={title}
      about={words.numbers.folds[id]}
      state={usage.state}
      isOpenAtFirst={usage.isUsed}
      isHeld={isHeld}
    >
      <fieldset aria-label={title}>
        <Fields group={group} />
      </fieldset>
    </Fold>
  );
};

/** Every number of the job in the order in which it is taken on the bench. */
export const Numbers = () => {
  const hasThree = useMedia(three);
  return (
    <section className="numbers" aria-label={words.numbers.label}>
      {hasThree && <Steps />}
      <Back />
      <div className="groups">
        {groups.map((group) => (
          <Group key={group.id} group={group} />
        ))}
      </div>
    </section>
  );
};
