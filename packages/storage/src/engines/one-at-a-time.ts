const lastInLine = new Map<string, Promise<unknown>>();

/**
 * Lets one piece of work at a time touch what `key` names, in this process. SQLite's own lock makes a second
 * connection wait by blocking the thread: inside one process the first could then never finish.
 *
 * @param key - what is taken, e.g. the real path of a database file
 * @param work - runs when everything that asked before has ended
 * @returns what the work returns
 */
export async function oneAtATime<Result>(key: string, work: () => Promise<Result>): Promise<Result> {
  const before = lastInLine.get(key) ?? Promise.resolve();
  const mine = before.then(work, work);
  const settled = mine.catch(() => undefined);
  lastInLine.set(key, settled);
  try {
    return await mine;
  } finally {
    if (lastInLine.get(key) === settled) lastInLine.delete(key);
  }
}
