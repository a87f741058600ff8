// What the templates' page says of a piece is what the piece says of itself, and its picture is there.
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pieces } from '../../templates/pieces/index.ts';

const page = new URL('../../templates/README.md', import.meta.url);
const sections = readFileSync(page, 'utf8').split(/^## /m).slice(1);

describe('the page of the templates', () => {
  it.each(sections.map((section) => [section.slice(0, section.indexOf('\n')), section]))('%s', (title, section) => {
    const piece = pieces.find((one) => one.title === title);
    expect(section).toContain(`*Face up: ${piece?.faceUp}.* ${piece?.use}`);
    const [, picture = ''] = /!\[.*?\]\((.*?)\)/.exec(section) ?? [];
    expect(picture).toBe(`../test/pictures/pieces/${piece?.id}.png`);
    const bytes = readFileSync(new URL(picture, page));
    expect(bytes.subarray(1, 4).toString()).toBe('PNG');
    expect(bytes.length).toBeLessThan(60_000);
  });

  it('has them in bench order', () => {
    const titles = sections.map((section) => section.slice(0, section.indexOf('\n')));
    expect(titles).toEqual(pieces.map(({ title }) => title).filter((title) => titles.includes(title)));
    expect(titles.length).toBeGreaterThan(10);
  });
});
