import { type KeyboardEvent, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { type FieldInfo, fieldAt } from '../../../../geometry/fields.ts';
import { unitOf } from '../../numbers/Field.tsx';
import { helpId, useField } from '../../numbers/use-field.ts';
import { barOf } from '../../store.ts';
import { fieldTitle } from '../../strings.ts';
import { useBench, useBenchState } from '../../use-bench.ts';
import { words } from '../../words.ts';
import { stepped, stopped } from '../grips/step.ts';

/** How far from the window's edges it keeps, px. */
const margin = 6;

interface Over {
  /** What it stands over; undefined while that is not drawn. */
  readonly over: () => SVGElement | undefined;
  /** The focus has left it. */
  readonly onClose: () => void;
}

/** The place of a number on the drawing, as an input: read, refused and stepped as in the column. */
export const TypedField = ({ path, ...over }: Over & { readonly path: string }) => {
  const field = fieldAt(path);
  return field && <Typed field={field} {...over} />;
};

const Typed = ({ field, over, onClose }: Over & { readonly field: FieldInfo }) => {
  const bench = useBench();
  const box = useRef<HTMLDivElement>(null);
  const input = useRef<HTMLInputElement>(null);
  const title = useBenchState(({ job }) => fieldTitle(job, field.path));
  const bar = useBenchState((state) => barOf(state, field.path));
  const { value, settled, says: said, isRefused, unit, textProps, focusProps } = useField(field);
  const says = said ?? (bar && words.hands.barred(bar));
  const [place, setPlace] = useState({ left: 0, top: 0 });
  const saysId = 'typed-says';

  // The drawing makes room anew for each number: the input goes with what it stands over.
  const follow = () => {
    const spot = over()?.getBoundingClientRect();
    const own = box.current?.getBoundingClientRect();
    if (spot === undefined || own === undefined) return;
    const keep = (at: number, most: number) => Math.round(Math.max(margin, Math.min(at, most - margin)));
    const left = keep((spot.left + spot.right - own.width) / 2, window.innerWidth - own.width);
    const top = keep((spot.top + spot.bottom) / 2 - 16, window.innerHeight - own.height);
    setPlace((now) => (now.left === left && now.top === top ? now : { left, top }));
  };
  useLayoutEffect(follow);
  useEffect(() => {
    window.addEventListener('scroll', follow, true);
    window.addEventListener('resize', follow);
    return () => {
      window.removeEventListener('scroll', follow, true);
      window.removeEventListener('resize', follow);
    };
  });
  useEffect(() => {
    input.current?.focus({ preventScroll: true });
    input.current?.select();
  }, []);

  const step = (event: KeyboardEvent, way: 1 | -1) => {
    event.preventDefault();
    const now = settled ?? value;
    if (typeof now !== 'number') return;
    const { show } = bench.getState().job;
    const to = stepped(field, now, way, event.shiftKey ? 'large' : event.altKey ? 'fine' : 'usual', show);
    bench.bar(field.path, bench.drag(field.path, [{ path: field.path, value: stopped(field, to) }], title));
  };

  /** Back to what it stands over: leaving it so closes it. */
  const back = () => {
    const spot = over();
    if (spot) spot.focus();
    else input.current?.blur();
  };

  const onKeyDown = (event: KeyboardEvent) => {
    switch (event.key) {
      case 'ArrowUp':
        return step(event, 1);
      case 'ArrowDown':
        return step(event, -1);
      case 'Enter':
        event.preventDefault();
        // What is refused stays open, with what is said of it.
        return isRefused ? undefined : back();
      case 'Escape':
        event.preventDefault();
        bench.forget(field.path);
        return back();
      case 'Tab':
        // The next stop is the one behind what it stands over.
        return back();
    }
  };

  return (
    <div className="typed" ref={box} style={place}>
      <span className="value">
        <input
          {...textProps}
          ref={input}
          aria-label={words.hands.onDrawing(title)}
          aria-invalid={focusProps['aria-invalid']}
          aria-describedby={says === undefined ? helpId : `${saysId} ${helpId}`}
          data-kind={field.kind}
          onFocus={focusProps.onFocus}
          onBlur={() => {
            focusProps.onBlur();
            onClose();
          }}
          onKeyDown={onKeyDown}
        />
        <span className="unit">{typeof (settled ?? value) === 'number' ? unitOf(field, unit) : ''}</span>
      </span>
      {says !== undefined && (
        <p className="says" id={saysId} role={isRefused ? 'alert' : undefined}>
          {says}
        </p>
      )}
    </div>
  );
};
