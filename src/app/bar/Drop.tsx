import { type MouseEvent, type ReactNode, useEffect, useRef } from 'react';

/** Something that lies over the page while its button is pressed in; a press beside it, or Escape, closes it. */
export const Drop = ({ title, children }: { title: string; children: ReactNode }) => {
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const close = () => details.current?.removeAttribute('open');
    const onPress = ({ target }: PointerEvent) => {
      if (target instanceof Node && !details.current?.contains(target)) close();
    };
    const onKey = ({ key }: KeyboardEvent) => {
      if (key !== 'Escape' || !details.current?.open) return;
      // The focus would go with what is closed.
      if (details.current.contains(document.activeElement)) details.current.querySelector('summary')?.focus();
      close();
    };
    document.addEventListener('pointerdown', onPress);
    document.addEventListener('keydown', onKey);
    return () => {
      document.removeEventListener('pointerdown', onPress);
      document.removeEventListener('keydown', onKey);
    };
  }, []);
  /** A button in it is pressed once: what it opens gives the focus back to what stays. */
  const onClick = ({ target }: MouseEvent) => {
    if (!(target instanceof Element) || target.closest('button') === null) return;
    details.current?.querySelector('summary')?.focus();
    details.current?.removeAttribute('open');
  };
  return (
    <details className="drop-down" ref={details}>
      <summary>{title}</summary>
      {/* biome-ignore lint/a11y: it only hears what its buttons do, by keys too */}
      <div onClick={onClick}>{children}</div>
    </details>
  );
};
