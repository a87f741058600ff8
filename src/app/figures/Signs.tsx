/** A formula's text with its indices set low: `z_s` as z with a low s, a power behind it high as it is. */
export const Signs = ({ text }: { text: string }) =>
  text.split(/(_[\p{L}\p{Nd}]+)/u).map((part, k) =>
    // biome-ignore lint/suspicious/noArrayIndexKey: the parts of one text never change places
    part.startsWith('_') ? <sub key={k}>{part.slice(1)}</sub> : part,
  );
