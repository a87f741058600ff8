/** What stands in place of a reading that nobody has taken. */
export const notTaken = 'not taken';
