import { useState } from 'react';

/** A value as it is now; while it is to be kept, as it was before. */
export const useKept = <T>(now: T, isKept: boolean): T => {
  const [kept, setKept] = useState(now);
  if (!isKept && kept !== now) setKept(now);
  return isKept ? kept : now;
};
