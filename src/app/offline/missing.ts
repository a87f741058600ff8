/** Told by a worker whose program cannot be loaded; the build's own loader tells of modules and styles. */
const missing = 'sagitta:missing';

/** Says that a part of the page could not be loaded. */
export const tellMissing = (): void => void window.dispatchEvent(new Event(missing));

/** Calls back whenever a part of the page that is loaded late cannot be had: without network, or since another version stands in its place. */
export const onMissing = (told: () => void): void => {
  for (const name of ['vite:preloadError', missing]) window.addEventListener(name, told);
};
