import type { Database, Statement } from 'better-sqlite3';

/** A connection whose statements are made once and kept. */
export interface KeptConnection {
  readonly database: Database;
  /** The one statement with this text. */
  readonly prepare: (text: string) => Statement;
  readonly close: () => void;
}

/** Everything native that this process has made, on purpose for as long as it lives. */
const kept = new Set<object>();

/**
 * Keeps a connection and each of its statements from the garbage collector for as long as the process lives.
 *
 * From Node 24.19 on, a native object of better-sqlite3 12 that is collected while no JavaScript runs aborts the process
 * (`RemoveEnvironmentCleanupHook`: the class that it is built on took on a clean-up hook). Version 13 is built otherwise,
 * but does not run on Node 20. What is never collected can't abort, and a statement that is kept is also quicker. The
 * queries of this room have a fixed set of texts, so that the set does not grow with use.
 *
 * @param database - the connection
 * @returns the connection with `prepare` that remembers
 */
export function keptConnection(database: Database): KeptConnection {
  const statements = new Map<string, Statement>();
  kept.add(database);
  kept.add(statements);
  return {
    database,
    prepare: (text) => {
      let statement = statements.get(text);
      if (statement === undefined) {
        statement = database.prepare(text);
        statements.set(text, statement);
      }
      return statement;
    },
    close: () => {
      database.close();
    },
  };
}
