/** Where the first drawing of the next visit is found at once: a copy of the job as text, beside the database that keeps it. */
export const lookKey = 'sagitta.look';

/** Which job of the shelf stands at the bench of a window, for as long as that is open. */
export const openKey = 'sagitta.open';

/** Which decimal mark was chosen on this device. */
export const decimalKey = 'sagitta.decimal';

/** How large a px is on this screen. */
export const screenKey = 'sagitta.screen';

/** Where earlier versions kept the job they were left with: texts of job files in the browser's small storage. */
export const oldKeys = {
  job: 'sagitta.job',
  kept: 'sagitta.kept',
  built: 'sagitta.built',
  folds: 'sagitta.folds',
} as const;
