import type { ReactNode } from 'react';
import { useBench, useBenchState } from '../use-bench.ts';

interface FoldProps {
  /** Under which it is remembered whether the person opened or closed it. */
  readonly id: string;
  readonly title: string;
  /** Of which level its heading is. */
  readonly heading?: 'h3' | 'h4';
  /** The id of its head, where the keys can be led to it. */
  readonly headId?: string;
  /** What it is for, in a few words. */
  readonly about?: string | undefined;
  /** How it stands, seen while it is closed. */
  readonly state: string;
  /** Whether it is open as long as the person has not said otherwise. */
  readonly isOpenAtFirst: boolean;
  /** Something in it has to be put right: it stays open. */
  readonly isHeld?: boolean;
  readonly children: ReactNode;
}

/** A part of the page that can be folded away; it never closes by itself while someone works in it. */
export const Fold = ({
  id,
  title,
  heading: Heading = 'h3',
  headId,
  about,
  state,
  isOpenAtFirst,
  isHeld = false,
  children,
}: FoldProps) => {
  const bench = useBench();
  const chosen = useBenchState(({ folds }) => folds[id]);
  const isOpen = isHeld || (chosen ?? isOpenAtFirst);
  return (
    <details className="fold" data-fold={id} open={isOpen}>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: a summary is pressed like a button */}
      <summary
        id={headId}
        onClick={(event) => {
          event.preventDefault();
          bench.fold(id, isHeld || !isOpen);
        }}
      >
        <Heading>{title}</Heading>
        {!isOpen && <span className="state">{state}</span>}
        {about && <span className="about">{about}</span>}
      </summary>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: it only keeps open what is worked in */}
      <div
        className="folded"
        onFocus={() => {
          if (bench.getState().folds[id] === undefined) bench.fold(id, true);
        }}
      >
        {children}
      </div>
    </details>
  );
};
