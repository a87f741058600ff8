/** A key that no other job has: 128 bits of chance as hexadecimal digits. (`randomUUID` is only there on pages served safely.) */
export const freshId = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
