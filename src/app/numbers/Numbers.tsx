import { Fragment } from 'react';
import { applies, type FieldGroup, fieldGroups } from '../../../geometry/fields.ts';
import { jobAsRead } from '../decimal.ts';
import { drawer } from '../media.ts';
import { Resting } from '../Resting.tsx';
import { groupId, heads } from '../skips/heads.ts';
import { SkipOn } from '../skips/SkipOn.tsx';
import { useBenchState } from '../use-bench.ts';
import { useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { Field } from './Field.tsx';
import { Fold } from './Fold.tsx';
import { Frets } from './Frets.tsx';
import { List } from './List.tsx';
import type { ListPath } from './lists.ts';
import { usageOf } from './optional.ts';

/** The bar shows the job's name, its date and the units; strings, set-up and ranges have places of their own, and what stands in lists. */
const elsewhere =
  /^(name$|date$|show\.(length|radius|gauge)$|strings\.(list|setbacks|finger|courses|pairGap)|setup\.|limits\.|(guitar\.measured|bridge\.points|top\.(holes|rises|braces))\.)/;

const groups: readonly FieldGroup[] = fieldGroups
  .map((group) => ({ ...group, fields: group.fields.filter(({ path }) => !elsewhere.test(path)) }))
  .filter(({ fields }) => fields.length > 0);

/** The lists that stand at the end of a group. */
const listsOf: Readonly<Record<string, readonly ListPath[]>> = { scar: ['top.holes', 'top.rises', 'top.braces'] };

/** A list under its name. */
const Listed = ({ list }: { list: ListPath }) => (
  <>
    <h4>{words.numbers.lists[list].label}</h4>
    <List list={list} />
  </>
);

/** The fields of a group that count in this job. */
const Fields = ({ group }: { group: FieldGroup }) => {
  const job = useBenchState((state) => state.job);
  return group.fields
    .filter((field) => applies(field, job))
    .map((field) => (
      <Fragment key={field.path}>
        <Field field={field} />
        {field.path === 'guitar.scale' && <Frets />}
        {field.path === 'bridge.mirrored' && <Listed list="bridge.points" />}
      </Fragment>
    ));
};

/** One group; folded away while not needed, where not every job needs it. */
const Group = ({ group, next }: { group: FieldGroup; next: FieldGroup | undefined }) => {
  const { id, title } = group;
  const job = useBenchState(jobAsRead);
  const isHeld = useBenchState(({ drafts, solved }) => {
    const isHere = (path: string) =>
      group.fields.some((field) => field.path === path) ||
      listsOf[id]?.some((list) => path.startsWith(`${list}.`)) === true;
    const refused = Object.entries(drafts).some(([path, { says }]) => says !== undefined && isHere(path));
    return refused || (!solved.ok && solved.problems.some(({ path }) => isHere(path)));
  });
  const usage = usageOf(job, group);
  if (usage === undefined) {
    return (
      <fieldset>
        <legend>
          <h3 id={groupId(id)}>{title}</h3>
        </legend>
        <SkipOn next={next && { id: groupId(next.id), title: next.title }} />
        <Fields group={group} />
      </fieldset>
    );
  }
  return (
    <Fold
      id={id}
      title={title}
      headId={groupId(id)}
      about={words.numbers.folds[id]}
      state={usage.state}
      isOpenAtFirst={usage.isUsed}
      isHeld={isHeld}
    >
      <fieldset aria-label={title}>
        <SkipOn next={next && { id: groupId(next.id), title: next.title }} />
        <Fields group={group} />
        {listsOf[id]?.map((list) => (
          <Listed key={list} list={list} />
        ))}
      </fieldset>
    </Fold>
  );
};

/** Every number of the job in the order in which it is taken on the bench. */
export const Numbers = () => {
  // A drawer has a head of its own.
  const isInDrawer = useMedia(drawer);
  return (
    <section className="numbers" aria-labelledby={heads.numbers.id}>
      {!isInDrawer && (
        <h2 className="unseen" id={heads.numbers.id}>
          {heads.numbers.title}
        </h2>
      )}
      <div className="groups">
        {groups.map((group, k) => (
          <Resting key={group.id}>
            <Group group={group} next={groups[k + 1]} />
          </Resting>
        ))}
      </div>
    </section>
  );
};
