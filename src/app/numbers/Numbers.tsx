import { applies, fieldGroups } from '../../../geometry/fields.ts';
import { useBenchState } from '../use-bench.ts';
import { three, useMedia } from '../use-media.ts';
import { words } from '../words.ts';
import { Back } from './Back.tsx';
import { Field } from './Field.tsx';
import { Steps } from './Steps.tsx';

/** The bar shows the job's name, its date and the units; the strings stand in a table of their own. */
const elsewhere = (path: string): boolean =>
  path === 'name' || path === 'date' || path.startsWith('show.') || path.startsWith('strings.list.');

const groups = fieldGroups
  .map((group) => ({ ...group, fields: group.fields.filter(({ path }) => !elsewhere(path)) }))
  .filter(({ fields }) => fields.length > 0);

/** Every number of the job in the order in which it is taken on the bench. */
export const Numbers = () => {
  const job = useBenchState((state) => state.job);
  const hasThree = useMedia(three);
  return (
    <section className="numbers" aria-label={words.numbers.label}>
      {hasThree && <Steps />}
      <Back />
      <div className="groups">
        {groups.map(({ id, title, fields }) => (
          <fieldset key={id}>
            <legend>{title}</legend>
            {fields
              .filter((field) => applies(field, job))
              .map((field) => (
                <Field key={field.path} field={field} />
              ))}
          </fieldset>
        ))}
      </div>
    </section>
  );
};
