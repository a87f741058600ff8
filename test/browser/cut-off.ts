import type { Page } from 'playwright-core';

/**
 * What of the app's own words cannot be read: cut off where nothing scrolls, past the window's edge, run out of its own box, or over another word.
 * The drawings' own words are not among them: `test/app/words.test.ts` has those. What is folded away or only heard is not seen.
 */
export const unreadable = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    interface Rect {
      readonly left: number;
      readonly right: number;
      readonly top: number;
      readonly bottom: number;
    }
    /** A line of text as it is seen: `whole` without regard to what it is scrolled in, `seen` what of it is in sight, CSS px. */
    interface Line {
      readonly text: string;
      readonly of: Element;
      readonly scroller: Element | undefined;
      readonly whole: Rect;
      readonly seen: Rect;
    }
    const faults: string[] = [];
    /** Less than this is rounding, px. */
    const near = 1;
    /** What lies between a font's ascent and its letters, as a part of a line's height [memory]. */
    const air = 0.16;
    const name = (one: Element) =>
      [one, one.parentElement, one.closest('[data-path], [class], [id]')]
        .flatMap((e) => (e ? [`${e.tagName.toLowerCase()}.${[...e.classList].join('.')}`] : []))
        .join(' in ');
    const cut = (a: Rect, b: Rect): Rect => ({
      left: Math.max(a.left, b.left),
      right: Math.min(a.right, b.right),
      top: Math.max(a.top, b.top),
      bottom: Math.min(a.bottom, b.bottom),
    });
    const isThere = ({ left, right, top, bottom }: Rect) => right - left > near && bottom - top > near;
    /** The ancestors from an element on, the next first. */
    const upFrom = (one: Element): Element[] => (one.parentElement ? [one, ...upFrom(one.parentElement)] : [one]);
    const skipped = ':is(.drawing, .sketch, .tool, script, style, title, option)';
    /** What is asked of the same elements again and again is kept. */
    const keep = <T>(of: (one: Element) => T) => {
      const known = new Map<Element, T>();
      return (one: Element): T => {
        const before = known.get(one);
        if (before !== undefined) return before;
        const now = of(one);
        known.set(one, now);
        return now;
      };
    };
    const styleOf = keep((one) => {
      const { overflowX, overflowY, textOverflow, display, position, clipPath, backgroundColor } =
        getComputedStyle(one);
      return { overflowX, overflowY, textOverflow, display, position, clipPath, backgroundColor };
    });
    const isHeard: (one: Element) => boolean = keep(
      (one) => styleOf(one).clipPath === 'inset(50%)' || (one.parentElement !== null && isHeard(one.parentElement)),
    );
    const isSeen = (one: Element) =>
      one.checkVisibility({ visibilityProperty: true }) && one.closest(skipped) === null && !isHeard(one);

    /** Where an element's padding ends, in which what it clips or scrolls is seen. */
    const inside = (one: Element): Rect => {
      const { left, top } = one.getBoundingClientRect();
      const x = left + one.clientLeft;
      const y = top + one.clientTop;
      return { left: x, top: y, right: x + one.clientWidth, bottom: y + one.clientHeight };
    };

    const take = (of: Element, text: string, rect: Rect): Line | undefined => {
      let seen = rect;
      let scroller: Element | undefined;
      const height = rect.bottom - rect.top;
      const body = { ...rect, top: rect.top + air * height, bottom: rect.bottom - air * height };
      let isFlowing = true;
      for (const one of upFrom(of)) {
        const style = styleOf(one);
        const scrolls = [style.overflowX, style.overflowY].some((v) => v === 'auto' || v === 'scroll');
        const clips = [style.overflowX, style.overflowY].some((v) => v === 'hidden' || v === 'clip');
        const isRoot = one === document.documentElement || one === document.body;
        if (!isRoot && style.display !== 'inline' && style.display !== 'contents') {
          const box = inside(one);
          if (scrolls) {
            scroller ??= one;
            seen = cut(seen, box);
            isFlowing = false;
          } else if (
            clips &&
            !scroller &&
            (body.right > box.right + near || body.left < box.left - near || body.bottom > box.bottom + near)
          )
            faults.push(`cut off: “${text}” (${name(of)}) by ${name(one)}`);
          else if (
            isFlowing &&
            !(one instanceof SVGElement) &&
            (body.left < one.getBoundingClientRect().left - near ||
              body.right > one.getBoundingClientRect().right + near ||
              body.bottom > one.getBoundingClientRect().bottom + near)
          ) {
            faults.push(`runs out: “${text}” (${name(of)}) of ${name(one)}`);
            isFlowing = false;
          }
        }
        if (style.position === 'absolute' || style.position === 'fixed') isFlowing = false;
        if (style.position === 'fixed') break;
      }
      if (!isThere(seen)) return undefined;
      if (seen.left < -near || seen.right > document.documentElement.clientWidth + near)
        faults.push(`past the window’s edge: “${text}” (${name(of)})`);
      return { text, of, scroller, whole: body, seen: cut(body, seen) };
    };

    const lines: Line[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const of = node.parentElement;
      const text = node.textContent?.trim() ?? '';
      if (of === null || text === '' || !isSeen(of)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const { left, right, top, bottom } of range.getClientRects()) {
        const rect = { left, right, top, bottom };
        if (isThere(rect)) {
          const line = take(of, text.slice(0, 60), rect);
          if (line) lines.push(line);
        }
      }
    }

    // What is typed, or stands in its place; and what is chosen.
    const pen = document.createElement('canvas').getContext('2d') as CanvasRenderingContext2D;
    for (const one of document.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select')) {
      const isChoice = one instanceof HTMLSelectElement;
      if (!isSeen(one) || (!isChoice && !['text', 'date', 'number', 'search'].includes(one.type))) continue;
      const text = isChoice ? (one.selectedOptions[0]?.text ?? '') : one.value || one.placeholder;
      const style = getComputedStyle(one);
      pen.font = `${style.fontStyle} ${style.fontWeight} ${style.fontSize} ${style.fontFamily}`;
      const box = inside(one);
      const left = box.left + Number.parseFloat(style.paddingLeft);
      const right = box.right - Number.parseFloat(style.paddingRight) - (isChoice ? 18 : 0);
      const width = pen.measureText(text).width;
      // A person's own words may be longer than any field.
      if (width > right - left + near && one.dataset.kind !== 'text' && one.dataset.kind !== 'name')
        faults.push(
          `cut off: “${text}” in its field ${one.getAttribute('aria-label') ?? one.id}, ${width.toFixed(0)} of ${(right - left).toFixed(0)} px`,
        );
      const isRight = style.textAlign === 'right' || style.textAlign === 'end';
      const from = isRight ? Math.max(left, right - width) : left;
      const line = take(one, text, {
        left: from,
        right: Math.min(right, from + width),
        top: box.top,
        bottom: box.bottom,
      });
      if (line) lines.push(line);
    }

    for (const one of document.querySelectorAll<HTMLElement>('body *')) {
      const { overflowX, textOverflow } = styleOf(one);
      const hasText = [...one.childNodes].some((n) => n.nodeType === Node.TEXT_NODE && n.textContent?.trim());
      if (hasText && (['hidden', 'clip'].includes(overflowX) || textOverflow === 'ellipsis'))
        if (isSeen(one) && one.scrollWidth > one.clientWidth + near)
          faults.push(`cut off: “${one.textContent}” (${name(one)}), ${one.scrollWidth} in ${one.clientWidth} px`);
    }

    /** Whether what stands over the other hides it: a ground of its own, as what stays in sight while the rest is scrolled has. */
    const hides = (a: Line, b: Line) => {
      const own = upFrom(a.of).filter((e) => !e.contains(b.of));
      const isOver = own.some((e) => ['sticky', 'fixed', 'absolute'].includes(styleOf(e).position));
      const hasGround = own.some((e) => !/, 0\)$/.test(styleOf(e).backgroundColor));
      return (isOver && hasGround) || own.some((e) => e instanceof HTMLDialogElement);
    };
    const pairs = (list: readonly Line[], rect: (line: Line) => Rect) => {
      const sorted = list.toSorted((a, b) => rect(a).top - rect(b).top);
      sorted.forEach((a, k) => {
        for (const b of sorted.slice(k + 1)) {
          if (rect(b).top >= rect(a).bottom - near) break;
          if (a.of === b.of || !isThere(cut(rect(a), rect(b))) || hides(a, b) || hides(b, a)) continue;
          faults.push(`over each other: “${a.text}” (${name(a.of)}) and “${b.text}” (${name(b.of)})`);
        }
      });
    };
    pairs(lines, (line) => line.seen);
    for (const scroller of new Set(lines.map((line) => line.scroller)))
      if (scroller)
        pairs(
          lines.filter((line) => line.scroller === scroller),
          (line) => line.whole,
        );

    return [...new Set(faults)];
  });

