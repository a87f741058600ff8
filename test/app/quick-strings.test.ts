// @vitest-environment jsdom
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { quickStrings } from '../../src/app/swift/elements.ts';

const at = (selector: string) => document.querySelector(selector) as HTMLElement;

beforeEach(() => {
  document.body.innerHTML = `
    <p id="says" class="old">nine</p>
    <input id="field" value="9.1" />
    <svg class="drawing"><path data-mark="bridge.hatch.0" d="M0 0L1 1" class="thin" /><path data-mark="bridge.hatch.1" d="M2 0L3 1" /><path data-mark="top" d="M0 0L9 0" /></svg>`;
  // jsdom lays nothing out: all is in sight.
  vi.spyOn(Element.prototype, 'getBoundingClientRect').mockReturnValue(new DOMRect(10, 10, 20, 20));
});

describe('strings put in past React', () => {
  it('stand at once, and are taken back as they were', () => {
    const strings = quickStrings();
    strings.put([
      ['#says', 'text', 'ten'],
      ['#says', 'class', 'new'],
      ['#says', 'title', 'more'],
      ['#field', 'value', '9.4'],
      ['svg.drawing [data-mark="top"]', 'd', 'M0 0L8 0'],
    ]);
    strings.put([['#says', 'text', 'eleven']]);
    expect([at('#says').textContent, at('#says').className, at('#says').title]).toEqual(['eleven', 'new', 'more']);
    expect((at('#field') as HTMLInputElement).value).toBe('9.4');
    expect(at('[data-mark="top"]').getAttribute('d')).toBe('M0 0L8 0');
    const before = at('#says').firstChild;
    strings.takeBack();
    // The text node that React knows is still the one that it knows.
    expect(at('#says').firstChild).toBe(before);
    expect([at('#says').textContent, at('#says').className, at('#says').hasAttribute('title')]).toEqual([
      'nine',
      'old',
      false,
    ]);
    expect((at('#field') as HTMLInputElement).value).toBe('9.1');
    expect(at('[data-mark="top"]').getAttribute('d')).toBe('M0 0L9 0');
  });

  it('leave what was rendered meanwhile', () => {
    const strings = quickStrings();
    strings.put([
      ['#says', 'text', 'ten'],
      ['#says', 'class', 'new'],
    ]);
    at('#says').textContent = 'twelve';
    strings.takeBack();
    expect([at('#says').textContent, at('#says').className]).toEqual(['twelve', 'old']);
  });

  it('are taken back in part, by what their selectors begin with', () => {
    const strings = quickStrings();
    strings.put([
      ['#says', 'text', 'ten'],
      ['#field', 'value', '9.4'],
    ]);
    strings.takeBack('#says');
    expect([at('#says').textContent, (at('#field') as HTMLInputElement).value]).toEqual(['nine', '9.4']);
    strings.takeBack();
    expect((at('#field') as HTMLInputElement).value).toBe('9.1');
  });

  it('make further lines of a hatching, and none of what is not there', () => {
    const strings = quickStrings();
    strings.put([
      ['svg.drawing [data-mark="bridge.hatch.2.1"]', 'd', 'M4 0L5 1'],
      ['svg.drawing [data-mark="saddle"]', 'd', 'M4 0L5 1'],
      ['#nothing', 'text', 'nothing'],
    ]);
    const made = at('[data-mark="bridge.hatch.2.1"]');
    expect(made.getAttribute('d')).toBe('M4 0L5 1');
    expect(made.previousElementSibling?.getAttribute('data-mark')).toBe('bridge.hatch.1');
    expect(document.querySelectorAll('path')).toHaveLength(4);
    strings.takeBack();
    expect(document.querySelectorAll('path')).toHaveLength(3);
  });

  it('go to what stands for a selector now, after all was taken back and rendered anew', () => {
    const strings = quickStrings();
    const top = 'svg.drawing [data-mark="top"]';
    strings.put([[top, 'd', 'M0 0L8 0']]);
    strings.takeBack();
    const old = at(top);
    // The element serves for another line now, and another one for this.
    old.setAttribute('data-mark', 'deck');
    old.after(Object.assign(old.cloneNode() as Element, { id: 'new' }));
    at('#new').setAttribute('data-mark', 'top');
    strings.put([[top, 'd', 'M0 0L7 0']]);
    expect([old.getAttribute('d'), at('#new').getAttribute('d')]).toEqual(['M0 0L9 0', 'M0 0L7 0']);
    strings.takeBack();
    at('#new').remove();
    old.setAttribute('data-mark', 'top');
    strings.put([[top, 'd', 'M0 0L6 0']]);
    expect(old.getAttribute('d')).toBe('M0 0L6 0');
  });

  it('come in sight with what was out of it', () => {
    const place = vi.spyOn(Element.prototype, 'getBoundingClientRect').mockReturnValue(new DOMRect(10, 5000, 20, 20));
    const strings = quickStrings();
    strings.put([['#says', 'text', 'ten']]);
    strings.takeBack();
    place.mockReturnValue(new DOMRect(10, 10, 20, 20));
    strings.put([['#says', 'text', 'eleven']]);
    expect(at('#says').textContent).toBe('eleven');
  });

  it('are not put where nobody sees them', () => {
    vi.spyOn(Element.prototype, 'getBoundingClientRect').mockReturnValue(new DOMRect(10, 5000, 20, 20));
    const strings = quickStrings();
    strings.put([['#says', 'text', 'ten']]);
    expect(at('#says').textContent).toBe('nine');
  });
});
