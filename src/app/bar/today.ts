const pad = (n: number) => String(n).padStart(2, '0');

/** This day where the person is, as year-month-day. */
export const today = (now: Date): string => `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`;
