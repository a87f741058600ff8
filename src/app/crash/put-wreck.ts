import type { Job } from '../../../geometry/job.ts';
import { firstWords as words } from '../first-words.ts';
import { lookKey, openKey } from '../stored-keys.ts';
import { reason } from './reason.ts';

const says = words.wreck;

export interface Wrecked {
  readonly error: unknown;
  /** The job at the bench; nothing where none was there yet. */
  readonly job: Job | undefined;
  /** Keeps at once what is not safe yet. Where it cannot, what it says is of no use here: the job's file is offered beside. */
  readonly flush?: (() => Promise<void>) | undefined;
}

/** The job as a file's text without the reader and writer of files: nothing of the rest of the page may be needed here. */
const save = (job: Job) => {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(new Blob([`${JSON.stringify(job, null, 2)}\n`], { type: 'application/json' }));
  link.download = 'job.json';
  link.click();
};

/** Makes the next visit begin with the demo; the job stays where it is kept. */
const leaveJob = () => {
  try {
    window.sessionStorage.setItem(openKey, '');
    window.sessionStorage.setItem(lookKey, 'null');
  } catch {
    // A browser that keeps nothing begins with the demo anyway.
  }
};

const element = <K extends keyof HTMLElementTagNameMap>(name: K, ...inner: readonly (string | Node)[]) => {
  const made = document.createElement(name);
  made.append(...inner);
  return made;
};

const button = (label: string, onClick: () => void, className = '') => {
  const made = element('button', label);
  made.type = 'button';
  made.className = className;
  made.addEventListener('click', onClick);
  return made;
};

/** Puts into an element what stands in the place of the whole page when it cannot go on: by itself, as it may be that nothing else could be loaded. */
export const putWreck = (into: Element, { error, job, flush }: Wrecked): void => {
  const reload = async () => {
    await flush?.();
    window.location.reload();
  };
  // The whole of the page, and said at once: one element cannot be both.
  const told = element('div', element('h1', says.title), element('p', says.why(reason(error))));
  told.setAttribute('role', 'alert');
  const main = element('main', told);
  main.className = 'wreck';
  const buttons = element('p');
  if (job) {
    told.append(element('p', says.job));
    buttons.append(button(says.save, () => save(job), 'primary'));
  }
  buttons.append(
    button(says.reload, () => void reload()),
    button(says.demo, () => {
      leaveJob();
      void reload();
    }),
  );
  main.append(buttons);
  into.replaceChildren(main);
};
