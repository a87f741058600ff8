type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

const written: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** A text as it stands in markup. */
export const text = (plain: string): string => plain.replace(/[&<>"]/g, (one) => written[one] as string);

/** The beginning of an element, and all of one that holds nothing, such as an input. What is undefined is left out. */
export const tag = (name: string, attributes: Attributes): string => {
  let markup = `<${name}`;
  for (const [key, value] of Object.entries(attributes))
    if (value !== undefined) markup += ` ${key}="${text(String(value))}"`;
  return `${markup}>`;
};

/** An element as markup, around what is markup already. */
export const element = (name: string, attributes: Attributes, ...inner: readonly string[]): string =>
  `${tag(name, attributes)}${inner.join('')}</${name}>`;
