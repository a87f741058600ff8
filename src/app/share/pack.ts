import { words } from '../words.ts';

/*
 * A text in as few characters as an address can carry: deflated (RFC 1951), as base64url without padding (RFC 4648, 5). Both directions are the browser's own; Node has them too.
 */

const chunk = 0x8000;
const { broken } = words.share;

const toBase64Url = (bytes: Uint8Array): string => {
  let binary = '';
  for (let k = 0; k < bytes.length; k += chunk) binary += String.fromCharCode(...bytes.subarray(k, k + chunk));
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
};

const fromBase64Url = (text: string): Uint8Array<ArrayBuffer> => {
  if (!/^[A-Za-z0-9_-]*$/.test(text)) throw new RangeError(broken.odd);
  // Four letters hold three bytes; one letter over holds none.
  if (text.length % 4 === 1) throw new RangeError(broken.cut);
  const binary = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(binary, (letter) => letter.charCodeAt(0));
};

/** The stream's bytes, of which there may be at most so many: a small link may unpack to gigabytes. Rejects with a RangeError at the first byte more. */
const readAll = async (stream: ReadableStream<Uint8Array>, most: number): Promise<Uint8Array> => {
  const reader = stream.getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw new RangeError(broken.large(most));
    }
    parts.push(value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
};

const through = (bytes: Uint8Array<ArrayBuffer>, by: TransformStream<BufferSource, Uint8Array>) => {
  const { writable, readable } = by;
  const writer = writable.getWriter();
  // What is wrong with the bytes is heard where they are read.
  writer.write(bytes).catch(() => {});
  writer.close().catch(() => {});
  return readable;
};

/** A text packed for an address. */
export const pack = async (text: string): Promise<string> =>
  toBase64Url(
    await readAll(
      through(new TextEncoder().encode(text), new CompressionStream('deflate-raw')),
      Number.POSITIVE_INFINITY,
    ),
  );

/** The text that was packed, of at most so many bytes. Rejects with an Error whose message goes on from “The link”. */
export const unpack = async (packed: string, most: number): Promise<string> => {
  const bytes = fromBase64Url(packed);
  let plain: Uint8Array;
  try {
    plain = await readAll(through(bytes, new DecompressionStream('deflate-raw')), most);
  } catch (error) {
    if (error instanceof RangeError) throw error;
    throw new RangeError(broken.cut);
  }
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(plain);
  } catch {
    throw new RangeError(broken.noText);
  }
};
