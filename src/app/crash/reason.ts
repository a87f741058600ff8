/** What an error says, for people who may want to pass it on. */
export const reason = (error: unknown): string => (error instanceof Error ? error.message : String(error));
