import type { Level } from '../../../geometry/checks/check.ts';
import { words } from '../words.ts';

/** The mark of a level: its shape differs as well as its colour, and its word is read out. */
const shapes: Readonly<Record<Level, string>> = {
  right: 'M2.5 8.5 L6.5 12.5 L13.5 4',
  doubtful: 'M8 1.5 L15 14 L1 14 Z M8 6 L8 10 M8 11.5 L8 12.6',
  wrong: 'M2 2 L14 2 L14 14 L2 14 Z M5 5 L11 11 M11 5 L5 11',
};

export const Mark = ({ level }: { level: Level }) => (
  <svg className="mark" data-level={level} viewBox="0 0 16 16" role="img" aria-label={words.findings.levels[level]}>
    <path d={shapes[level]} />
  </svg>
);
