/** Runs in a set under which its spread is hardly known, so that no plan should rest on fewer (common practice). */
export const fewestRuns = 4;
