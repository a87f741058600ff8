/** The text with every character that a font cannot draw written out as its code, `[U+6728]`; the font's characters by their code points. */
export const drawable = (text: string, characters: ReadonlySet<number>): string =>
  [...text.normalize('NFC')]
    .map((character) => {
      const code = character.codePointAt(0) ?? 0;
      return characters.has(code) ? character : `[U+${code.toString(16).toUpperCase().padStart(4, '0')}]`;
    })
    .join('');
