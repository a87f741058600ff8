// C0 and C1 controls, the line and paragraph separators, and the marks that turn the direction of writing: left alone, the
// last could make a name show as something else than it is, or turn the words printed beside it.
const breaks = /[\t\n\v\f\r\u0085\u2028\u2029]+/g;
const turns = /[\u061c\u200e\u200f\u202a-\u202e\u2066-\u2069]/g;
const loneSurrogates = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const isControl = (character: string): boolean => {
  const code = character.charCodeAt(0);
  return code < 0x20 || (code >= 0x7f && code <= 0x9f);
};

/**
 * A name as any writer may safely see it: on one line, without control characters, direction overrides or halves of
 * surrogate pairs, trimmed. Letters of every script, emoji and signs such as `<` stay; escaping those is the writer's task.
 */
export function cleanName(text: string): string {
  const line = text.replace(breaks, ' ').replace(turns, '').replace(loneSurrogates, '');
  return Array.from(line)
    .filter((character) => !isControl(character))
    .join('')
    .trim();
}

/** The text, cleaned, cut to so many characters (40) and put in quotation marks, for a message to a person. */
export function quote(text: string, longest = 40): string {
  const characters = Array.from(cleanName(text.slice(0, longest * 8)));
  const cut = characters.length > longest || text.length > longest * 8;
  return `“${characters.slice(0, longest).join('')}${cut ? '…' : ''}”`;
}

/**
 * A file's stem made from a name: Latin letters without their accents, digits and single dashes, at most 60 characters;
 * `job` when nothing of the name is left.
 */
export function fileName(text: string): string {
  const plain = text.normalize('NFKD').replace(/\p{M}/gu, '');
  const stem = plain
    .replace(/[^A-Za-z0-9]+/g, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/g, '');
  return stem === '' ? 'job' : stem;
}

/** A string's name as it stands on a drawing: at most seven characters of it, and an ellipsis if it is longer. */
export const shortName = (name: string): string => {
  const characters = [...cleanName(name)];
  return characters.length <= 8 ? characters.join('') : `${characters.slice(0, 7).join('')}…`;
};