/** The boxes that are scrolled sideways, by their names, and whether each shows at its cut side that more lies there: its ground is another at its end than before. */
export const scrolledSideways = async (page: Page): Promise<readonly { name: string; isShown: boolean }[]> => {
  const found = [];
  for (const box of await page.locator('.scroll:visible').all()) {
    const isWider = await box.evaluate((one) => one.scrollWidth > one.clientWidth + 1);
    if (!isWider) continue;
    const name = (await box.getAttribute('aria-label')) ?? 'a box without a name';
    await box.evaluate((one) => {
      one.scrollIntoView({ block: 'center' });
      for (const child of one.children) if (child instanceof HTMLElement) child.style.visibility = 'hidden';
    });
    const at = async (end: boolean) => {
      await box.evaluate((one, end) => {
        one.scrollLeft = end ? one.scrollWidth : 0;
      }, end);
      // The middle of its right edge.
      const { x, y, width, height } = (await box.boundingBox()) ?? { x: 0, y: 0, width: 0, height: 0 };
      const clip = { x: Math.round(x + width) - 12, y: Math.round(y + height / 2), width: 8, height: 2 };
      return page.screenshot({ clip });
    };
    const [before, after] = [await at(false), await at(true)];
    found.push({ name, isShown: !before.equals(after) });
    await box.evaluate((one) => {
      one.scrollLeft = 0;
      for (const child of one.children) if (child instanceof HTMLElement) child.style.visibility = '';
    });
  }
  return found;
};

