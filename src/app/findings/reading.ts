/** Whether a field is measured on the guitar: work may change what is measured, but only measuring gives the number to type. */
export const isReading = (path: string): boolean =>
  /^(guitar|strung|setup|top|scar)\.|^strings\.list\.[^.]+\.cents$/.test(path);
