/** Parts of the page in sight that do not follow a hand at once, but only when the whole page does. */
const slow = new Set<object>();

/** Tells whether such a part is in sight. */
export const tellSlow = (part: object, isSeen: boolean): void => {
  if (isSeen) slow.add(part);
  else slow.delete(part);
};

export const isSlowInSight = (): boolean => slow.size > 0;
