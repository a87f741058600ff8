/** Where things stand in the browser's storage. A job is kept as the text of its file. */
export const keys = {
  job: 'sagitta.job',
  /** The last job that could be built, while the job itself cannot. */
  built: 'sagitta.built',
  /** Jobs put aside. */
  kept: 'sagitta.kept',
  /** A text that could not be read. */
  unread: 'sagitta.unread',
  /** Which parts of the page are opened and closed. */
  folds: 'sagitta.folds',
  /** How large a px is on this screen. */
  screen: 'sagitta.screen',
} as const;
