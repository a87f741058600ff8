import { useEffect, useRef, useState } from 'react';
import type { Card } from '../keep/database.ts';
import { words } from '../words.ts';

const says = words.shelf;

/** What can be asked of a job on the shelf. */
export interface RowActs {
  readonly open: (card: Card) => void;
  readonly rename: (card: Card, name: string) => void;
  readonly duplicate: (card: Card) => void;
  readonly states: (card: Card) => void;
  readonly share: (card: Card) => void;
  readonly put: (card: Card, place: Card['place']) => void;
  readonly remove: (card: Card) => void;
}

const when = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

/** The job's bridge from above, small. */
const SmallDrawing = ({ picture }: Pick<Card, 'picture'>) => (
  <svg className="small-bridge" viewBox={picture?.box ?? '0 0 10 3'} aria-hidden="true">
    {picture && <path d={picture.d} />}
  </svg>
);

const Name = ({ card, onRename }: { card: Card; onRename: (name: string) => void }) => {
  const [text, setText] = useState<string | undefined>();
  const input = useRef<HTMLInputElement>(null);
  const isOpen = text !== undefined;
  // Whoever asked to rename it types at once.
  useEffect(() => {
    if (isOpen) input.current?.select();
  }, [isOpen]);
  if (text === undefined)
    return (
      <button type="button" className="quiet" aria-label={says.renameOf(card.name)} onClick={() => setText(card.name)}>
        {says.rename}
      </button>
    );
  return (
    <form
      className="rename"
      onSubmit={(event) => {
        event.preventDefault();
        onRename(text);
        setText(undefined);
      }}
    >
      <label>
        <span>{says.newName}</span>
        <input
          ref={input}
          value={text}
          maxLength={200}
          onChange={({ target }) => setText(target.value)}
          onKeyDown={(event) => {
            if (event.key !== 'Escape') return;
            event.preventDefault();
            setText(undefined);
          }}
        />
      </label>
      <button type="submit">{says.keepName}</button>
    </form>
  );
};

interface ActShown {
  readonly says: string;
  /** The same with the job's name, for who hears one button of many. */
  readonly label: string;
  readonly isOff?: boolean;
  readonly run: () => void;
}

/** One thing that can be done with the job. */
const Act = ({ says: what, label, isOff = false, run }: ActShown) => (
  <button type="button" className="quiet" aria-label={label} disabled={isOff} onClick={run}>
    {what}
  </button>
);

/** One job on the shelf. */
export const Row = ({ card, isHere, acts }: { card: Card; isHere: boolean; acts: RowActs }) => {
  const { name, date, changed, place, picture, problems } = card;
  const called = name.trim() === '' ? says.unnamed : name;
  return (
    <li className="job-row" data-here={isHere}>
      <SmallDrawing picture={picture} />
      <p>
        <strong>{called}</strong>
        {isHere && <em> {says.here}</em>}
        <br />
        {says.dated(date, when.format(changed))}
        {problems > 0 && <em> {says.notBuilt(problems)}</em>}
      </p>
      <div className="acts">
        <button type="button" aria-label={says.openOf(called)} disabled={isHere} onClick={() => acts.open(card)}>
          {says.open}
        </button>
        <Name card={card} onRename={(to) => acts.rename(card, to)} />
        <Act says={says.duplicate} label={says.duplicateOf(called)} run={() => acts.duplicate(card)} />
        <Act says={says.states} label={says.statesOf(called)} run={() => acts.states(card)} />
        <Act says={says.share} label={says.shareOf(called)} run={() => acts.share(card)} />
        {place === 'shelf' ? (
          <Act
            says={says.archive}
            label={says.archiveOf(called)}
            isOff={isHere}
            run={() => acts.put(card, 'archive')}
          />
        ) : (
          <Act says={says.putBack} label={says.backOf(called)} run={() => acts.put(card, 'shelf')} />
        )}
        {place === 'bin' ? (
          <Act says={says.remove} label={says.removeOf(called)} run={() => acts.remove(card)} />
        ) : (
          <Act says={says.bin} label={says.binOf(called)} isOff={isHere} run={() => acts.put(card, 'bin')} />
        )}
      </div>
    </li>
  );
};
