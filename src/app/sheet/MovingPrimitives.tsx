import { type RefObject, useLayoutEffect, useMemo, useRef } from 'react';
import type { Primitive } from '../../../geometry/drawing.ts';
import { pathData } from '../../../geometry/path-data.ts';
import { isSamePath } from '../../../geometry/same-marks.ts';
import { Primitives } from './Primitives.tsx';
import { round, turnAbout } from './pen.ts';

interface Props {
  readonly primitives: readonly Primitive[];
  readonly isLit: (p: Primitive) => boolean;
  /** The element that holds them. */
  readonly box: RefObject<SVGElement | null>;
}

/** Whether two primitives are alike in all but where they lie and what they say. */
const isOneElement = (a: Primitive, b: Primitive | undefined): boolean => {
  if (b === undefined || a.id !== b.id || a.jobPath !== b.jobPath || a.alternative !== b.alternative) return false;
  if (a.kind === 'stroke') return b.kind === 'stroke' && a.line === b.line && a.matter === b.matter;
  return b.kind === 'text' && a.anchor === b.anchor && a.turn === b.turn && a.bold === b.bold && a.size === b.size;
};

const isOneDrawing = (a: readonly Primitive[], b: readonly Primitive[]): boolean =>
  a === b || (a.length === b.length && a.every((p, k) => isOneElement(p, b[k])));

interface Shown {
  readonly primitives: readonly Primitive[];
  /** Its elements, in its order. */
  readonly elements: readonly Element[];
}

/** Puts a primitive where it lies now, and what it says, into its element. */
const put = (element: Element, before: Primitive, now: Primitive): void => {
  if (now.kind === 'stroke') {
    if (before.kind === 'stroke' && isSamePath(before.path, now.path)) return;
    const d = pathData(now.path);
    element.setAttribute('d', d);
    if (now.alternative !== undefined) element.previousElementSibling?.setAttribute('d', d);
    return;
  }
  if (before.kind === 'text' && before.text === now.text && before.at.x === now.at.x && before.at.y === now.at.y)
    return;
  const [x, y] = [round(now.at.x), round(now.at.y)];
  element.setAttribute('x', String(x));
  element.setAttribute('y', String(y));
  if (now.turn !== 0) element.setAttribute('transform', turnAbout(now.turn, x, y));
  const said = element.firstChild;
  if (said !== null && said.nodeValue !== now.text) said.nodeValue = now.text;
};

/**
 * A drawing's strokes and texts as SVG elements. While it stays the same strokes and texts, which a number only moves, they are not rendered anew: what moved is put into its elements, as that is all that a
 * hand which drags a number waits for.
 */
export const MovingPrimitives = ({ primitives, isLit, box }: Props) => {
  /** What React has rendered, and what has been put into its elements since. */
  const rendered = useRef(primitives);
  const shown = useRef<Shown>({ primitives, elements: [] });
  const toRender = isOneDrawing(rendered.current, primitives) ? rendered.current : primitives;
  // What is lit is asked anew of each job, and is mostly the same.
  const lit = toRender.flatMap((p) => (isLit(p) ? p.id : [])).join(' ');
  // biome-ignore lint/correctness/useExhaustiveDependencies: another way to ask, with the same answer, is no reason to render anew
  const isSameLit = useMemo(() => isLit, [lit, toRender]);
  useLayoutEffect(() => {
    const { primitives: before, elements: known } = shown.current;
    const isSameElements = toRender === rendered.current && known.length > 0;
    const elements = isSameElements ? known : [...(box.current?.querySelectorAll('[data-mark]') ?? [])];
    // What is rendered anew may still show what was put there since it was rendered last.
    const was = isSameElements ? undefined : new Map(before.map((p) => [p.id, p]));
    elements.forEach((element, k) => {
      const now = primitives[k];
      const then = was ? was.get(now?.id ?? '') : before[k];
      if (now && then && now !== then) put(element, then, now);
    });
    rendered.current = toRender;
    shown.current = { primitives, elements };
  });
  return <Primitives primitives={toRender} isLit={isSameLit} />;
};
