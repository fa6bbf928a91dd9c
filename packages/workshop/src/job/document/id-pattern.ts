/** What an id in a job looks like. */
export const idPattern = /^[a-z0-9][a-z0-9-]{0,63}$/;
