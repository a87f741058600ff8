import { useEffect, useState } from 'react';
import type { Card, KeptState } from '../keep/database.ts';
import type { Keep } from '../keep/keep.ts';
import { statesOf } from '../keep/shelf.ts';
import { words } from '../words.ts';

const says = words.shelf;
const when = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'medium' });

/** The states of one job that can be gone back to, the newest first. */
export const States = ({
  keep,
  card,
  onBack,
  onClose,
}: {
  keep: Keep;
  card: Card;
  onBack: (state: KeptState) => void;
  onClose: () => void;
}) => {
  const [states, setStates] = useState<readonly KeptState[] | undefined>();
  const { id } = card;
  useEffect(() => {
    let isGone = false;
    statesOf(keep.db, id).then(
      (found) => {
        if (!isGone) setStates(found);
      },
      () => setStates([]),
    );
    return () => {
      isGone = true;
    };
  }, [keep, id]);
  return (
    <section className="states" aria-label={says.statesOf(card.name)}>
      <h3>{says.statesOf(card.name)}</h3>
      <p>{says.statesSay}</p>
      <ol>
        {states?.map((state, k) => (
          <li key={state.seq}>
            <span>
              {state.name || says.unnamedStep}, {when.format(state.at)}
            </span>
            <button type="button" disabled={k === 0} onClick={() => onBack(state)}>
              {k === 0 ? says.asItIs : says.goBack}
            </button>
          </li>
        ))}
      </ol>
      <p>
        <button type="button" onClick={onClose}>
          {says.closeStates}
        </button>
      </p>
    </section>
  );
};
