import type { KeyboardEvent, ReactNode } from 'react';

interface Props<T extends string> {
  readonly label: string;
  readonly tabs: readonly (readonly [id: T, title: string])[];
  readonly chosen: T;
  readonly onChoose: (id: T) => void;
  readonly children: ReactNode;
}

const tabId = (id: string): string => `save-tab-${id}`;

/** Panels of which one is shown, by a row of tabs that the arrow keys go along. */
export const Tabs = <T extends string>({ label, tabs, chosen, onChoose, children }: Props<T>) => {
  const onKeyDown = (event: KeyboardEvent) => {
    const at = tabs.findIndex(([id]) => id === chosen);
    const to = {
      ArrowRight: (at + 1) % tabs.length,
      ArrowLeft: (at + tabs.length - 1) % tabs.length,
      Home: 0,
      End: tabs.length - 1,
    }[event.key];
    const next = to === undefined ? undefined : tabs[to];
    if (next === undefined) return;
    event.preventDefault();
    onChoose(next[0]);
    document.getElementById(tabId(next[0]))?.focus();
  };
  return (
    <>
      <div className="tabs" role="tablist" aria-label={label} onKeyDown={onKeyDown} tabIndex={-1}>
        {tabs.map(([id, title]) => (
          <button
            key={id}
            id={tabId(id)}
            type="button"
            role="tab"
            aria-selected={id === chosen}
            aria-controls="save-panel"
            tabIndex={id === chosen ? 0 : -1}
            onClick={() => onChoose(id)}
          >
            {title}
          </button>
        ))}
      </div>
      <div id="save-panel" className="panel-of-tab" role="tabpanel" aria-labelledby={tabId(chosen)} tabIndex={-1}>
        {children}
      </div>
    </>
  );
};