/** What is too small to be hit, under `least` px either way; links within a sentence are not among them (WCAG 2.2, 2.5.8 target size (minimum), Inline). */
export const tooSmall = (page: Page, least: number): Promise<readonly string[]> =>
  page.evaluate((least) => {
    const hit =
      'a[href], button, summary, select, input:not([type="hidden"]), [role="button"], [role="tab"], [tabindex="0"]';
    const isUnseen = (one: Element | null): boolean =>
      one !== null && (getComputedStyle(one).clipPath === 'inset(50%)' || isUnseen(one.parentElement));
    return [...document.querySelectorAll<HTMLElement>(hit)].flatMap((one) => {
      if (!one.checkVisibility({ visibilityProperty: true }) || isUnseen(one) || one.closest('.drawing') !== null)
        return [];
      const isOneOfText =
        one.matches('a') &&
        getComputedStyle(one).display === 'inline' &&
        one.closest('p, li')?.textContent !== one.textContent;
      if (isOneOfText) return [];
      // A tick and its words are one target.
      const { width, height } = (one.closest('label') ?? one).getBoundingClientRect();
      return Math.min(width, height) < least - 0.5
        ? [`${width.toFixed(1)} × ${height.toFixed(1)}: ${one.outerHTML.slice(0, 110)}`]
        : [];
    });
  }, least);
